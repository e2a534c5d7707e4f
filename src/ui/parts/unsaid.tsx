import { thingOf } from '../../domain/shelf.ts';
import { unsaidOf } from '../../views/unsaid.ts';
import { to } from '../router.ts';
import { useShelf } from '../studio.tsx';

/** Says once, at the end of a thing's page, what could be added to a thin record. */
export function Unsaid({ id }: { id: string }) {
  const thing = thingOf(useShelf(), id);
  const words = thing ? unsaidOf(thing) : [];
  if (words.length === 0) return null;
  return (
    <p class="field-hint">
      Not said yet: {words.join(', ')}. <a href={to(['edit', id])}>Add it</a> whenever you know it.
    </p>
  );
}
