import type { OnFront } from '../views/front-of.ts';
import { to } from './router.ts';

/** Where a thing stands: on its cabinet's front, highlighted, where there is one; else the place's own screen. */
export function drawerAddress(place: string, front: OnFront | null, thing: string): string {
  return front ? to(['shelves', front.cabinet], { drawer: front.drawer, thing }) : to(['place', place]);
}
