import type { Shelf } from '../domain/shelf.ts';

/** What a hint may point at. The empty room says its own first step. */
export type FirstStep = 'drawer' | 'record' | 'label';

/** A studio that has recorded this many moulds and masters needs no telling. */
const KNOWS_BY = 4;

/** Whether a studio still finds its way. */
export function isBeginning(shelf: Shelf): boolean {
  return shelf.things.mould.size + shelf.things.master.size < KNOWS_BY;
}

/** Whether the hint for a step is to be shown: not before it can be done, and not once it has been. */
export function isNext(shelf: Shelf, step: FirstStep): boolean {
  const recorded = shelf.things.mould.size + shelf.things.master.size;
  return step === 'label' ? recorded > 0 && isBeginning(shelf) : recorded === 0;
}
