import type { Movable } from '../../views/move-list.ts';
import { Icon } from './icon.tsx';

interface MoveThingsProps {
  things: readonly Movable[];
  /** What the list is of. */
  legend?: string;
  /** What is said while it is empty. */
  none?: string;
  problem?: string | undefined;
  onRemove: (id: string) => void;
}

const NONE = 'Nothing is on the list yet. Choose things by typing, or scan the label of each, then the label of the place.';

/** Things gathered for one piece of work, each line with a way off the list. */
export function MoveThings({ things, legend = 'What goes', none = NONE, problem, onRemove }: MoveThingsProps) {
  return (
    <section class="several" aria-label={legend}>
      {things.length === 0 && <p>{none}</p>}
      <ul class="list">
        {things.map(({ id, title, detail }) => (
          <li key={id} class="picker-chosen">
            <span class="row-words">
              <span class="row-title">{title}</span>
              <span class="row-detail">{detail}</span>
            </span>
            <button type="button" class="icon-button" aria-label={`Take ${title} off the list`} onClick={() => onRemove(id)}>
              <Icon name="close" />
            </button>
          </li>
        ))}
      </ul>
      {problem && <p class="field-problem">{problem}</p>}
    </section>
  );
}
