import { useEffect, useRef } from 'preact/hooks';
import type { Code } from '../domain/brand.ts';

/** Takes a label that a scanner typed, with the field it was typed into; false leaves it to others. */
export type LabelTaker = (code: Code, field: Element | null) => boolean;

const takers: LabelTaker[] = [];

/** While a screen is shown, a label typed by a scanner is offered to it before it is opened. Parts come before the screens they are in. */
export function useLabelTaker(taker: LabelTaker): void {
  const latest = useRef(taker);
  latest.current = taker;
  useEffect(() => {
    const take: LabelTaker = (code, field) => latest.current(code, field);
    takers.push(take);
    return () => void takers.splice(takers.indexOf(take), 1);
  }, []);
}

/** Whether some screen took it. */
export function offerLabel(code: Code, field: Element | null): boolean {
  return takers.some((take) => take(code, field));
}
