import { fieldWord } from '../../domain/field-words.ts';
import type { Noun } from '../../domain/noun.ts';
import { titleOfId } from '../../domain/title.ts';
import type { Editor } from '../form-editor.ts';
import { unitOf } from '../form-values.ts';
import { useShelf } from '../studio.tsx';
import { useUnits } from '../use-units.ts';
import { Choices, Field } from './field.tsx';
import { Icon } from './icon.tsx';
import { ThingPicker } from './thing-picker.tsx';

interface FormFieldProps {
  noun: Noun;
  editor: Editor;
  value: string;
  problem?: string | undefined;
  autoFocus?: boolean;
  onChange: (value: string) => void;
}

/** One field of any noun, typed or chosen as its kind asks. */
export function FormField({ noun, editor, value, problem, autoFocus = false, onChange }: FormFieldProps) {
  const units = useUnits();
  const label = editor.word ?? fieldWord(noun, editor.field);
  switch (editor.as) {
    case 'text':
      return (
        <Field
          label={label}
          value={value}
          max={editor.max}
          autoFocus={autoFocus}
          name={editor.field}
          problem={problem}
          onInput={onChange}
          {...(editor.lines ? { lines: editor.lines } : {})}
          {...(editor.hint ? { hint: editor.hint } : {})}
        />
      );
    case 'figure': {
      const unit = unitOf(editor.quantity, units);
      return <Field label={label} keys="decimal" value={value} problem={problem} onInput={onChange} {...(unit ? { unit } : {})} />;
    }
    case 'day':
      return <Field label={label} type="date" value={value} problem={problem} onInput={onChange} />;
    case 'year':
      return <Field label={label} value={value} problem={problem} hint="Such as 1250, AD 42 or 150 BC." onInput={onChange} />;
    case 'sizes':
      return (
        <Field
          label={label}
          value={value}
          lines={3}
          problem={problem}
          hint={`One to a line, its length (${units.length}) behind a semicolon: small; 14.5`}
          onInput={onChange}
        />
      );
    case 'one':
    case 'many':
    case 'yes':
      return <Chosen label={label} editor={editor} value={value} problem={problem} onChange={onChange} />;
    case 'ref':
      return <ThingPicker label={label} nouns={editor.nouns} value={value} problem={problem} onPick={onChange} />;
    case 'refs':
      return <Several label={label} nouns={editor.nouns} value={value} problem={problem} onChange={onChange} />;
  }
}

type ChosenProps = { label: string; editor: Editor; value: string; problem: string | undefined; onChange: (value: string) => void };

function Chosen({ label, editor, value, problem, onChange }: ChosenProps) {
  const words = editor.as === 'yes' ? ['yes'] : 'options' in editor ? editor.options : [];
  const options = words.map((word) => ({ value: word, word }));
  const isMany = editor.as === 'many';
  const all = isMany ? options : [...options, { value: '', word: editor.as === 'yes' ? 'no' : 'not said' }];
  return (
    <>
      <Choices
        legend={label}
        several={isMany}
        options={all}
        picked={isMany ? value.split('\n').filter(Boolean) : [value]}
        onPick={(picked) => onChange(picked.join('\n'))}
      />
      {problem && <p class="field-problem">{problem}</p>}
    </>
  );
}

function Several({
  label,
  nouns,
  value,
  problem,
  onChange,
}: {
  label: string;
  nouns: readonly Noun[];
  value: string;
  problem: string | undefined;
  onChange: (value: string) => void;
}) {
  const shelf = useShelf();
  const ids = value.split('\n').filter(Boolean);
  return (
    <div class="several">
      <ThingPicker
        label={label}
        nouns={nouns}
        value=""
        problem={problem}
        onPick={(id) => id && onChange([...new Set([...ids, id])].join('\n'))}
      />
      <ul class="list">
        {ids.map((id) => (
          <li key={id} class="picker-chosen">
            <span>{titleOfId(shelf, id)}</span>
            <button
              type="button"
              class="icon-button"
              aria-label={`Take ${titleOfId(shelf, id)} out`}
              onClick={() => onChange(ids.filter((each) => each !== id).join('\n'))}
            >
              <Icon name="close" />
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
