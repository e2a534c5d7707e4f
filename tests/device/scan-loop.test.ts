// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Decoder } from '../../src/device/decode.ts';
import { startScanLoop } from '../../src/device/scan-loop.ts';
import { type Problem, problem } from '../../src/domain/problem.ts';

/** A video of this size whose frames are never announced, and a canvas that paints nothing. */
function aVideo(width: number, height: number): HTMLVideoElement {
  return { videoWidth: width, videoHeight: height } as HTMLVideoElement;
}

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

function listen(decoder: Decoder, video = aVideo(640, 480)) {
  const [onText, onProblem] = [vi.fn(), vi.fn()];
  return { onText, onProblem, stop: startScanLoop({ video, decoder, onText, onProblem, everyMs: 100 }) };
}

describe('the scan loop', () => {
  it('looks at most ten times a second and tells what it reads, until stopped', async () => {
    const decode = vi.fn(async () => ['M0000000']);
    const { onText, stop } = listen({ decode });
    await vi.advanceTimersByTimeAsync(1000);
    expect(decode.mock.calls.length).toBeGreaterThan(4);
    expect(decode.mock.calls.length).toBeLessThanOrEqual(10);
    expect(onText).toHaveBeenCalledWith('M0000000');
    stop();
    const before = decode.mock.calls.length;
    await vi.advanceTimersByTimeAsync(1000);
    expect(decode).toHaveBeenCalledTimes(before);
  });

  it('never has two looks in flight, and says nothing about a look that ends after it was stopped', async () => {
    let finish: (texts: string[]) => void = () => undefined;
    const decode = vi.fn(() => new Promise<string[]>((resolve) => (finish = resolve)));
    const { onText, stop } = listen({ decode });
    await vi.advanceTimersByTimeAsync(5000);
    expect(decode).toHaveBeenCalledOnce();
    stop();
    finish(['M0000000']);
    await vi.advanceTimersByTimeAsync(1000);
    expect(onText).not.toHaveBeenCalled();
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

  it('looks thoroughly now and then, and always while something foreign is in view', async () => {
    const thorough: (boolean | undefined)[] = [];
    const { stop } = listen({
      decode: async (_, isThorough) => {
        thorough.push(isThorough);
        return thorough.length > 4 ? ['stranger'] : [];
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
