import { createHash } from 'node:crypto';
import { vi } from 'vitest';
import { handOver, type MadeBackup, makeBackup } from '../../src/actions/make-backup.ts';
import type { DeviceSettings } from '../../src/device/settings.ts';
import type { Sha256 } from '../../src/domain/brand.ts';
import type { Picture } from '../../src/domain/picture.ts';
import { isProblem, type Problem } from '../../src/domain/problem.ts';
import type { Keeper } from '../../src/store/keeper.ts';
import { openBackup } from '../../src/worker/open-backup.ts';
import type { OpenedStudio } from '../../src/worker/protocol.ts';
import { START_DAY } from './builders.ts';

export function settingsInMemory(): DeviceSettings {
  const values = new Map<string, unknown>();
  return { get: <T>(key: string) => values.get(key) as T | undefined, set: (key, value) => void values.set(key, value) };
}

/** An installed app on a phone, whose share sheet takes everything. */
export function onPhone(share: (given: { files: File[] }) => Promise<void> = async () => undefined): void {
  vi.stubGlobal('window', { matchMedia: () => ({ matches: true }) });
  vi.stubGlobal('navigator', { canShare: () => true, share });
}

/** A made-up picture of some bytes, under their true name. */
export function aPicture(seed: number, bytes = 40): Picture {
  const of = (salt: number) => Uint8Array.from({ length: bytes }, (_, i) => (seed * 31 + salt + i * i) % 256).buffer;
  return { sha: shaOf(of(0)), type: 'image/jpeg', bytes: of(0), thumb: { type: 'image/jpeg', bytes: of(7) } };
}

export function shaOf(bytes: ArrayBuffer | Uint8Array): Sha256 {
  return createHash('sha256')
    .update(bytes instanceof ArrayBuffer ? new Uint8Array(bytes) : bytes)
    .digest('hex') as Sha256;
}

export function depsOf(keeper: Keeper, settings = settingsInMemory()) {
  return { keeper, settings, today: () => START_DAY, isDemo: false };
}

/** A backup as it would be handed over. */
export async function backupOf(keeper: Keeper): Promise<MadeBackup & { readonly bytes: Uint8Array<ArrayBuffer> }> {
  const deps = depsOf(keeper);
  const made = await makeBackup(deps, () => undefined);
  if (!made || isProblem(made)) throw new Error(made?.says ?? 'called off');
  await handOver(deps, made);
  return { ...made, bytes: new Uint8Array(await made.file.arrayBuffer()) };
}

export function readBackup(bytes: Uint8Array<ArrayBuffer> | string): Promise<OpenedStudio | Problem> {
  return openBackup({ file: new Blob([bytes]), isOnlyChecked: false }, () => undefined);
}
