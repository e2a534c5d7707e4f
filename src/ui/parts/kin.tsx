import { useLate } from '../use-late.ts';
import { lazy } from './lazy.tsx';

const KinCard = lazy(async () => (await import('./kin-card.tsx')).KinCard);

/** The lineage and size of a thing, on its page, out of sight at first: a frame after the page, since after a change it goes through all descent. */
export function Kin({ id }: { id: string }) {
  return useLate(id) === id ? <KinCard id={id} /> : null;
}
