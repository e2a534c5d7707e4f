import { discardWax } from '../../actions/discard-wax.ts';
import { receiveWax } from '../../actions/receive-wax.ts';
import { weighWax } from '../../actions/weigh-wax.ts';
import type { WaxId } from '../../domain/brand.ts';
import { beside, formProblem } from '../../domain/form-problem.ts';
import { sayMass } from '../../domain/measure-words.ts';
import { isProblem } from '../../domain/problem.ts';
import { parsePastDay } from '../../domain/typed-day.ts';
import { parseTypedNumber } from '../../domain/typed-number.ts';
import { gramsFrom } from '../../domain/units.ts';
import { useDeps } from '../studio.tsx';
import { useDraft } from '../use-draft.ts';
import { useSave } from '../use-save.ts';
import { inUnits, useUnits } from '../use-units.ts';
import { Button } from './button.tsx';
import { Field } from './field.tsx';
import { ProblemNote } from './note.tsx';
import { OnDay } from './on-day.tsx';
import { SaveProblem } from './save-problem.tsx';
import { Sheet } from './sheet.tsx';
import type { WaxTask } from './wax-card.tsx';

type MassTask = Exclude<WaxTask, 'fill'>;
const TITLE: Readonly<Record<MassTask, string>> = { receive: 'Receive', weigh: 'Weigh', discard: 'Discard' };
const LABEL: Readonly<Record<MassTask, string>> = { receive: 'Came in', weigh: 'The scale says, without the tub', discard: 'Thrown out' };

/** Wax that came in, was weighed, or was thrown out. */
export function WaxSheet({
  task,
  wax,
  name,
  grams,
  onClose,
}: {
  task: MassTask;
  wax: WaxId;
  name: string;
  grams: number;
  onClose: () => void;
}) {
  const deps = useDeps();
  const units = useUnits();
  const { values, set, clear, problem } = useDraft(inUnits(`wax-${task}:${wax}`, units), () => ({ mass: '', lot: '', note: '', on: '' }));
  const save = useSave({ ...values, grams: values.mass });

  function submit(): void {
    const typed = parseTypedNumber(values.mass);
    if (isProblem(typed)) return save.show(formProblem({ grams: typed.says }));
    const on = parsePastDay(values.on, deps.today());
    if (isProblem(on)) return save.show(formProblem({ on: on.says }));
    const mass = typed === undefined ? undefined : gramsFrom(typed, units.mass);
    const { lot, note } = values;
    void save.run(
      (confirmed) => {
        if (task === 'receive') return receiveWax(deps, { wax, grams: mass, lot, note, on });
        const command = { wax, grams: mass, note, on, units, confirmed };
        return task === 'weigh' ? weighWax(deps, command) : discardWax(deps, command);
      },
      () => {
        clear();
        onClose();
        const said = sayMass(mass ?? 0, units);
        return task === 'receive'
          ? `${name}: ${said} came in.`
          : task === 'weigh'
            ? `${name}: ${said} in the tub.`
            : `${name}: ${said} thrown out.`;
      },
    );
  }

  return (
    <Sheet title={`${TITLE[task]}: ${name}`} onClose={onClose}>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          submit();
        }}
      >
        <p>Reckoned now: {sayMass(grams, units)}.</p>
        {problem && <ProblemNote problem={problem} />}
        <SaveProblem save={save} />
        <Field
          label={LABEL[task]}
          keys="decimal"
          unit={units.mass}
          max={12}
          value={values.mass}
          problem={beside(save.problem, 'grams')}
          onInput={(mass) => set({ mass })}
        />
        {task === 'receive' && (
          <Field
            label="Lot or invoice, if you keep it"
            max={60}
            value={values.lot}
            problem={beside(save.problem, 'lot')}
            onInput={(lot) => set({ lot })}
          />
        )}
        <Field
          label={task === 'discard' ? 'Why' : 'Note'}
          max={4000}
          value={values.note}
          problem={beside(save.problem, 'note')}
          onInput={(note) => set({ note })}
        />
        <OnDay today={deps.today()} value={values.on} problem={beside(save.problem, 'on')} onChange={(on) => set({ on })} />
        <div class="button-row">
          <Button look="main" type="submit" disabled={save.isBusy}>
            Write it down
          </Button>
        </div>
      </form>
    </Sheet>
  );
}
