import { afterEach, describe, expect, it, vi } from 'vitest';
import { decodePicture, looksAt } from '../../src/device/decode-picture.ts';
import { isProblem } from '../../src/domain/problem.ts';

afterEach(() => vi.unstubAllGlobals());
const decoder = { decode: async () => [] };

describe('reading a picture file', () => {
  it('refuses a file of 100 MB before opening it', async () => {
    const open = vi.fn();
    vi.stubGlobal('createImageBitmap', open);
    const outcome = await decodePicture({ size: 100_000_000 } as Blob, decoder);
    expect(isProblem(outcome) && outcome.says).toContain('100 MB');
    expect(open).not.toHaveBeenCalled();
  });

  it('says when a picture is no picture', async () => {
    vi.stubGlobal('createImageBitmap', () => Promise.reject(new Error('InvalidStateError')));
    const outcome = await decodePicture(new Blob(['<script>']), decoder);
    expect(isProblem(outcome) && outcome.says).toContain('not a picture');
  });
});

describe('the looks at a picture', () => {
  it('start small, take in the full size, and never enlarge', () => {
    for (const [width, height] of [
      [4000, 3000],
      [900, 1200],
      [80, 60],
      [9000, 400],
    ] as const) {
      const looks = looksAt(width, height);
      const sizes = looks.map((look) => look.longSide);
      expect(Math.max(...sizes)).toBe(Math.min(4000, Math.max(width, height)));
      expect(looks[0]?.longSide).toBeLessThanOrEqual(1200);
      expect(looks.some((look) => look.turn !== 0)).toBe(true);
      expect(looks.length).toBeLessThanOrEqual(6);
    }
  });
});
