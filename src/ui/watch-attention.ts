import { signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { type Attention, attentionOf, lookInSlices } from '../views/attention.ts';
import { useDeps, useShelf } from './studio.tsx';
import { inTurns } from './turns.ts';
import { useUnits } from './use-units.ts';

/** What needs attention, as last looked; null until the first look since opening is done. It follows the shelf a moment later. */
export const attentionSeen = signal<Attention | null>(null);

const NO_MARKS: Attention['byPlace'] = new Map();
/** Marks of places as last looked; none before the first look. */
export const marksSeen = (): Attention['byPlace'] => attentionSeen.value?.byPlace ?? NO_MARKS;

/** Time for what was just done to be drawn first. */
const AFTER_MS = 120;

/** Looks again whenever the shelf, the day or the units change: after what was done is on the glass, and never long at a time. */
export function useWatchAttention(): void {
  const deps = useDeps();
  const shelf = useShelf();
  const units = useUnits();
  const today = deps.today();
  useEffect(() => {
    const seen = () => {
      attentionSeen.value = attentionOf(shelf, today, units);
    };
    return inTurns(lookInSlices(shelf, today, units), seen, { afterMs: attentionSeen.peek() ? AFTER_MS : 0 });
  }, [shelf, units, today]);
}
