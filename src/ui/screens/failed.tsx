import { failMould } from '../../actions/fail-mould.ts';
import type { MouldId, Sha256 } from '../../domain/brand.ts';
import { MOULD_FAULTS, type MouldFault } from '../../domain/fault.ts';
import { beside, formProblem } from '../../domain/form-problem.ts';
import { isProblem } from '../../domain/problem.ts';
import { parsePastDay } from '../../domain/typed-day.ts';
import { type InsteadPage, insteadPageOf } from '../../views/instead-page.ts';
import { Button, LinkButton } from '../parts/button.tsx';
import { Choices, Field } from '../parts/field.tsx';
import { InsteadList } from '../parts/instead-list.tsx';
import { KeptDraft } from '../parts/kept-draft.tsx';
import { Mark } from '../parts/mark.tsx';
import { NoThing } from '../parts/no-thing.tsx';
import { OnDay } from '../parts/on-day.tsx';
import { PhotoField } from '../parts/photos.tsx';
import { SaveProblem } from '../parts/save-problem.tsx';
import { Screen } from '../parts/screen.tsx';
import { to } from '../router.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useDraft } from '../use-draft.ts';
import { useSave } from '../use-save.ts';

interface FailedDraft {
  readonly faults: readonly MouldFault[];
  readonly note: string;
  /** Empty for today. */
  readonly on: string;
  readonly pictures: readonly Sha256[];
}

/** Marks a mould failed; once it is, says what to use instead. Undo brings the form back. */
export function FailedScreen({ id }: { id: string }) {
  const page = insteadPageOf(useShelf(), id as MouldId, useDeps().today());
  if (!page) return <NoThing word="mould" />;
  return page.isFailed ? <Instead id={id} page={page} /> : <FailedForm id={id as MouldId} page={page} />;
}

function FailedForm({ id, page }: { id: MouldId; page: InsteadPage }) {
  const deps = useDeps();
  const draft = useDraft<FailedDraft>(`failed:${id}`, () => ({ faults: [], note: '', on: '', pictures: [] }));
  const { values, set, clear } = draft;
  const save = useSave(values);
  const { faults, note, pictures } = values;
  const wrong = beside(save.problem, 'faults');

  function submit(): void {
    const on = parsePastDay(values.on, deps.today());
    if (isProblem(on)) return save.show(formProblem({ on: on.says }));
    void save.run(
      () => failMould(deps, { mould: id, faults, note, on, pictures: pictures.length > 0 ? pictures : undefined }),
      () => {
        clear();
        return `${page.title} is marked failed.`;
      },
    );
  }

  return (
    <Screen
      title="Mark it failed"
      actions={
        <Button look="main" disabled={save.isBusy} onClick={submit}>
          Mark failed
        </Button>
      }
    >
      <h2 class="form-title">{page.title}</h2>
      {page.isLast && (
        <p>
          <Mark shape="last" word="last of its kind" tone="act" /> No other mould of it is left, and no master to make one from.
        </p>
      )}
      <KeptDraft draft={draft} pictures={pictures} />
      <SaveProblem save={save} />
      <Choices
        legend="What is wrong with it?"
        several
        options={MOULD_FAULTS.map((fault) => ({ value: fault, word: fault }))}
        picked={faults}
        onPick={(picked) => set({ faults: picked })}
      />
      {wrong && <p class="field-problem">{wrong}</p>}
      <PhotoField pictures={pictures} onChange={(added) => set({ pictures: added })} />
      <Field
        label="Note"
        lines={2}
        max={4000}
        value={note}
        problem={beside(save.problem, 'note')}
        onInput={(typed) => set({ note: typed })}
      />
      <OnDay today={deps.today()} value={values.on} problem={beside(save.problem, 'on')} onChange={(on) => set({ on })} />
    </Screen>
  );
}

function Instead({ id, page }: { id: string; page: InsteadPage }) {
  return (
    <Screen
      title="What to use instead"
      actions={
        <>
          <LinkButton look="main" href={to(['move'], { things: id })}>
            Move the failed one out
          </LinkButton>
          <LinkButton href={to(['trace', id])}>Trace its waxes</LinkButton>
          <LinkButton href={to(['mould', id])}>Its page</LinkButton>
        </>
      }
    >
      <h2 class="form-title">{page.title}</h2>
      <p class="row-marks">
        <Mark shape="failed" word={page.faults.length > 0 ? `failed: ${page.faults.join(', ')}` : 'failed'} tone="act" />
      </p>
      {page.stands && <p>It still stands in {page.stands}.</p>}
      <InsteadList page={page} />
    </Screen>
  );
}
