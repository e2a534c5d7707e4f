import { setStudioFigures } from '../../actions/studio-figures.ts';
import { beside } from '../../domain/form-problem.ts';
import { RUBBERS } from '../../domain/mould.ts';
import { isProblem } from '../../domain/problem.ts';
import { hemisphereOf } from '../../domain/room.ts';
import { HEMISPHERES } from '../../domain/studio.ts';
import { useDeps, useShelf } from '../studio.tsx';
import { cellOf, figuresCommand, LIFE_FIGURES, lifeShown, lookDaysShown } from '../studio-draft.ts';
import { useSave } from '../use-save.ts';
import { useTypedFigures } from '../use-typed-figures.ts';
import { Button, LinkButton } from './button.tsx';
import { Choices, Field } from './field.tsx';
import { ProblemNote } from './note.tsx';
import { SaveProblem } from './save-problem.tsx';

/** The studio’s own name and figures, which flags and pages are reckoned by. */
export function StudioCard() {
  const deps = useDeps();
  const { studio } = useShelf();
  const { typed, type, kept, lost } = useTypedFigures('studio-figures');
  const save = useSave(typed);
  const says = (cell: string) => beside(save.problem, cell);

  function submit(): void {
    const command = figuresCommand(typed, studio);
    if (isProblem(command)) return save.show(command);
    void save.run(() => setStudioFigures(deps, command), kept);
  }

  return (
    <section class="card">
      <h2>Studio</h2>
      <p>The same on every device that shares this journal. What needs attention is reckoned by these.</p>
      {lost && <ProblemNote problem={lost} />}
      <SaveProblem save={save} />
      <Field
        label="Name of the studio"
        max={120}
        value={typed['name'] ?? studio.name ?? ''}
        problem={says('name')}
        onInput={(name) => type('name', name)}
      />
      <h3>How long a mould lasts</h3>
      <p>Figures marked “from memory” are common talk of the trade, not yours. An emptied one goes back to that.</p>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">Rubber</th>
            <th scope="col">Shots</th>
            <th scope="col">Years</th>
          </tr>
        </thead>
        <tbody>
          {RUBBERS.map((rubber) => (
            <tr key={rubber}>
              <th scope="row">{rubber}</th>
              {LIFE_FIGURES.map((figure) => {
                const cell = cellOf(rubber, figure);
                return (
                  <td key={figure}>
                    <input
                      inputMode="decimal"
                      autoComplete="off"
                      aria-label={`${rubber}, ${figure}`}
                      aria-invalid={says(cell) ? 'true' : undefined}
                      value={typed[cell] ?? lifeShown(studio, rubber, figure)}
                      onInput={(event) => type(cell, event.currentTarget.value)}
                    />
                    <span class="row-detail">{studio.life?.[rubber]?.[figure] === undefined ? 'from memory' : 'the studio’s'}</span>
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
      <Field
        label="Days between looks"
        keys="numeric"
        unit="days"
        max={6}
        value={typed['lookDays'] ?? lookDaysShown(studio)}
        problem={says('lookDays')}
        hint={`${studio.lookDays === undefined ? 'From memory' : 'The studio’s'}: a mould in use is due a look after so many.`}
        onInput={(days) => type('lookDays', days)}
      />
      <div class="button-row">
        <Button look="main" disabled={save.isBusy || Object.keys(typed).length === 0} onClick={submit}>
          Keep the studio’s figures
        </Button>
      </div>
      <h3>Seasons</h3>
      <Choices
        legend="The workshop is in the"
        options={HEMISPHERES.map((value) => ({ value, word: value }))}
        picked={[hemisphereOf(studio)]}
        onPick={([hemisphere]) =>
          void save.run(
            () => setStudioFigures(deps, { hemisphere }),
            (entries) => (entries.length > 0 ? `Seasons of the ${hemisphere}.` : undefined),
          )
        }
      />
      <LinkButton href="#/wax">The workshop through the year, on the wax screen</LinkButton>
    </section>
  );
}
