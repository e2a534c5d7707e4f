import { useEffect, useState } from 'preact/hooks';
import { inTurns } from './turns.ts';

/** What a long job answers, done in turns so that taps never wait for it; while it is done anew, what it answered last. It begins anew when one of `rests` changes. */
export function useInTurns<T>(job: () => Generator<void, T>, rests: readonly unknown[]): T | undefined {
  const [answer, setAnswer] = useState<{ readonly value: T }>();
  useEffect(() => inTurns(answered(job(), (value) => setAnswer({ value }))), rests);
  return answer?.value;
}

function* answered<T>(slices: Generator<void, T>, tell: (value: T) => void): Generator<void, void> {
  tell(yield* slices);
}
