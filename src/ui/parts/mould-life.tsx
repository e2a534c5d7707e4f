import { useMemo, useState } from 'preact/hooks';
import type { MouldId } from '../../domain/brand.ts';
import { sayCount } from '../../domain/measure-words.ts';
import type { Posterior } from '../../domain/survival/posterior.ts';
import { forecastOf, type MouldLife, mouldLifeOf, sayChance, sayLeft } from '../../views/mould-life.ts';
import { to } from '../router.ts';
import { useShelf } from '../studio.tsx';
import { useLife, useLives } from '../use-life.ts';
import { Facts } from './facts.tsx';
import { Mark } from './mark.tsx';
import { ProblemNote } from './note.tsx';
import { Stepper } from './stepper.tsx';
import '../styles/life.css';

/** What a mould has left in it, what that rests on, and what to try when it spoils more than it used to. */
export function MouldLifePart({ id, isDrifting }: { id: string; isDrifting: boolean }) {
  const shelf = useShelf();
  const isReady = useLives();
  const life = isReady ? mouldLifeOf(shelf, id as MouldId, isDrifting) : undefined;
  if (!life) return isReady ? null : <p class="wait">Reckoning…</p>;
  return (
    <>
      {life.causes.length > 0 && <Causes life={life} />}
      <section class="card life-card">
        <h2>Life left in it</h2>
        {life.isLast && (
          <p>
            <Mark shape="last" word="last of its kind" tone="act" /> {life.isLast}
          </p>
        )}
        {life.isForecast ? <Forecast life={life} /> : life.expected === undefined && <p>{life.restsOn}</p>}
        {life.rejects && <Facts facts={[life.rejects]} />}
        <p class="field-hint">{life.counts}</p>
        <p class="life-links">
          <a href={to(['life'])}>How long moulds last</a>
          <a href={to(['remake'])}>Which to make again first</a>
        </p>
      </section>
    </>
  );
}

function Forecast({ life }: { life: MouldLife }) {
  const names = useMemo(() => [life.group], [life.group]);
  const { life: known, problem } = useLife(names);
  const posterior = known?.get(life.group)?.sum.posterior;
  if (problem) return <ProblemNote problem={problem} />;
  return posterior ? <ForecastFigures life={life} posterior={posterior} /> : <p class="wait">Reckoning…</p>;
}

const USUAL_RUN = 20;

function ForecastFigures({ life, posterior }: { life: MouldLife; posterior: Posterior }) {
  const [more, setMore] = useState(USUAL_RUN);
  const forecast = useMemo(() => forecastOf(posterior, life.shots, life.expected ?? 1), [posterior, life.shots, life.expected]);
  const { middle, range } = sayLeft(forecast.left);
  return (
    <>
      <p class="life-left">
        <strong>{middle} sound shots left</strong>
        <span>{range} with 80 %</span>
      </p>
      <Stepper label="Shots wanted" value={more} low={1} leaps={[10, 50, -10]} onChange={setMore} />
      <p class="life-chance" aria-live="polite">
        {sayCount(more, 'more sound shot')}: the chance is <strong>{sayChance(forecast.chanceOf(more))}</strong>.
      </p>
      <p class="field-hint">{life.restsOn} A forecast, not a promise: look at the mould.</p>
    </>
  );
}

function Causes({ life }: { life: MouldLife }) {
  return (
    <section class="card life-card">
      <h2>Before you blame the mould</h2>
      {life.trust && <p class="field-hint">{life.trust}</p>}
      {life.causes.map(({ fault, causes }) => (
        <div key={fault}>
          <h3>{fault}</h3>
          <ul class="cause-list">
            {causes.map(({ look, says }) => (
              <li key={says}>
                <strong>{look}</strong> {says}
              </li>
            ))}
          </ul>
        </div>
      ))}
    </section>
  );
}
