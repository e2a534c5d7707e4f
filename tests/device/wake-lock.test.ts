import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { stayAwake } from '../../src/device/wake-lock.ts';

let heard: (() => void) | undefined;
let visibility: string;
beforeEach(() => {
  visibility = 'visible';
  vi.stubGlobal('document', {
    get visibilityState() {
      return visibility;
    },
    addEventListener: (_: string, listener: () => void) => {
      heard = listener;
    },
    removeEventListener: () => {
      heard = undefined;
    },
  });
});
afterEach(() => vi.unstubAllGlobals());

const turns = () => new Promise((resolve) => setTimeout(resolve));

function locks(isRefused = false) {
  const held: { released: boolean; release: () => Promise<void> }[] = [];
  const request = async () => {
    if (isRefused) throw new DOMException('battery', 'NotAllowedError');
    const lock = {
      released: false,
      release: async () => {
        lock.released = true;
      },
    };
    held.push(lock);
    return lock;
  };
  return { held, wakeLock: { request } as unknown as WakeLock };
}

test('the screen stays lit until it is let go, also after the page was hidden', async () => {
  const { held, wakeLock } = locks();
  const sleep = stayAwake(wakeLock);
  await turns();
  expect(held.map(({ released }) => released)).toEqual([false]);
  (held[0] as { released: boolean }).released = true;
  visibility = 'hidden';
  heard?.();
  await turns();
  expect(held).toHaveLength(1);
  visibility = 'visible';
  heard?.();
  await turns();
  expect(held.map(({ released }) => released)).toEqual([true, false]);
  sleep();
  expect(held.map(({ released }) => released)).toEqual([true, true]);
  expect(heard).toBeUndefined();
});

test('let go before the phone has answered, it is given back at once', async () => {
  const { held, wakeLock } = locks();
  stayAwake(wakeLock)();
  await turns();
  expect(held.map(({ released }) => released)).toEqual([true]);
});

test('absent or refused, nothing happens', async () => {
  vi.stubGlobal('navigator', {});
  stayAwake()();
  const { wakeLock } = locks(true);
  const sleep = stayAwake(wakeLock);
  await turns();
  expect(sleep).not.toThrow();
});
