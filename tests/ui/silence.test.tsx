import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import type { ComponentChildren } from 'preact';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Deps } from '../../src/actions/deps.ts';
import type { EntryId, MouldId } from '../../src/domain/brand.ts';
import type { Entry } from '../../src/domain/entry.ts';
import { History } from '../../src/ui/parts/history.tsx';
import { Picture } from '../../src/ui/parts/picture.tsx';
import { say, ToastPart } from '../../src/ui/parts/toast.tsx';
import { StudioProvider, studioOf } from '../../src/ui/studio.tsx';
import { aMould, aShelf, sha } from '../support/builders.ts';

const shelf = aShelf([aMould({ id: 'm1' as MouldId, name: 'Owl seal' })]);

function show(keeper: object, part: ComponentChildren): void {
  const deps = { keeper: { shelf: () => shelf, subscribe: () => () => undefined, ...keeper }, settings: { get: () => undefined } };
  render(<StudioProvider studio={studioOf(deps as unknown as Deps)}>{part}</StudioProvider>);
}

afterEach(cleanup);

describe('what fails is said', () => {
  it('a history that cannot be read, and it can be tried again', async () => {
    const history = vi.fn().mockRejectedValueOnce(new Error('damaged')).mockResolvedValue({ entries: [], isMore: false });
    show({ history }, <History id={'m1' as MouldId} />);
    expect((await screen.findByRole('alert')).textContent).toContain('could not be read');
    fireEvent.click(screen.getByRole('button', { name: 'Try again' }));
    await screen.findByText('Nothing has been written down about it yet.');
  });

  it.each([
    ['missing', () => Promise.resolve(undefined)],
    ['unreadable', () => Promise.reject(new Error('damaged'))],
  ])('a picture that is %s', async (_, picture) => {
    show({ picture }, <Picture sha={sha(1)} size="whole" alt="Owl" />);
    await screen.findByText('This picture is not on this device.');
  });
});

describe('Undo', () => {
  it('tapped twice takes back once', async () => {
    const entry = { id: 'E1' as EntryId, kind: 'recorded' } as Entry;
    const act = vi.fn(() => Promise.resolve([{ id: 'E2' as EntryId, kind: 'withdrawn', entry: entry.id } as Entry]));
    show({ act, isTakenBack: () => false }, <ToastPart />);
    say('Moved.', [entry]);
    const undo = await screen.findByRole('button', { name: 'Undo' });
    fireEvent.click(undo);
    fireEvent.click(undo);
    await screen.findByText('Taken back.');
    expect(act).toHaveBeenCalledTimes(1);
  });
});
