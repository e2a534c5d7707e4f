import { addCabinet } from '../../actions/add-cabinet.ts';
import { beside, formProblem } from '../../domain/form-problem.ts';
import { numberOn } from '../../domain/numbering.ts';
import { isProblem } from '../../domain/problem.ts';
import type { Shelf } from '../../domain/shelf.ts';
import { parseTypedNumber } from '../../domain/typed-number.ts';
import { lengthIn, mmFrom } from '../../domain/units.ts';
import { goInstead, to } from '../router.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useDraft } from '../use-draft.ts';
import { useSave } from '../use-save.ts';
import { useUnits } from '../use-units.ts';
import { Button } from './button.tsx';
import { Field } from './field.tsx';
import { ProblemNote } from './note.tsx';
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
  const { values, set, clear, problem } = useDraft(`add-cabinet:${length}`, () => ({
    name: '',
    rows: 6,
    columns: 2,
    widthMm: shown(WIDTH),
    heightMm: shown(HEIGHT),
  }));
  const save = useSave(values);
  const likely = freeName(useShelf());
  const name = values.name.trim() || likely;
  const isSizeWrong = beside(save.refused, 'widthMm') ?? beside(save.refused, 'heightMm');
  function submit(): void {
    const [width, height] = [parseTypedNumber(values.widthMm), parseTypedNumber(values.heightMm)];
    if (isProblem(width) || width === undefined) return save.show(formProblem({ widthMm: width?.says ?? 'Say how wide it is.' }));
    if (isProblem(height) || height === undefined) return save.show(formProblem({ heightMm: height?.says ?? 'Say how high it is.' }));
    const size = { widthMm: tenths(mmFrom(width, length)), heightMm: tenths(mmFrom(height, length)) };
    void save.run(
      (confirmed) => addCabinet(deps, { ...values, ...size, name, units, confirmed }),
      ([cabinet]) => {
        clear();
        onClose();
        if (cabinet) goInstead(to(['shelves', cabinet.id]));
        return `${name} stands on your shelves, with ${values.rows * values.columns} drawers.`;
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
          hint={`Left empty, it is called ${likely}.`}
          problem={beside(save.problem, 'name')}
        />
        <Stepper label="Drawers one above the other" value={values.rows} low={1} high={100} onChange={(rows) => set({ rows })} />
        {beside(save.problem, 'rows') && <p class="field-problem">{beside(save.problem, 'rows')}</p>}
        <Stepper label="Drawers side by side" value={values.columns} low={1} high={100} onChange={(columns) => set({ columns })} />
        {beside(save.problem, 'columns') && <p class="field-problem">{beside(save.problem, 'columns')}</p>}
        <details class="more" open={isSizeWrong !== undefined}>
          <summary>Its size</summary>
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
        </details>
        <p class="field-hint">
          All drawers start the same size. <a href="#/draw/new">Draw the front yourself</a> where they are not.
        </p>
        {problem && <ProblemNote problem={problem} />}
        <SaveProblem save={save} />
        <Button look="main" type="submit" disabled={save.isBusy}>
          Add it, with {values.rows * values.columns} drawers
        </Button>
      </form>
    </Sheet>
  );
}

/** The first of “Cabinet 1”, “Cabinet 2” … that no place has. */
function freeName(shelf: Shelf): string {
  const taken = new Set([...shelf.things.place.values()].map(({ name }) => name));
  return numberOn('Cabinet 0', 1, (name) => taken.has(name))[0] ?? '';
}

const tenths = (mm: number) => Math.round(mm * 10) / 10;
