import { useEffect, useState } from 'preact/hooks';
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
