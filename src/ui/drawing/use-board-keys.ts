import { useEffect, useRef } from 'preact/hooks';
import { keyed, type SheetName } from './keys.ts';
import type { Easel } from './use-drawing.ts';

/** A letter or figure waits this long: a scanner that types a label sends the next one sooner, and cuts no drawers with it. */
const WAIT_MS = 65;

/** Hears the keys of the board. */
export function useBoardKeys(easel: Easel, open: (sheet: SheetName) => void, merge: () => void): (event: KeyboardEvent) => void {
  const waiting = useRef<ReturnType<typeof setTimeout>>(undefined);
  useEffect(() => () => clearTimeout(waiting.current), []);
  return (event) => {
    clearTimeout(waiting.current);
    const run = keyed(event, easel, open, merge);
    if (!run) return;
    event.preventDefault();
    if (event.key.length === 1 && event.key !== ' ' && !event.ctrlKey && !event.metaKey) waiting.current = setTimeout(run, WAIT_MS);
    else run();
  };
}
