import type { State, StateName } from '../../views/state.ts';
import { Mark, type Tone } from './mark.tsx';

const STATE_TONE: Readonly<Record<StateName, Tone>> = {
  sound: 'good',
  watch: 'note',
  worn: 'soon',
  failed: 'act',
  unknown: 'plain',
  intermediate: 'plain',
  retired: 'plain',
  away: 'note',
  low: 'soon',
  last: 'act',
};

/** What state a thing is in, each as shape, word and colour. */
export function StateMarks({ states }: { states: readonly State[] }) {
  return (
    <>
      {states.map(({ name, word }) => (
        <Mark key={`${name} ${word}`} shape={name} word={word} tone={STATE_TONE[name]} />
      ))}
    </>
  );
}
