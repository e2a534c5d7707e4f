import type { State, StateName } from '../../views/state.ts';
import { smallSeen } from '../watch-small.ts';
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

/** What state a thing is in, each as shape, word and colour; of a mould (`of`) also that its castings come out a size small. */
export function StateMarks({ states, of }: { states: readonly State[]; of?: string }) {
  return (
    <>
      {states.map(({ name, word }, at) => (
        <Mark key={at} shape={name} word={word} tone={STATE_TONE[name]} />
      ))}
      {of !== undefined && smallSeen.value.has(of) && <Mark shape="low" word="comes out small" tone="soon" />}
    </>
  );
}
