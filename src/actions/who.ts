import type { DeviceSettings } from '../device/settings.ts';
import { NAME_MAX } from '../domain/field.ts';

const KEPT_AS = 'who';

/** Who uses this device; it is written beside every entry made on it. Undefined until somebody says. */
export function whoUses(settings: DeviceSettings): string | undefined {
  const kept = settings.get<unknown>(KEPT_AS);
  return typeof kept === 'string' ? kept.trim().slice(0, NAME_MAX) || undefined : undefined;
}

export function setWho(settings: DeviceSettings, name: string): void {
  settings.set(KEPT_AS, name);
}
