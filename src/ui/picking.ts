import { signal } from '@preact/signals';

/** A list in which several things are being chosen. */
export interface Picking {
  readonly ids: readonly string[];
  readonly stop: () => void;
}

/** What the keys for moving and labelling act on; null while nothing is being chosen. */
export const picking = signal<Picking | null>(null);
