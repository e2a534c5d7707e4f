import { setAllowances } from '../../actions/allowances.ts';
import { beside, formProblem } from '../../domain/form-problem.ts';
import { sayCount } from '../../domain/measure-words.ts';
import type { OwnAllowance } from '../../domain/plans/allowances.ts';
import { isProblem } from '../../domain/problem.ts';
import { ALLOWANCE_KEYS, type AllowanceKey, allowanceFor } from '../../domain/size/allowance.ts';
import { parseTypedNumber } from '../../domain/typed-number.ts';
import { learnedSteps } from '../../views/learned-steps.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { useSave } from '../use-save.ts';
import { useTypedFigures } from '../use-typed-figures.ts';
import { Button } from './button.tsx';
import { Facts } from './facts.tsx';
import { ProblemNote } from './note.tsx';
import { SaveProblem } from './save-problem.tsx';
import '../styles/settings.css';

const FIGURES = ['percent', 'spread'] as const;

/** How much smaller each step makes a piece: the figures in hand with their source, what readings taught, and the studio's own. */
export function AllowanceEditor() {
  const deps = useDeps();
  const shelf = useShelf();
  const { typed, type, kept, lost } = useTypedFigures('allowances');
  const save = useSave(typed);
  const learned = learnedSteps(shelf);

  function submit(): void {
    const wrong: Record<string, string> = {};
    const allowance: { [K in AllowanceKey]?: OwnAllowance } = {};
    for (const key of ALLOWANCE_KEYS) {
      for (const figure of FIGURES) {
        const cell = `${key} ${figure}`;
        if (!(cell in typed)) continue;
        const read = parseTypedNumber(typed[cell] ?? '');
        if (isProblem(read)) wrong[cell] = read.says;
        else allowance[key] = { ...shelf.studio.allowance?.[key], ...allowance[key], [figure]: read };
      }
    }
    if (Object.keys(wrong).length > 0) return save.show(formProblem(wrong));
    void save.run(() => setAllowances(deps, { allowance }), kept);
  }

  return (
    <details class="more">
      <summary>How much each step shrinks</summary>
      {learned.length > 0 && (
        <section class="card">
          <h2>Learned from your readings</h2>
          <Facts
            facts={learned.map(({ says, percent, readings }) => ({
              name: says,
              says: `${percent}, from ${sayCount(readings, 'reading')}`,
            }))}
          />
        </section>
      )}
      <p>
        Linear shrinkage in %, and one standard deviation of it. These hold until your own readings say otherwise; an emptied figure goes
        back to the usual one.
      </p>
      {lost && <ProblemNote problem={lost} />}
      <SaveProblem save={save} />
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Step</th>
            <th scope="col">%</th>
            <th scope="col">±</th>
          </tr>
        </thead>
        <tbody>
          {ALLOWANCE_KEYS.map((key) => {
            const now = allowanceFor(shelf.studio, key);
            return (
              <tr key={key}>
                <th scope="row">
                  {key}
                  <small class="figures-from">{now.from}</small>
                </th>
                {FIGURES.map((figure) => {
                  const cell = `${key} ${figure}`;
                  return (
                    <td key={figure}>
                      <input
                        inputMode="decimal"
                        autoComplete="off"
                        aria-label={`${key}, ${figure === 'percent' ? '%' : '± %'}`}
                        aria-invalid={beside(save.problem, cell) ? 'true' : undefined}
                        value={typed[cell] ?? String(now[figure])}
                        onInput={(event) => type(cell, event.currentTarget.value)}
                      />
                    </td>
                  );
                })}
              </tr>
            );
          })}
        </tbody>
      </table>
      <Button disabled={save.isBusy} onClick={submit}>
        Keep these figures
      </Button>
    </details>
  );
}
