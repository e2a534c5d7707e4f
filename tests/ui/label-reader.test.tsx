import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, expect, it, vi } from 'vitest';
import { LabelReader } from '../../src/ui/parts/label-reader.tsx';

vi.mock('../../src/actions/scan-labels.ts', () => ({
  scanLabels: () => Promise.resolve({ torch: { on: () => Promise.resolve(false) }, cameras: [], stop: () => undefined }),
  scanPicture: () => Promise.resolve(undefined),
}));

afterEach(cleanup);

it('says so when the torch does not light, and does not call it lit', async () => {
  render(<LabelReader onCode={() => undefined} />);
  fireEvent.click(await screen.findByRole('button', { name: /Torch on/ }));
  expect((await screen.findByRole('alert')).textContent).toContain('did not switch its torch');
  expect(screen.getByRole('button', { name: /Torch on/ }).getAttribute('aria-pressed')).toBe('false');
});
