import type { DeviceSettings } from '../device/settings.ts';
import { NAME_MAX } from '../domain/field.ts';

const KEPT_AS = 'who';
const DEVICE_AS = 'device-name';

/** Who uses this device; it is written beside every entry made on it. Undefined until somebody says. */
export function whoUses(settings: DeviceSettings): string | undefined {
  return nameIn(settings, KEPT_AS);
}

/** What this device is called: “bench phone”. */
export function deviceName(settings: DeviceSettings): string | undefined {
  return nameIn(settings, DEVICE_AS);
}

/** Who or what wrote an entry: the person, else the device. */
export function writerOf(settings: DeviceSettings): string | undefined {
  return whoUses(settings) ?? deviceName(settings);
}

export function setDeviceName(settings: DeviceSettings, name: string): void {
  settings.set(DEVICE_AS, name);
}

function nameIn(settings: DeviceSettings, key: string): string | undefined {
  const kept = settings.get<unknown>(key);
  return typeof kept === 'string' ? kept.trim().slice(0, NAME_MAX) || undefined : undefined;
}

export function setWho(settings: DeviceSettings, name: string): void {
  settings.set(KEPT_AS, name);
}
