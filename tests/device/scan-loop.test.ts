// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Decoder } from '../../src/device/decode.ts';
import { startScanLoop } from '../../src/device/scan-loop.ts';
import { type Problem, problem } from '../../src/domain/problem.ts';
import type { Sighting } from '../../src/domain/sighting.ts';

/** A video of this size whose frames are never announced, and a canvas that paints nothing. */
function aVideo(width: number, height: number): HTMLVideoElement {
  return { videoWidth: width, videoHeight: height } as HTMLVideoElement;
}

const seen = (...texts: readonly string[]): readonly Sighting[] => texts.map((text) => ({ text, corners: [] }));
const grabbed: [number, number][] = [];
beforeEach(() => {
  vi.useFakeTimers();
  grabbed.length = 0;
  vi.spyOn(HTMLCanvasElement.prototype, 'getContext').mockReturnValue({
    drawImage: () => undefined,
    getImageData: (_x: number, _y: number, width: number, height: number) => {
      grabbed.push([width, height]);
      return {} as ImageData;
    },
  } as unknown as never);
});
afterEach(() => {
  vi.useRealTimers();
  vi.restoreAllMocks();
});

function listen(decoder: Pick<Decoder, 'decode'>, video = aVideo(640, 480)) {
  const [onLook, onProblem] = [vi.fn(), vi.fn()];
  return { onLook, onProblem, stop: startScanLoop({ video, decoder, onLook, onProblem, everyMs: 100 }) };
}

describe('the scan loop', () => {
  it('looks at most ten times a second and tells what it reads, until stopped', async () => {
    const decode = vi.fn(async () => seen('M0000000', 'M0000001'));
    const { onLook, stop } = listen({ decode });
    await vi.advanceTimersByTimeAsync(1000);
    expect(decode.mock.calls.length).toBeGreaterThan(4);
    expect(decode.mock.calls.length).toBeLessThanOrEqual(10);
    expect(onLook).toHaveBeenCalledWith(seen('M0000000', 'M0000001'));
    stop();
    const before = decode.mock.calls.length;
    await vi.advanceTimersByTimeAsync(1000);
    expect(decode).toHaveBeenCalledTimes(before);
  });

  it('never has two looks in flight, and says nothing about a look that ends after it was stopped', async () => {
    let finish: (found: readonly Sighting[]) => void = () => undefined;
    const decode = vi.fn(() => new Promise<readonly Sighting[]>((resolve) => (finish = resolve)));
    const { onLook, stop } = listen({ decode });
    await vi.advanceTimersByTimeAsync(5000);
    expect(decode).toHaveBeenCalledOnce();
    stop();
    finish(seen('M0000000'));
    await vi.advanceTimersByTimeAsync(1000);
    expect(onLook).not.toHaveBeenCalled();
  });

  it('says nothing of a decoder that failed after it was stopped', async () => {
    let finish: (why: Problem) => void = () => undefined;
    const { onProblem, stop } = listen({ decode: () => new Promise((resolve) => (finish = resolve)) });
    await vi.advanceTimersByTimeAsync(100);
    stop();
    finish(problem('gone.'));
    await vi.advanceTimersByTimeAsync(100);
    expect(onProblem).not.toHaveBeenCalled();
  });

  it('looks thoroughly now and then, at once again where something was seen, and always while it is in view', async () => {
    const thorough: (boolean | undefined)[] = [];
    const { stop } = listen({
      decode: async (_, isThorough) => {
        thorough.push(isThorough);
        return thorough.length > 4 ? seen('stranger') : [];
      },
    });
    await vi.advanceTimersByTimeAsync(1000);
    stop();
    expect(thorough.slice(0, 7)).toEqual([false, false, false, true, false, true, true]);
  });

  it('ends with the reason when there is no decoder', async () => {
    const why = problem('gone.');
    const decode = vi.fn(async () => why);
    const { onProblem } = listen({ decode });
    await vi.advanceTimersByTimeAsync(2000);
    expect(onProblem).toHaveBeenCalledExactlyOnceWith(why);
    expect(decode).toHaveBeenCalledOnce();
  });

  it('waits for a video that has no picture yet, and shrinks large ones', async () => {
    const decode = vi.fn(async () => []);
    const waiting = listen({ decode }, aVideo(0, 0));
    await vi.advanceTimersByTimeAsync(500);
    expect(decode).not.toHaveBeenCalled();
    waiting.stop();
    const large = listen({ decode }, aVideo(3840, 2160));
    await vi.advanceTimersByTimeAsync(100);
    large.stop();
    expect(grabbed[0]).toEqual([1280, 720]);
  });
});
