import { isProblem, type Problem } from '../domain/problem.ts';
import type { Sighting } from '../domain/sighting.ts';
import type { Decoder } from './decode.ts';

export interface ScanLoop {
  readonly video: HTMLVideoElement;
  readonly decoder: Decoder;
  /** What one look saw, perhaps nothing; the loop goes on until `stop`. */
  readonly onLook: (seen: readonly Sighting[]) => void;
  /** There is no decoder; the loop has ended. */
  readonly onProblem: (why: Problem) => void;
  /** Least time between two looks, ms. */
  readonly everyMs?: number;
}

/** Long side of the image that is looked at, px: a label held at arm's length still has some 4 px to a module. */
const LONG_SIDE = 1280;
/** One look in so many is a thorough one. */
const THOROUGH_EVERY = 4;

/** Looks at a running video again and again, one look at a time. Returns how to stop it; after that nothing is called any more. */
export function startScanLoop({ video, decoder, onLook, onProblem, everyMs = 120 }: ScanLoop): () => void {
  const canvas = document.createElement('canvas');
  const paint = canvas.getContext('2d', { willReadFrequently: true });
  let stopped = false;
  let looks = 0;
  let hasSeen = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let frame: number | undefined;

  function grab(): ImageData | null {
    const { videoWidth, videoHeight } = video;
    if (!paint || videoWidth === 0 || videoHeight === 0) return null;
    const scale = Math.min(1, LONG_SIDE / Math.max(videoWidth, videoHeight));
    const [width, height] = [Math.round(videoWidth * scale), Math.round(videoHeight * scale)];
    if (canvas.width !== width || canvas.height !== height) Object.assign(canvas, { width, height });
    paint.drawImage(video, 0, 0, width, height);
    return paint.getImageData(0, 0, width, height);
  }

  async function look(): Promise<void> {
    if (stopped) return;
    const started = performance.now();
    const image = grab();
    if (image) {
      looks += 1;
      const seen = await decoder.decode(image, hasSeen || looks % THOROUGH_EVERY === 0);
      if (stopped) return;
      if (isProblem(seen)) {
        onProblem(seen);
        return;
      }
      hasSeen = seen.length > 0;
      onLook(seen);
    }
    if (!stopped) timer = setTimeout(wait, Math.max(0, everyMs - (performance.now() - started)));
  }

  function wait(): void {
    // Only where frames are announced is it certain that the next look sees a new one.
    if (typeof video.requestVideoFrameCallback === 'function') frame = video.requestVideoFrameCallback(() => void look());
    else timer = setTimeout(() => void look(), 16);
  }

  wait();
  return () => {
    stopped = true;
    clearTimeout(timer);
    if (frame !== undefined) video.cancelVideoFrameCallback(frame);
  };
}
