import { describe, expect, it, vi } from 'vitest';
import { makeDecoder } from '../../src/device/decode.ts';
import { openPlatformReader } from '../../src/device/platform-reader.ts';
import { isProblem } from '../../src/domain/problem.ts';
import type { Sighting } from '../../src/domain/sighting.ts';

const image = { width: 200, height: 100, data: new Uint8ClampedArray() } as unknown as ImageData;
const aFrame = () => ({ displayWidth: 200, displayHeight: 100, close: vi.fn() }) as unknown as VideoFrame;
const seen = (...texts: readonly string[]): readonly Sighting[] => texts.map((text) => ({ text, corners: [] }));
const reader = (texts: readonly string[]) => vi.fn(async () => seen(...texts));
const failing = () =>
  vi.fn(async (): Promise<readonly Sighting[]> => {
    throw new Error('out of service');
  });

describe('choosing who reads', () => {
  it('uses the platform’s reader where there is one, and does not load the app’s own', async () => {
    const [platform, own] = [reader(['A']), vi.fn(async () => reader(['B']))];
    expect(await makeDecoder({ platform: async () => platform, own }).decode(image)).toEqual(seen('A'));
    expect(own).not.toHaveBeenCalled();
  });

  it('uses the app’s own where the platform has none, and loads it once', async () => {
    const own = vi.fn(async () => reader(['B']));
    const decoder = makeDecoder({ platform: async () => null, own });
    expect(await decoder.decode(image)).toEqual(seen('B'));
    expect(await decoder.decode(image)).toEqual(seen('B'));
    expect(own).toHaveBeenCalledOnce();
  });

  it('asks the app’s own on a thorough look that the platform’s found nothing in', async () => {
    const own = reader(['B']);
    const decoder = makeDecoder({ platform: async () => reader([]), own: async () => own });
    expect(await decoder.decode(image)).toEqual([]);
    expect(await decoder.decode(image, true)).toEqual(seen('B'));
    expect(own).toHaveBeenCalledWith(image, true);
  });

  it('turns to the app’s own for good when the platform’s fails', async () => {
    const platform = failing();
    const decoder = makeDecoder({ platform: async () => platform, own: async () => reader(['B']) });
    expect(await decoder.decode(image)).toEqual(seen('B'));
    expect(await decoder.decode(image)).toEqual(seen('B'));
    expect(platform).toHaveBeenCalledOnce();
  });

  it('lets a camera’s frame go that the platform’s read, and hands on the others', async () => {
    const [own, frame, other] = [reader(['B']), aFrame(), aFrame()];
    const platform = vi.fn(async (picture: unknown) => seen(...(picture === frame ? ['A'] : [])));
    const decoder = makeDecoder({ platform: async () => platform, own: async () => own });
    await decoder.decode(frame, true);
    expect(frame.close).toHaveBeenCalledOnce();
    await decoder.decode(other, true);
    expect(own).toHaveBeenCalledExactlyOnceWith(other, true);
    expect(other.close).not.toHaveBeenCalled();
  });

  it('loads both beforehand, once, and says nothing of what is out of reach', async () => {
    const own = vi.fn(async () => reader(['B'])).mockRejectedValueOnce(new Error('offline'));
    const platform = vi.fn(async () => null);
    const decoder = makeDecoder({ platform, own });
    decoder.warm();
    decoder.warm();
    expect(own).toHaveBeenCalledOnce();
    expect(platform).toHaveBeenCalledOnce();
    const frame = aFrame();
    expect(isProblem(await decoder.decode(frame))).toBe(true);
    expect(frame.close).toHaveBeenCalledOnce();
    expect(await decoder.decode(image)).toEqual(seen('B'));
  });

  it('says when there is no decoder to be had, and tries again the next time', async () => {
    const own = vi.fn(async () => reader(['B'])).mockRejectedValueOnce(new Error('offline'));
    const decoder = makeDecoder({ platform: async () => null, own });
    const outcome = await decoder.decode(image);
    expect(isProblem(outcome) && `${outcome.says} ${outcome.kept}`).toMatch(/could not be loaded.*Type the code/);
    expect(await decoder.decode(image)).toEqual(seen('B'));
  });
});

describe('the platform’s reader', () => {
  function aDetector(formats: readonly string[]): unknown {
    return class {
      static getSupportedFormats = async () => formats;
      detect = async () => [{ rawValue: 'A', cornerPoints: [{ x: 50, y: 50 }] }, { rawValue: 'B' }];
    };
  }

  it.each([
    ['is absent', undefined],
    ['knows no QR symbols', aDetector([])],
    ['is broken', { getSupportedFormats: () => Promise.reject(new Error('gone')) }],
  ])('is not used where it %s', async (_, detector) => {
    vi.stubGlobal('BarcodeDetector', detector);
    expect(await openPlatformReader()).toBeNull();
    vi.unstubAllGlobals();
  });

  it('gives what it found, and where', async () => {
    vi.stubGlobal('BarcodeDetector', aDetector(['ean_13', 'qr_code']));
    const read = await openPlatformReader();
    vi.unstubAllGlobals();
    for (const picture of [image, aFrame()])
      expect(await read?.(picture, false)).toEqual([{ text: 'A', corners: [{ x: 0.25, y: 0.5 }] }, ...seen('B')]);
  });
});
