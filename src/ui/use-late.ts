import { useEffect, useLayoutEffect, useState } from 'preact/hooks';
import { afterPaint } from './turns.ts';

/** The value as of a frame ago: for what is not in sight, so that what is gets onto the glass first. Undefined in the first frame. */
export function useLate<T>(value: T): T | undefined {
  const [late, setLate] = useState<{ readonly value: T }>();
  useEffect(() => {
    let isOver = false;
    afterPaint(() => {
      if (!isOver) setLate({ value });
    });
    return () => {
      isOver = true;
    };
  }, [value]);
  return late?.value;
}

/** Whether it is drawn once already, and the next task has come: for what would make the first one too long. */
export function useNextTask(isAtOnce: boolean): boolean {
  const [isNext, setNext] = useState(isAtOnce);
  useLayoutEffect(() => {
    if (isNext) return undefined;
    const timer = setTimeout(() => setNext(true));
    return () => clearTimeout(timer);
  }, []);
  return isNext;
}
