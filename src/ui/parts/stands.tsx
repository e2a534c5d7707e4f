import type { OnFront } from '../../views/front-of.ts';
import { to } from '../router.ts';
import { Icon } from './icon.tsx';

/** Where a thing stands; a tap shows the drawer on its cabinet's front. */
export function StandsPart({ path, front, thing }: { path: string; front: OnFront | null; thing: string }) {
  if (path === '') return <p class="stands">It has no place yet.</p>;
  const words = (
    <>
      <Icon name="shelves" />
      <span>
        <small>Stands in</small>
        <strong>{path}</strong>
      </span>
    </>
  );
  if (!front) return <p class="stands">{words}</p>;
  return (
    <a class="stands stands-link" href={to(['shelves', front.cabinet], { drawer: front.drawer, thing })}>
      {words}
    </a>
  );
}
