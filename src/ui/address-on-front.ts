import type { OnFront } from '../views/front-of.ts';
import { to } from './router.ts';

/** Where a place stands out on its cabinet's front, perhaps with the thing looked for in it; a place in no cabinet has its own screen. */
export function onFrontAddress({ front, id }: { readonly front: OnFront | null; readonly id: string }, thing?: string): string {
  if (!front) return to(['place', id]);
  return to(['shelves', front.cabinet], { drawer: front.drawer, ...(thing ? { thing } : {}) });
}
