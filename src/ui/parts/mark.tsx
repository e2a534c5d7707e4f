import { Shape, type ShapeName } from './shape.tsx';

/** How pressing something is. `plain` only names a state. */
export type Tone = 'good' | 'note' | 'soon' | 'act' | 'plain';

/** A state as shape, word and colour. */
export function Mark({ shape, word, tone }: { shape: ShapeName; word: string; tone: Tone }) {
  return (
    <span class={`mark mark-${tone}`}>
      <Shape name={shape} size={18} />
      {word}
    </span>
  );
}
