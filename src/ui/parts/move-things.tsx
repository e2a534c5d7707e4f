import type { Movable } from '../../views/move-list.ts';
import { Icon } from './icon.tsx';

/** What is to be moved, each line with a way off the list. */
export function MoveThings({
  things,
  problem,
  onRemove,
}: {
  things: readonly Movable[];
  problem?: string | undefined;
  onRemove: (id: string) => void;
}) {
  return (
    <section aria-label="What goes">
      {things.length === 0 && (
        <p>Nothing is on the list yet. Choose things by typing, or scan the label of each, then the label of the place.</p>
      )}
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
