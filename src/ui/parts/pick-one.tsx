import { Choices, Select } from './field.tsx';

interface PickOneProps {
  legend: string;
  options: readonly { readonly id: string; readonly word: string }[];
  picked: string;
  onPick: (id: string) => void;
  problem?: string | undefined;
  /** What to say when there is nothing to pick from; without it nothing is shown then. */
  none?: string;
}

const AS_BUTTONS = 7;
const NOT_SAID = { value: '', word: 'not said' };

/** One of the studio's own few, as large buttons; as a list when there are many. */
export function PickOne({ legend, options, picked, onPick, problem, none }: PickOneProps) {
  if (options.length === 0) return none ? <p class="field-hint">{none}</p> : null;
  const all = [...options.map(({ id, word }) => ({ value: id, word })), NOT_SAID];
  return (
    <>
      {options.length > AS_BUTTONS ? (
        <Select label={legend} value={picked} options={all} onInput={onPick} />
      ) : (
        <Choices legend={legend} options={all} picked={[picked]} onPick={(values) => onPick(values[0] ?? '')} />
      )}
      {problem && <p class="field-problem">{problem}</p>}
    </>
  );
}
