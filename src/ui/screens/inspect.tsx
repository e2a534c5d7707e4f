import { inspect } from '../../actions/inspect.ts';
import type { Day, MasterId, MouldId, Sha256 } from '../../domain/brand.ts';
import { addDays, parseDay } from '../../domain/day.ts';
import { MASTER_FAULTS, MOULD_FAULTS, type MouldFault } from '../../domain/fault.ts';
import { LOOK_DAYS } from '../../domain/flag.ts';
import { beside, formProblem } from '../../domain/form-problem.ts';
import { GRADES, type Grade } from '../../domain/grade.ts';
import { isProblem } from '../../domain/problem.ts';
import { thingOf } from '../../domain/shelf.ts';
import { titleOf } from '../../domain/title.ts';
import { parsePastDay } from '../../domain/typed-day.ts';
import { addressOf } from '../address.ts';
import { Button } from '../parts/button.tsx';
import { Choices, Field } from '../parts/field.tsx';
import { KeptDraft } from '../parts/kept-draft.tsx';
import { NoThing } from '../parts/no-thing.tsx';
import { OnDay } from '../parts/on-day.tsx';
import { PhotoField } from '../parts/photos.tsx';
import { SaveProblem } from '../parts/save-problem.tsx';
import { Screen } from '../parts/screen.tsx';
import { Shape } from '../parts/shape.tsx';
import { goInstead } from '../router.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useDraft } from '../use-draft.ts';
import { useSave } from '../use-save.ts';

interface InspectDraft {
  readonly grade: string;
  readonly faults: readonly MouldFault[];
  readonly note: string;
  readonly next: string;
  /** Empty for today. */
  readonly on: string;
  readonly pictures: readonly Sha256[];
}

const MEANS: Readonly<Record<Grade, string>> = {
  sound: 'sound: use it freely',
  watch: 'watch: look at its first waxes',
  worn: 'worn: replace it soon',
  failed: 'failed: do not use it',
};
const MEANS_OF_MASTER: Readonly<Record<Grade, string>> = {
  ...MEANS,
  watch: 'watch: look at it before each new mould',
  failed: 'failed: make no mould of it',
};
/** Days to the next look that are offered. Common practice, no source. */
const SOON = [30, 90, 180, 365] as const;
const SOON_WORD: Readonly<Record<(typeof SOON)[number], string>> = { 30: '1 month', 90: '3 months', 180: '6 months', 365: 'a year' };

/** A look at a mould or master: its grade, what is wrong, when to look again. Faults seen before are ticked, to be cleared when mended. */
export function InspectScreen({ id }: { id: string }) {
  const thing = thingOf(useShelf(), id);
  return thing?.noun === 'mould' || thing?.noun === 'master' ? <InspectForm id={thing.id} /> : <NoThing word="thing" />;
}

function InspectForm({ id }: { id: MouldId | MasterId }) {
  const deps = useDeps();
  const shelf = useShelf();
  const thing = thingOf(shelf, id);
  const today = deps.today();
  const draft = useDraft<InspectDraft>(`inspect:${id}`, () => ({
    grade: '',
    faults: (thing && 'faults' in thing && thing.faults) || [],
    note: '',
    next: addDays(today, shelf.studio.lookDays ?? LOOK_DAYS),
    on: '',
    pictures: [],
  }));
  const { values, set, clear } = draft;
  const save = useSave(values);
  const says = (field: string) => beside(save.problem, field);
  if (!thing) return null;
  const title = titleOf(shelf, thing);
  const isMaster = thing.noun === 'master';
  const means = isMaster ? MEANS_OF_MASTER : MEANS;
  const faults: readonly MouldFault[] = isMaster ? [...new Set([...MASTER_FAULTS, ...values.faults])] : MOULD_FAULTS;

  function submit(): void {
    const next = values.next === '' || values.grade === 'failed' ? undefined : parseDay(values.next);
    if (isProblem(next)) return save.show(formProblem({ next: next.says }));
    const on = parsePastDay(values.on, today);
    if (isProblem(on)) return save.show(formProblem({ on: on.says }));
    const grade = GRADES.find((each) => each === values.grade);
    const { note, pictures } = values;
    void save.run(
      (confirmed) =>
        inspect(deps, {
          of: id,
          grade,
          faults: values.faults,
          note,
          next,
          on,
          pictures: pictures.length > 0 ? pictures : undefined,
          confirmed,
        }),
      () => {
        clear();
        if (thing) goInstead(addressOf(thing));
        return `${title}: ${grade}.`;
      },
    );
  }

  return (
    <Screen
      title="Inspect"
      actions={
        <Button look="main" disabled={save.isBusy} onClick={submit}>
          {values.grade ? `Write down: ${values.grade}` : 'Write it down'}
        </Button>
      }
    >
      <h2 class="form-title">{title}</h2>
      <KeptDraft draft={draft} pictures={values.pictures} />
      <SaveProblem save={save} />
      <Choices
        legend="How far can it be trusted?"
        options={GRADES.map((grade) => ({ value: grade, word: means[grade], sign: <Shape name={grade} /> }))}
        picked={GRADES.filter((grade) => grade === values.grade)}
        onPick={([grade]) => set({ grade: grade ?? '' })}
      />
      {says('grade') && <p class="field-problem">{says('grade')}</p>}
      <Choices
        legend="What is wrong with it, if anything?"
        several
        options={faults.map((fault) => ({ value: fault, word: fault }))}
        picked={values.faults}
        onPick={(faults) => set({ faults })}
      />
      {says('faults') && <p class="field-problem">{says('faults')}</p>}
      {values.grade !== 'failed' && (
        <NextLook today={today} value={values.next} problem={says('next')} onChange={(next) => set({ next })} />
      )}
      <Field label="Note" lines={2} max={4000} value={values.note} problem={says('note')} onInput={(note) => set({ note })} />
      <OnDay today={today} value={values.on} problem={says('on')} onChange={(on) => set({ on })} />
      <PhotoField pictures={values.pictures} onChange={(pictures) => set({ pictures })} />
    </Screen>
  );
}

function NextLook({
  today,
  value,
  problem,
  onChange,
}: {
  today: Day;
  value: string;
  problem: string | undefined;
  onChange: (day: string) => void;
}) {
  return (
    <>
      <Field
        label="Next look by"
        type="date"
        value={value}
        problem={problem}
        hint="Empty: when the studio’s usual time is up."
        onInput={onChange}
      />
      <div class="button-row">
        {SOON.map((days) => (
          <Button key={days} aria-label={`Next look in ${SOON_WORD[days]}`} onClick={() => onChange(addDays(today, days))}>
            {SOON_WORD[days]}
          </Button>
        ))}
      </div>
    </>
  );
}
