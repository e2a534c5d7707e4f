import { signal } from '@preact/signals';
import type { Deps } from '../actions/deps.ts';
import type { Spelling } from './words.ts';

/** Raised by every choice: the whole app is then drawn again. */
export const spellings = signal(0);

export function spellingOf({ settings }: Pick<Deps, 'settings'>): Spelling {
  return settings.get('spelling') === 'mold' ? 'mold' : 'mould';
}

/** Spells every screen this way from now on, on this device. */
export async function chooseSpelling({ settings, keeper }: Pick<Deps, 'settings' | 'keeper'>, spelling: Spelling): Promise<void> {
  settings.set('spelling', spelling);
  const { spell } = await import('./words.ts');
  spell(spelling, () => keeper.shelf());
  spellings.value++;
}
