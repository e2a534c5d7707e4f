import { signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { useShelf } from './studio.tsx';
import { inTurns } from './turns.ts';

/** Moulds whose castings come out a size small, as last reckoned; none before the first time. */
export const smallSeen = signal<ReadonlySet<string>>(new Set());

/** After what needs attention was looked at, and after several quick actions only once. */
const AFTER_MS = 1500;

/** Reckons again when the shelf changed, a little at a time. Its code comes after the first load, since it knows all of lineages and sizes. */
export function useWatchSmall(): void {
  const shelf = useShelf();
  useEffect(() => {
    let stop = () => clearTimeout(timer);
    const timer = setTimeout(() => {
      let isOff = false;
      stop = () => {
        isOff = true;
      };
      import('../views/small-castings.ts').then(
        ({ smallCastings }) => {
          if (isOff) return;
          const slices = smallCastings(shelf);
          const next = () => {
            const { done, value } = slices.next();
            if (done) smallSeen.value = value;
            return { done: done === true, value: undefined };
          };
          stop = inTurns({ next } as Iterator<void, void>);
        },
        () => undefined, // Not fetched: a mark less, and each mould's page still says it.
      );
    }, AFTER_MS);
    return () => stop();
  }, [shelf]);
}
