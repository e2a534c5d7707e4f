import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Deps } from '../../src/actions/deps.ts';
import type { Code, MouldId } from '../../src/domain/brand.ts';
import type { Shelf, Thing } from '../../src/domain/shelf.ts';
import { requestScan, scanRequest } from '../../src/ui/scan-request.ts';
import { ScanScreen } from '../../src/ui/screens/scan.tsx';
import { StudioProvider, studioOf } from '../../src/ui/studio.tsx';
import { aMould, aShelf, codeOf } from '../support/builders.ts';

const [owl, toggle, twice] = [codeOf('mould', 1), codeOf('mould', 2), codeOf('mould', 3)];
const shelf = aShelf([
  aMould({ id: 'm1' as MouldId, name: 'Owl seal', code: owl }),
  aMould({ id: 'm2' as MouldId, name: 'Toggle', code: toggle }),
  aMould({ id: 'm3' as MouldId, name: 'Harness mount, phone one', code: twice }),
  aMould({ id: 'm4' as MouldId, name: 'Harness mount, phone two', code: twice }),
]);

function show(over: Shelf = shelf): void {
  const settings = { get: () => undefined, set: () => undefined };
  const deps = { settings, keeper: { shelf: () => over, subscribe: () => () => undefined } } as unknown as Deps;
  render(
    <StudioProvider studio={studioOf(deps)}>
      <ScanScreen />
    </StudioProvider>,
  );
}

async function type(text: string): Promise<void> {
  const button = screen.queryByRole('button', { name: /Type the code/ });
  if (button) fireEvent.click(button);
  fireEvent.input(await screen.findByLabelText('The code on the label'), { target: { value: text } });
}

/** Hash changes are told later than they happen. */
async function settled(): Promise<void> {
  await new Promise((resolve) => setTimeout(resolve, 20));
}

beforeEach(async () => {
  window.location.hash = '#/scan';
  await settled();
});
afterEach(cleanup);

describe('a code typed on the scan screen', () => {
  it('opens the thing once its eighth character is there, and not before', async () => {
    show();
    await type(owl.slice(0, 7));
    expect(window.location.hash).toBe('#/scan');
    await screen.findByText(/1 more character\./);
    await type(owl);
    expect(window.location.hash).toBe('#/mould/m1');
  });

  it('with a slip says so and stays', async () => {
    show();
    await type(owl.slice(0, 7) + (owl.endsWith('Z') ? 'Y' : 'Z'));
    expect((await screen.findByRole('alert')).textContent).toContain('slip');
    expect(window.location.hash).toBe('#/scan');
  });

  it('that is on two things asks which one is meant', async () => {
    show();
    await type(twice);
    await screen.findByText(/Which one do you hold/);
    fireEvent.click(screen.getByRole('button', { name: /phone two/ }));
    expect(window.location.hash).toBe('#/mould/m4');
  });

  it('that nothing carries offers to record it, and to scan another', async () => {
    show(aShelf());
    await type(owl);
    expect((await screen.findByRole('link', { name: 'Record a new mould with this label' })).getAttribute('href')).toBe(
      `#/new/mould?code=${owl}`,
    );
    fireEvent.click(screen.getByRole('button', { name: 'Scan another' }));
    await screen.findByRole('button', { name: /Type the code/ });
  });
});

describe('scanning for another screen', () => {
  it('hands over one thing after the other, until that screen has enough', async () => {
    const back = vi.spyOn(window.history, 'back').mockImplementation(() => undefined);
    vi.spyOn(window.history, 'length', 'get').mockReturnValue(2);
    const taken: string[] = [];
    requestScan({
      purpose: 'Scan what is to be moved',
      onThing: (thing: Thing) => {
        taken.push(thing.id);
        return taken.length < 2 ? 'One picked. And the next?' : undefined;
      },
    });
    await settled();
    show();
    expect(screen.getByRole('heading', { level: 1 }).textContent).toBe('Scan what is to be moved');
    await type(owl);
    await screen.findByText('One picked. And the next?');
    expect(back).not.toHaveBeenCalled();
    await type(toggle as Code);
    expect(taken).toEqual(['m1', 'm2']);
    expect(back).toHaveBeenCalledOnce();
    cleanup();
    await vi.waitFor(() => expect(scanRequest.value).toBeNull());
    vi.restoreAllMocks();
  });
});
