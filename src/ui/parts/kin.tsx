import { lazy } from './lazy.tsx';

/** The lineage and size of a thing, on its page; its code comes after the page. */
export const Kin = lazy(async () => (await import('./kin-card.tsx')).KinCard);
