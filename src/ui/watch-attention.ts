import { signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { type Attention, attentionOf, lookInSlices } from '../views/attention.ts';
import { useDeps, useShelf } from './studio.tsx';
import { useUnits } from './use-units.ts';

/** What needs attention, as last looked; null until the first look since opening is done. It follows the shelf a moment later. */
export const attentionSeen = signal<Attention | null>(null);

/** Milliseconds of looking before taps get their turn. */
const TURN_MS = 8;

/** Looks again whenever the shelf, the day or the units change: after what was done is on the glass, and never long at a time. */
export function useWatchAttention(): void {
  const deps = useDeps();
  const shelf = useShelf();
  const units = useUnits();
  const today = deps.today();
  useEffect(() => {
    const slices = lookInSlices(shelf, today, units);
    let timer = setTimeout(look);
    function look(): void {
      const end = performance.now() + TURN_MS;
      while (performance.now() < end) {
        if (!slices.next().done) continue;
        attentionSeen.value = attentionOf(shelf, today, units);
        return;
      }
      timer = setTimeout(look);
    }
    return () => clearTimeout(timer);
  }, [shelf, units, today]);
}
