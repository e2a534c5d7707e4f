import { useEffect, useRef } from 'preact/hooks';
import { undoing } from './keys.ts';
import type { Easel } from './use-drawing.ts';

/** Undo and redo from the keys anywhere on the screen, but where something is typed: there they are the field's own. */
export function useUndoKeys(easel: Easel): void {
  const current = useRef(easel);
  current.current = easel;
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const isTyping = event.target instanceof Element && event.target.closest('input, textarea, select, dialog');
      const run = event.defaultPrevented || isTyping ? undefined : undoing(event, current.current);
      if (!run) return;
      event.preventDefault();
      run();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
}
