import type { FlagKind } from '../domain/entry.ts';
import type { Level } from '../domain/flag.ts';
import type { Tone } from './parts/mark.tsx';
import type { ShapeName } from './parts/shape.tsx';

/** The shape of each kind of flag on fronts and in lists. */
export const FLAG_SHAPE: Readonly<Record<FlagKind, ShapeName>> = {
  failed: 'failed',
  doubtful: 'due',
  worn: 'worn',
  faults: 'watch',
  'old shots': 'worn',
  'old rubber': 'worn',
  rejects: 'watch',
  'look due': 'due',
  'wax low': 'low',
  'wax wrong': 'care',
  'over-full': 'full',
  stray: 'stray',
  'out late': 'away',
  'stock low': 'low',
  'master unsound': 'worn',
};

export const LEVEL_TONE: Readonly<Record<Level, Tone>> = { note: 'note', soon: 'soon', act: 'act' };
