import { inject } from 'vitest';
import { type LaunchOptions, launchApp, type OpenApp } from './launch.ts';
import { beSlow } from './patience.ts';
import './built-app.ts';

export { goOffline, keptOffline, kill, makeProfile, type OpenApp, removeProfile } from './launch.ts';

/** A browser of its own with the built app open in it, from the server that all tests share unless told otherwise. */
export function openApp({ prepare, ...options }: Partial<LaunchOptions> = {}): Promise<OpenApp> {
  return launchApp({
    url: inject('appUrl'),
    chrome: inject('chrome'),
    ...options,
    prepare: async (context) => {
      await beSlow(context);
      await prepare?.(context);
    },
  });
}
