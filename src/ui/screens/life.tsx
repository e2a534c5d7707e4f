import { useMemo } from 'preact/hooks';
import { survivalOut } from '../../views/survival-out.ts';
import { type SurvivalCard, survivalCards, survivalNames } from '../../views/survival-page.ts';
import { LinkButton } from '../parts/button.tsx';
import { Facts } from '../parts/facts.tsx';
import { Empty, ProblemNote } from '../parts/note.tsx';
import { Screen } from '../parts/screen.tsx';
import { SurvivalCurve, SurvivalTable } from '../parts/survival-curve.tsx';
import { TakeList } from '../parts/take-list.tsx';
import { to } from '../router.ts';
import { useShelf } from '../studio.tsx';
import { useLife, useLives } from '../use-life.ts';
import '../styles/life.css';

/** How long moulds of each rubber have lasted in this studio. */
export function LifeScreen(_: object) {
  const shelf = useShelf();
  const isReady = useLives();
  const found = isReady ? survivalNames(shelf).join('|') : '';
  const names = useMemo(() => (isReady ? survivalNames(shelf) : []), [found]);
  const { life, problem } = useLife(names);
  const cards = isReady && life ? survivalCards(shelf, life) : undefined;
  return (
    <Screen title="How long moulds last" actions={<LinkButton href={to(['remake'])}>Which to make again first</LinkButton>}>
      {problem && <ProblemNote problem={problem} />}
      {isReady && names.length === 0 ? (
        <Empty title="No mould has been shot yet">
          <p>Log runs, and say why a mould is retired. Here will stand how many shots moulds of each rubber make in your hands.</p>
        </Empty>
      ) : cards && cards.length > 0 ? (
        <>
          {cards.map((card) => (
            <Card key={card.name} card={card} />
          ))}
          <TakeList shown={{ of: 'table', ...survivalOut(cards) }} what="these figures" />
        </>
      ) : (
        !problem && <p class="wait">Reckoning…</p>
      )}
      <details class="card life-rule">
        <summary>What counts as an end</summary>
        <ul>
          <li>Retired as worn out or torn: an end at its shots.</li>
          <li>Graded failed and never put right: an end at its shots, unless it was born with all its faults.</li>
          <li>A dud, and a mould never shot: left out.</li>
          <li>In use, worn, lent, lost, replaced, not wanted: still whole at its shots.</li>
        </ul>
      </details>
    </Screen>
  );
}

function Card({ card }: { card: SurvivalCard }) {
  return (
    <section class="card life-card">
      <h2>{card.title}</h2>
      <p>{card.says}.</p>
      {card.curve.ends > 0 && <SurvivalCurve card={card} />}
      <Facts facts={card.facts} />
      {card.noFit && <p class="field-hint">No fitted life: {card.noFit}</p>}
      <SurvivalTable card={card} />
    </section>
  );
}
