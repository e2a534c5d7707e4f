import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, expect, it, vi } from 'vitest';
import type { Deps } from '../../src/actions/deps.ts';
import { problem } from '../../src/domain/problem.ts';
import { ImportPreview } from '../../src/ui/parts/import-preview.tsx';
import { StudioProvider, studioOf } from '../../src/ui/studio.tsx';
import { aShelf } from '../support/builders.ts';
import { planOf } from '../support/import.ts';

afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

it('what still stands in the way of bringing a list in is said at the end of the rows and comes into view', async () => {
  const shelf = aShelf([]);
  const act = vi.fn(() => Promise.resolve(problem('There is no room left.', 'Nothing was changed.')));
  const deps = { keeper: { shelf: () => shelf, subscribe: () => () => undefined, act }, settings: { get: () => undefined } };
  const shown: Element[] = [];
  vi.spyOn(Element.prototype, 'scrollIntoView').mockImplementation(function (this: Element) {
    shown.push(this);
  });
  const nothing = () => undefined;
  render(
    <StudioProvider studio={studioOf(deps as unknown as Deps)}>
      <ImportPreview
        plan={planOf('Mould no,Design\nK-1,Hare\nK-2,Hare\n', 'mould')}
        problem={undefined}
        choices={undefined}
        onChoices={nothing}
        onColumns={nothing}
        onKept={nothing}
        onOld={nothing}
        onAgain={nothing}
      />
    </StudioProvider>,
  );
  fireEvent.click(screen.getByRole('button', { name: 'Bring in 2' }));
  const said = await screen.findByRole('alert');
  expect(said.textContent).toContain('There is no room left. Nothing was changed.');
  expect(screen.getAllByRole('listitem').at(-1)?.compareDocumentPosition(said)).toBe(Node.DOCUMENT_POSITION_FOLLOWING);
  await vi.waitFor(() => expect(shown.some((element) => element.contains(said))).toBe(true));
});
