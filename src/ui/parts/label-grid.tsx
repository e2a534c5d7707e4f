import { beside } from '../../domain/form-problem.ts';
import { presetOf, SHEET_PRESETS } from '../../domain/label-presets.ts';
import { GRID_FIELDS } from '../../domain/label-sheet.ts';
import { isProblem } from '../../domain/problem.ts';
import { type ChosenSheet, type LabelSettings, OWN_SHEET, typedGrid } from '../label-settings.ts';
import { Button } from './button.tsx';
import { Choices, Field, Select } from './field.tsx';
import { ProblemNote } from './note.tsx';

interface LabelGridProps {
  chosen: LabelSettings;
  sheet: ChosenSheet;
  onChange: (chosen: LabelSettings) => void;
  onTest: () => void;
}

/** The sheet printed on: a common one by its size, or the studio's own measures; and how true the printer prints. */
export function LabelGrid({ chosen, sheet, onChange, onTest }: LabelGridProps) {
  const isOwn = chosen.sheet === OWN_SHEET;
  const wrong = isProblem(sheet.grid) ? sheet.grid : undefined;
  const choose = (id: string) => {
    // The own grid starts from the sheet chosen before: seldom more than a measure or two differ.
    const own = id === OWN_SHEET && !isOwn ? { own: typedGrid(presetOf(chosen.sheet).grid), isCut: sheet.isCut } : {};
    onChange({ ...chosen, ...own, sheet: id });
  };
  return (
    <section class="card">
      <h2>The sheet</h2>
      <Select
        label="Labels side by side × one below the other, and their size"
        value={chosen.sheet}
        options={[...SHEET_PRESETS.map(({ id, word }) => ({ value: id, word })), { value: OWN_SHEET, word: 'My own sheet, measured' }]}
        onInput={choose}
        hint="Kept on this device."
      />
      {isOwn && (
        <div class="label-measures">
          {GRID_FIELDS.map(({ field, word }) => (
            <Field
              key={field}
              label={word}
              keys="decimal"
              max={8}
              value={chosen.own[field] ?? ''}
              {...(field === 'columns' || field === 'rows' ? {} : { unit: 'mm' })}
              problem={beside(wrong, field)}
              onInput={(value) => onChange({ ...chosen, own: { ...chosen.own, [field]: value } })}
            />
          ))}
          <Choices
            legend="What is it?"
            options={[
              { value: 'ready', word: 'ready-cut labels' },
              { value: 'cut', word: 'plain: print lines to cut along' },
            ]}
            picked={[chosen.isCut ? 'cut' : 'ready']}
            onPick={([what]) => onChange({ ...chosen, isCut: what === 'cut' })}
          />
        </div>
      )}
      {wrong && <ProblemNote problem={wrong} />}
      <details class="label-true">
        <summary>Is it printed at true size?</summary>
        <p>
          Print a test page on plain paper. It has bars of {sheet.bar} mm to hold a ruler to, and the outline of every label: hold it
          against a sheet before a window.
        </p>
        <div class="button-row">
          <Button disabled={wrong !== undefined} onClick={onTest}>
            Print a test page
          </Button>
        </div>
        <Field
          label={`The bar of ${sheet.bar} mm measures`}
          keys="decimal"
          unit="mm"
          max={8}
          value={chosen.measured}
          problem={isProblem(sheet.correction) ? beside(sheet.correction, 'measured') : undefined}
          hint="Left empty, the printer is taken to print true. Everything is enlarged or shrunk by what is missing."
          onInput={(measured) => onChange({ ...chosen, measured })}
        />
      </details>
    </section>
  );
}
