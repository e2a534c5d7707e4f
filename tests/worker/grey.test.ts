import { afterEach, expect, it, vi } from 'vitest';
import { greyOf, greyOfFrame } from '../../src/worker/grey.ts';

afterEach(() => vi.unstubAllGlobals());

const STRIDE = 6;
/** A frame of 4 × 2 whose light counts up from 1, in rows of 6 bytes that start 3 bytes in. */
function aFrame(over: object = {}) {
  return {
    format: 'NV12',
    visibleRect: { width: 4, height: 2 },
    displayWidth: 4,
    displayHeight: 2,
    allocationSize: () => 40,
    copyTo: async (bytes: Uint8Array) => {
      for (const [i, at] of [3, 4, 5, 6, 9, 10, 11, 12].entries()) bytes[at] = i + 1;
      return [{ offset: 3, stride: STRIDE }];
    },
    close: vi.fn(),
    ...over,
  } as unknown as VideoFrame;
}
/** A canvas on which everything is white. */
function canvasOf(drawn: [number, number][]) {
  return class {
    constructor(width: number, height: number) {
      drawn.push([width, height]);
    }
    getContext = () => ({
      drawImage: () => undefined,
      getImageData: (_x: number, _y: number, width: number, height: number) => ({
        width,
        height,
        data: new Uint8ClampedArray(width * height * 4).fill(255),
      }),
    });
  };
}

it('sums colours to light', () => {
  const pixels = [0, 0, 0, 255, 255, 255, 255, 255, 255, 0, 0, 255, 0, 255, 0, 255, 0, 0, 255, 255];
  const { data } = greyOf({ width: 5, height: 1, data: new Uint8ClampedArray(pixels) } as unknown as ImageData);
  expect([...data]).toEqual([0, 255, 76, 149, 28]);
});

it('takes a frame’s own light, row by row, and lets the frame go', async () => {
  const frame = aFrame();
  const grey = await greyOfFrame(frame);
  expect([grey?.width, grey?.height, [...(grey?.data ?? [])]]).toEqual([4, 2, [1, 2, 3, 4, 5, 6, 7, 8]]);
  expect(frame.close).toHaveBeenCalledOnce();
});

it.each([
  ['has no such plane', { format: 'BGRA' }, [4, 2]],
  ['lies with the graphics processor', { format: null }, [4, 2]],
  ['is shown turned', { rotation: 90, displayWidth: 2, displayHeight: 4 }, [2, 4]],
  ['is shown stretched', { displayWidth: 8 }, [8, 2]],
  ['is large', { visibleRect: { width: 2560, height: 1440 }, displayWidth: 2560, displayHeight: 1440 }, [1280, 720]],
  ['cannot be copied', { copyTo: () => Promise.reject(new Error('gone')) }, [4, 2]],
])('draws a frame that %s', async (_, over, size) => {
  const drawn: [number, number][] = [];
  vi.stubGlobal('OffscreenCanvas', canvasOf(drawn));
  const frame = aFrame(over);
  const grey = await greyOfFrame(frame);
  expect(drawn).toEqual([size]);
  expect([grey?.width, grey?.height]).toEqual(size);
  expect(grey?.data[0]).toBe(255);
  expect(frame.close).toHaveBeenCalledOnce();
});
