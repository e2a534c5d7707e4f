import { useMemo } from 'preact/hooks';
import { markDoubtful } from '../../actions/mark-doubtful.ts';
import type { Day, MouldId } from '../../domain/brand.ts';
import { dayInWords } from '../../domain/day-words.ts';
import type { DoubtFrom } from '../../domain/lineage/trace.ts';
import { sayCount } from '../../domain/measure-words.ts';
import type { Mould } from '../../domain/shelf.ts';
import { isPoured } from '../../domain/size/step.ts';
import { titleOf } from '../../domain/title.ts';
import { parseTypedNumber } from '../../domain/typed-number.ts';
import { type TracePage, tracePageOf } from '../../views/trace-page.ts';
import { addressOf } from '../address.ts';
import { Button, LinkButton } from '../parts/button.tsx';
import { Choices, Field } from '../parts/field.tsx';
import { Mark } from '../parts/mark.tsx';
import { NoThing } from '../parts/no-thing.tsx';
import { ProblemNote } from '../parts/note.tsx';
import { SaveProblem } from '../parts/save-problem.tsx';
import { Screen } from '../parts/screen.tsx';
import { TakeList } from '../parts/take-list.tsx';
import { ThingRow } from '../parts/thing-row.tsx';
import { Working } from '../parts/working.tsx';
import { to } from '../router.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useDraft } from '../use-draft.ts';
import { useSave } from '../use-save.ts';
import { useTrace } from '../use-trace.ts';

const SINCE = ['day', 'shot', 'all'] as const;
type Since = (typeof SINCE)[number];
const SINCE_WORD: Readonly<Record<Since, string>> = { day: 'From a day on', shot: 'From a shot on', all: 'All of them' };

interface TraceDraft {
  readonly since: Since;
  readonly day: string;
  readonly shot: string;
}

/** From a failing mould, with the day or shot from which it is doubtful: where its waxes and castings are now. */
export function TraceScreen({ id }: { id: string }) {
  const mould = useShelf().things.mould.get(id as MouldId);
  return mould ? <TraceOf mould={mould} /> : <NoThing word="mould" />;
}

function TraceOf({ mould }: { mould: Mould }) {
  const shelf = useShelf();
  const {
    values,
    set,
    problem: lost,
  } = useDraft<TraceDraft>(`trace:${mould.id}`, () => ({ since: 'day', day: mould.runs?.at(-1)?.on ?? '', shot: '' }));
  const typed = parseTypedNumber(values.shot);
  const shot = typeof typed === 'number' && Number.isInteger(typed) && typed > 0 ? typed : undefined;
  // Metal poured straight in makes no shots.
  const asked = isPoured(shelf, mould) ? SINCE.filter((value) => value !== 'shot') : SINCE;
  const { since, day } = values;
  const from = useMemo(() => doubtOf(mould.id, since, day, shot), [mould.id, since, day, shot]);
  const { trace, problem, progress } = useTrace(from);
  const page = useMemo(
    () => trace && tracePageOf(shelf, mould, trace, sinceInWords(since, day, shot)),
    [trace, since, day, shot, shelf, mould],
  );
  return (
    <Screen title="Trace its waxes" actions={page && page.marks.length > 0 && <MarkAll mould={mould} page={page} />}>
      <h2 class="form-title">{titleOf(shelf, mould)}</h2>
      {lost && <ProblemNote problem={lost} />}
      <Choices
        legend="Since when is it doubtful?"
        options={asked.map((value) => ({ value, word: SINCE_WORD[value] }))}
        picked={[values.since]}
        onPick={([since]) => since && set({ since })}
      />
      {values.since === 'day' && <Field label="First doubtful day" type="date" value={values.day} onInput={(day) => set({ day })} />}
      {values.since === 'shot' && (
        <Field
          label="First doubtful shot"
          keys="numeric"
          value={values.shot}
          hint={`It has ${sayCount(mould.shots, 'shot')} logged; the first is 1.`}
          problem={values.shot !== '' && shot === undefined ? 'A shot is a whole number from 1.' : undefined}
          onInput={(typedShot) => set({ shot: typedShot })}
        />
      )}
      {problem && <ProblemNote problem={problem} />}
      {from && !page && !problem && <Working says="Reading the journal…" {...progress} />}
      {page && <Traced page={page} />}
    </Screen>
  );
}

/** Undefined as long as something is still to be said. */
function doubtOf(mould: MouldId, since: Since, day: string, shot: number | undefined): DoubtFrom | undefined {
  if (since === 'all') return { mould };
  if (since === 'day') return day === '' ? undefined : { mould, day: day as Day };
  return shot === undefined ? undefined : { mould, shot };
}

function sinceInWords(since: Since, day: string, shot: number | undefined): string {
  if (since === 'all') return 'all of it';
  return since === 'day' ? `from ${dayInWords(day as Day)} on` : `from shot ${shot} on`;
}

function MarkAll({ mould, page }: { mould: Mould; page: TracePage }) {
  const deps = useDeps();
  const save = useSave();
  return (
    <>
      <SaveProblem save={save} />
      <Button
        look="main"
        disabled={save.isBusy}
        onClick={() =>
          save.run(
            () => markDoubtful(deps, { mould: mould.id, things: page.marks }),
            (entries) => `${sayCount(entries.length, 'thing')} marked for a look; they are in To do.`,
          )
        }
      >
        Mark {page.marks.length === 1 ? 'it' : `all ${page.marks.length}`} for a look
      </Button>
      <LinkButton href={to(['mould', mould.id])}>To the mould</LinkButton>
    </>
  );
}

function Traced({ page }: { page: TracePage }) {
  return (
    <>
      <p role="status">{page.says}</p>
      {page.groups.map(({ heading, lines }) => (
        <section key={heading}>
          <h2 class="section">
            {heading} <small>{lines.length}</small>
          </h2>
          <ul class="list">
            {lines.map((line) => (
              <ThingRow
                key={line.key}
                href={line.thing ? addressOf(line.thing) : '#/attention'}
                title={line.title}
                detail={`${line.pieces} · ${line.where}`}
                marks={
                  line.isCertain ? (
                    <Mark shape="worn" word="from it" tone="soon" />
                  ) : (
                    <Mark shape="watch" word="may be from it" tone="note" />
                  )
                }
              />
            ))}
          </ul>
        </section>
      ))}
      {page.groups.length > 0 && (
        <>
          <p class="field-hint">
            Piles mix runs, and nobody writes down which piece was taken: “up to” and “may be” say what is possible, not what is known.
          </p>
          <TakeList shown={{ of: 'table', ...page.list }} />
        </>
      )}
    </>
  );
}
