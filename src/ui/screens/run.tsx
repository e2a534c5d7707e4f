import { batch } from '@preact/signals';
import { useMemo, useRef } from 'preact/hooks';
import { logRun } from '../../actions/log-run.ts';
import { total } from '../../domain/bench.ts';
import type { MouldId } from '../../domain/brand.ts';
import type { WaxFault } from '../../domain/fault.ts';
import { beside } from '../../domain/form-problem.ts';
import { sayCount } from '../../domain/measure-words.ts';
import { isProblem } from '../../domain/problem.ts';
import { isWarning } from '../../domain/warning.ts';
import { driftSays } from '../../views/drift-says.ts';
import { type RunForm as RunFormView, runFormOf } from '../../views/run-form.ts';
import { Button, LinkButton } from '../parts/button.tsx';
import { Field } from '../parts/field.tsx';
import { KeptDraft } from '../parts/kept-draft.tsx';
import { NoThing } from '../parts/no-thing.tsx';
import { Caution } from '../parts/note.tsx';
import { OnDay } from '../parts/on-day.tsx';
import { PhotoField } from '../parts/photos.tsx';
import { PickOne } from '../parts/pick-one.tsx';
import { RejectSteppers } from '../parts/reject-steppers.tsx';
import { SaveProblem } from '../parts/save-problem.tsx';
import { Screen } from '../parts/screen.tsx';
import { Shape } from '../parts/shape.tsx';
import { Stepper } from '../parts/stepper.tsx';
import { ThingPicker } from '../parts/thing-picker.tsx';
import { rememberPlace } from '../recent-places.ts';
import { goInstead, to } from '../router.ts';
import { runCommand, startRun } from '../run-draft.ts';
import { useDeps, useHoldShelf, useShelf } from '../studio.tsx';
import { afterPaint } from '../turns.ts';
import { useDraft } from '../use-draft.ts';
import { useSave } from '../use-save.ts';
import { inUnits, useUnits } from '../use-units.ts';

/** ms in which the browser brings a frame to the glass, when the next one is much work. */
const PRESENTED = 8;

/** A sitting of shots, for waxy thumbs: numbers first, the rest as last time. */
export function RunScreen({ id }: { id: string }) {
  const shelf = useShelf();
  const units = useUnits();
  const form = useMemo(() => runFormOf(shelf, id as MouldId, units), [shelf, id, units]);
  return form ? <RunForm id={id as MouldId} form={form} /> : <NoThing word="mould" />;
}

function RunForm({ id, form }: { id: MouldId; form: RunFormView }) {
  const deps = useDeps();
  const units = useUnits();
  const draft = useDraft(inUnits(`run:${id}`, units), () => startRun(form.offered, units));
  const { values, set, clear } = draft;
  const save = useSave(values);
  const isLogged = useRef(false);
  const holdShelf = useHoldShelf();
  const made = values.shots * form.cavities;
  const bad = total(values.rejects as { readonly [fault: string]: number });
  const says = (field: string) => beside(save.problem, field);

  function submit(): void {
    // It is still here for a frame after the run was logged: a double tap must not log it twice.
    if (isLogged.current) return;
    const command = runCommand(id, values, units, deps.today());
    if (isProblem(command)) return save.show(command);
    const release = holdShelf();
    void save
      .run(
        (confirmed) => logRun(deps, { ...command, confirmed }),
        () => {
          isLogged.current = true;
          // The outcome is on the glass first; drawing this form once more, or the mould's page, would hold it up.
          afterPaint(
            () =>
              batch(() => {
                release();
                clear();
                rememberPlace(deps, values.to);
                goInstead(to(['mould', id]));
              }),
            PRESENTED,
          );
          const logged = `${sayCount(values.shots, 'shot')} logged: ${sayCount(made - bad, 'good wax', 'good waxes')}, ${sayCount(bad, 'reject')}.`;
          return `${logged}${driftSays(deps.keeper.shelf(), id, deps.today())}`;
        },
      )
      .finally(() => {
        if (!isLogged.current) release();
      });
  }

  return (
    <Screen
      title="Log a run"
      actions={
        <Button look="main" disabled={save.isBusy} onClick={submit}>
          {values.shots > 0 ? `Log ${sayCount(values.shots, 'shot')}` : 'Log the run'}
        </Button>
      }
    >
      <h2 class="form-title">{form.title}</h2>
      {form.warnings.length > 0 && !isWarning(save.problem) && (
        <div class="note note-problem" role="alert">
          <Shape name="failed" />
          <div>
            <p>
              <strong>{form.warnings.join(' ')}</strong>
            </p>
            <LinkButton href={to(['mould', id, 'failed'])}>See what to use instead</LinkButton>
          </div>
        </div>
      )}
      {form.smaller && <Caution>{form.smaller}</Caution>}
      <KeptDraft draft={draft} pictures={values.pictures} />
      <SaveProblem save={save} anyway="Log it all the same" />
      <Stepper label="Shots" value={values.shots} leaps={[5, 10, -5]} onChange={(shots) => set({ shots })} />
      {says('shots') && <p class="field-problem">{says('shots')}</p>}
      <p class="run-sum" aria-live="polite">
        {form.cavities > 1 && `${sayCount(values.shots, 'shot')} of ${form.cavities} waxes: ${made}. `}
        <strong>{sayCount(Math.max(0, made - bad), 'good wax', 'good waxes')}</strong>
        {bad > 0 && `, ${sayCount(bad, 'reject')}`}. The mould then has {sayCount(form.shots + values.shots, 'shot')}.
      </p>
      <RejectSteppers
        faults={form.faults}
        shown={form.shown}
        rejects={values.rejects}
        problem={says('rejects')}
        onChange={(fault: WaxFault, count: number) => set({ rejects: { ...values.rejects, [fault]: count } })}
      />
      <PickOne
        legend="Wax"
        options={form.waxes}
        picked={values.wax}
        problem={says('wax')}
        onPick={(wax) => set({ wax })}
        none="No wax is recorded yet."
      />
      <PickOne
        legend="Injector"
        options={form.injectors}
        picked={values.injector}
        problem={says('injector')}
        onPick={(injector) => set({ injector })}
      />
      <fieldset class="settings-row">
        <legend>Settings</legend>
        {form.offered.from && <p class="field-hint">{form.offered.from}</p>}
        <Field
          label="Wax temperature"
          keys="decimal"
          unit={units.temperature}
          value={values.waxC}
          problem={says('waxC')}
          onInput={(waxC) => set({ waxC })}
        />
        <Field
          label="Pressure"
          keys="decimal"
          unit={units.pressure}
          value={values.pressureKpa}
          problem={says('pressureKpa')}
          onInput={(pressureKpa) => set({ pressureKpa })}
        />
        <Field label="Hold" keys="decimal" unit="s" value={values.holdS} problem={says('holdS')} onInput={(holdS) => set({ holdS })} />
      </fieldset>
      <ThingPicker
        label="Where the waxes went"
        nouns={['place']}
        value={values.to}
        problem={says('to')}
        onPick={(place) => set({ to: place })}
        hint="Left empty, they are counted for the mould and stand nowhere."
      />
      <Field label="Note" lines={2} max={4000} value={values.note} problem={says('note')} onInput={(note) => set({ note })} />
      <OnDay today={deps.today()} value={values.on} problem={says('on')} onChange={(on) => set({ on })} />
      <PhotoField pictures={values.pictures} onChange={(pictures) => set({ pictures })} />
      <Caution>
        Wax is hot and under pressure: let the pressure off before opening a pot, point no nozzle at anyone, and wear eye and hand
        protection. The maker’s instructions and data sheets come first; this is common practice, not advice for your machine.
      </Caution>
    </Screen>
  );
}
