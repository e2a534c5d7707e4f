import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type Drafts, openDrafts } from '../../src/device/drafts.ts';
import type { Day } from '../../src/domain/brand.ts';
import { isProblem } from '../../src/domain/problem.ts';

/** As a browser's: full beyond `room` characters. */
class SmallStorage {
  room = 1_000_000;
  setItem(key: string, value: string): void {
    if (value.length > this.room) throw new DOMException('full', 'QuotaExceededError');
    Object.assign(this, { [key]: value });
  }
  getItem(key: string): string | null {
    return (this as unknown as Record<string, string>)[key] ?? null;
  }
  removeItem(key: string): void {
    delete (this as unknown as Record<string, string>)[key];
  }
}

let storage: SmallStorage;
let settings: Map<string, unknown>;
const open = (day = '2026-11-03') => {
  const kept = {
    get: <T>(key: string) => settings.get(key) as T | undefined,
    set: (key: string, value: unknown) => void settings.set(key, value),
  };
  return openDrafts('studio', () => day as Day, kept);
};
/** What the form finds again. */
function found(drafts: Drafts, form: string): object | undefined {
  const kept = drafts.read(form);
  if (isProblem(kept)) throw new Error(kept.says);
  return kept?.values;
}

/** As a browser does that is killed: what was written to its storage since is not on the disk. */
function killedBack(toDisk: SmallStorage): void {
  storage = toDisk;
  vi.stubGlobal('window', { localStorage: storage });
}

const onDisk = () => Object.assign(new SmallStorage(), storage);

beforeEach(() => {
  vi.useFakeTimers();
  settings = new Map();
  storage = new SmallStorage();
  vi.stubGlobal('window', { localStorage: storage });
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe('a draft', () => {
  it('is there after a new start, with the day it was typed, until it is cleared', () => {
    open().keep('run:1', { shots: 3 });
    expect(open('2026-11-09').read('run:1')).toEqual({ values: { shots: 3 }, on: '2026-11-03' });
    open().clear('run:1');
    expect(open().read('run:1')).toBeUndefined();
  });

  it('that the device refuses lives in the tab, which is held until it is kept or cleared', () => {
    const drafts = open();
    drafts.keep('run:1', { note: 'short' });
    expect(drafts.isHeld()).toBe(false);
    storage.room = 10;
    drafts.keep('run:1', { note: 'a longer note' });
    expect(drafts.isHeld()).toBe(true);
    expect(found(drafts, 'run:1')).toEqual({ note: 'a longer note' });
    expect(open().read('run:1')).toBeUndefined();
    storage.room = 1000;
    drafts.keep('run:1', { note: 'once more' });
    expect([drafts.isHeld(), found(open(), 'run:1')]).toEqual([false, { note: 'once more' }]);
  });

  it('as long as a big list lives in the tab alone, and leaves the others their room', () => {
    const drafts = open();
    drafts.keep('list', { text: 'x'.repeat(500_000) });
    drafts.keep('run:1', { shots: 3 });
    expect(drafts.isHeld()).toBe(true);
    expect(open().read('list')).toBeUndefined();
    expect(found(open(), 'run:1')).toEqual({ shots: 3 });
    drafts.clear('list');
    expect(drafts.isHeld()).toBe(false);
  });

  it('lives in the tab where storage is denied', () => {
    vi.stubGlobal('window', {
      get localStorage() {
        throw new DOMException('denied', 'SecurityError');
      },
    });
    const drafts = open();
    drafts.keep('run:1', { shots: 3 });
    expect([found(drafts, 'run:1'), drafts.isHeld(), drafts.names('shots')]).toEqual([{ shots: 3 }, true, true]);
  });

  it('that cannot be read is told, and lies there until something is typed', () => {
    open().keep('run:1', { shots: 3 });
    const [key = ''] = Object.keys(storage).filter((each) => each.endsWith('run:1'));
    const whole = storage.getItem(key) ?? '';
    for (const text of [whole.slice(0, -9), 'null', '[]', '{"values":[],"on":"2026-11-03"}', whole.replace('"2026-11-03"', '7')]) {
      storage.setItem(key, text);
      const read = open().read('run:1');
      expect(isProblem(read) && `${read.says} ${read.kept}`, text).toMatch(/could not be read.*Nothing on your shelves was changed/);
      expect(storage.getItem(key)).toBe(text);
    }
    open().keep('run:1', { shots: 4 });
    expect(found(open(), 'run:1')).toEqual({ shots: 4 });
  });

  it('knows what any form names', () => {
    const drafts = open();
    drafts.keep('run:1', { pictures: ['abc'] });
    expect([drafts.names('abc'), drafts.names('abd')]).toEqual([true, false]);
  });

  it('outlives a browser that is killed before its storage is on the disk, with the day it was typed', () => {
    const disk = onDisk();
    open().keep('run:1', { shots: 3 });
    vi.advanceTimersByTime(1000);
    killedBack(disk);
    expect(open('2026-11-09').read('run:1')).toEqual({ values: { shots: 3 }, on: '2026-11-03' });
    expect(Object.keys(storage).some((key) => key.endsWith(':run:1'))).toBe(true);
  });

  it.each([7, 'torn', { changes: 9 }, { changes: 9, drafts: 'torn' }, { changes: '9', drafts: [] }, { changes: 9, drafts: [null, ['a']] }])(
    'stays where its copy is none: %j',
    (copy) => {
      open().keep('run:1', { shots: 3 });
      settings.set('drafts:studio', copy);
      expect(found(open(), 'run:1')).toEqual({ shots: 3 });
    },
  );

  it('that was done does not come back after a kill', () => {
    open().keep('run:1', { shots: 3 });
    vi.advanceTimersByTime(1000);
    const disk = onDisk();
    open().clear('run:1');
    vi.advanceTimersByTime(120);
    killedBack(disk);
    expect(open().read('run:1')).toBeUndefined();
  });

  it('of either of two tabs outlives a kill, and a tab opened later changes nothing of what another typed since', () => {
    const disk = onDisk();
    const [one, other] = [open(), open()];
    one.keep('run:1', { shots: 3 });
    other.keep('run:2', { shots: 4 });
    vi.advanceTimersByTime(1000);
    one.keep('run:1', { shots: 5 });
    expect(found(open(), 'run:1')).toEqual({ shots: 5 });
    vi.advanceTimersByTime(1000);
    killedBack(disk);
    expect([found(open(), 'run:1'), found(open(), 'run:2')]).toEqual([{ shots: 5 }, { shots: 4 }]);
  });

  it('typed just before the tab was loaded again is copied by the next one', () => {
    const disk = onDisk();
    open().keep('run:1', { shots: 3 });
    vi.clearAllTimers();
    open();
    vi.advanceTimersByTime(1000);
    killedBack(disk);
    expect(found(open(), 'run:1')).toEqual({ shots: 3 });
  });
});
