import { addCabinet } from '../../actions/add-cabinet.ts';
import { beside, formProblem } from '../../domain/form-problem.ts';
import { isProblem } from '../../domain/problem.ts';
import { parseTypedNumber } from '../../domain/typed-number.ts';
import { lengthIn, mmFrom } from '../../domain/units.ts';
import { go, to } from '../router.ts';
import { useDeps } from '../studio.tsx';
import { useDraft } from '../use-draft.ts';
import { useSave } from '../use-save.ts';
import { useUnits } from '../use-units.ts';
import { Button } from './button.tsx';
import { Field } from './field.tsx';
import { SaveProblem } from './save-problem.tsx';
import { Sheet } from './sheet.tsx';
import { Stepper } from './stepper.tsx';

/** Outside of a front to start from, mm. */
const [WIDTH, HEIGHT] = [900, 1000];

/** A new cabinet: how many drawers it has, and its size, are enough to draw its front. */
export function AddCabinetSheet({ onClose }: { onClose: () => void }) {
  const deps = useDeps();
  const units = useUnits();
  const { length } = units;
  const shown = (mm: number) => String(Math.round(lengthIn(mm, length) * 10) / 10);
  const { values, set, clear } = useDraft(`add-cabinet:${length}`, () => ({
    name: '',
    rows: 6,
    columns: 2,
    widthMm: shown(WIDTH),
    heightMm: shown(HEIGHT),
  }));
  const save = useSave();
  function submit(): void {
    const [width, height] = [parseTypedNumber(values.widthMm), parseTypedNumber(values.heightMm)];
    if (isProblem(width) || width === undefined) return save.show(formProblem({ widthMm: width?.says ?? 'Say how wide it is.' }));
    if (isProblem(height) || height === undefined) return save.show(formProblem({ heightMm: height?.says ?? 'Say how high it is.' }));
    const size = { widthMm: tenths(mmFrom(width, length)), heightMm: tenths(mmFrom(height, length)) };
    void save.run(
      (confirmed) => addCabinet(deps, { ...values, ...size, units, confirmed }),
      ([cabinet]) => {
        clear();
        onClose();
        if (cabinet) go(to(['shelves', cabinet.id]));
        return `${values.name.trim()} stands on your shelves, with ${values.rows * values.columns} drawers.`;
      },
    );
  }
  return (
    <Sheet title="Add a cabinet" onClose={onClose}>
      <form
        class="form"
        onSubmit={(event) => {
          event.preventDefault();
          submit();
        }}
      >
        <Field
          label="What you call it"
          value={values.name}
          onInput={(name) => set({ name })}
          max={120}
          problem={beside(save.problem, 'name')}
        />
        <Stepper label="Drawers one above the other" value={values.rows} low={1} high={100} onChange={(rows) => set({ rows })} />
        {beside(save.problem, 'rows') && <p class="field-problem">{beside(save.problem, 'rows')}</p>}
        <Stepper label="Drawers side by side" value={values.columns} low={1} high={100} onChange={(columns) => set({ columns })} />
        {beside(save.problem, 'columns') && <p class="field-problem">{beside(save.problem, 'columns')}</p>}
        <div class="two">
          <Field
            label="Width of its front"
            unit={length}
            keys="decimal"
            value={values.widthMm}
            onInput={(widthMm) => set({ widthMm })}
            problem={beside(save.problem, 'widthMm')}
          />
          <Field
            label="Height"
            unit={length}
            keys="decimal"
            value={values.heightMm}
            onInput={(heightMm) => set({ heightMm })}
            problem={beside(save.problem, 'heightMm')}
          />
        </div>
        <p class="field-hint">All drawers start the same size. Edit one to give it its own label, periods and size.</p>
        <SaveProblem save={save} />
        <Button look="main" type="submit" disabled={save.isBusy}>
          Add it, with {values.rows * values.columns} drawers
        </Button>
      </form>
    </Sheet>
  );
}

const tenths = (mm: number) => Math.round(mm * 10) / 10;
