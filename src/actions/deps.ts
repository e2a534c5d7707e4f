import type { Drafts } from '../device/drafts.ts';
import type { Install } from '../device/install.ts';
import type { Keeping } from '../device/persist.ts';
import type { DeviceSettings } from '../device/settings.ts';
import type { Updates } from '../device/updates.ts';
import type { Day } from '../domain/brand.ts';
import type { Keeper } from '../store/keeper.ts';

export type { Keeping };

/** What actions and screens are handed by main.tsx: the studio's records and this device's services. */
export interface Deps {
  readonly keeper: Keeper;
  readonly isDemo: boolean;
  readonly today: () => Day;
  readonly settings: DeviceSettings;
  readonly drafts: Drafts;
  readonly updates: Updates;
  readonly install: Install;
  /** Shows a count on the installed app's icon, where the platform can. */
  readonly badge: (count: number) => void;
  readonly keeping: () => Promise<Keeping>;
  /** Asks the browser not to clear the shelves by itself. */
  readonly askToPersist: () => Promise<boolean>;
}
