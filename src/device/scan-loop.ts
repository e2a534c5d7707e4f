import { isProblem, type Problem } from '../domain/problem.ts';
import type { Sighting } from '../domain/sighting.ts';
import type { Decoder, LabelPicture } from './decode.ts';

export interface ScanLoop {
  readonly video: HTMLVideoElement;
  readonly decoder: Pick<Decoder, 'decode'>;
  /** What one look saw, perhaps nothing; the loop goes on until `stop`. */
  readonly onLook: (seen: readonly Sighting[]) => void;
  /** There is no decoder; the loop has ended. */
  readonly onProblem: (why: Problem) => void;
  /** Least time between two looks, ms. */
  readonly everyMs?: number;
}

/** Long side of the image that is looked at where the page has to draw it, px. The worker makes frames as small. */
const LONG_SIDE = 1280;
/** One look in so many is a thorough one. */
const THOROUGH_EVERY = 4;

/** Looks at a running video again and again, one look at a time. Returns how to stop it; after that nothing is called any more. */
export function startScanLoop({ video, decoder, onLook, onProblem, everyMs = 120 }: ScanLoop): () => void {
  let stopped = false;
  let looks = 0;
  let hasSeen = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let frame: number | undefined;

  async function look(): Promise<void> {
    if (stopped) return;
    const started = performance.now();
    const picture = grab(video);
    if (picture) {
      looks += 1;
      const seen = await decoder.decode(picture, hasSeen || looks % THOROUGH_EVERY === 0);
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

/** What the video shows now, or null while it shows nothing: the frame itself, which costs the page no more than a handle, or else a drawing of it. */
function grab(video: HTMLVideoElement): LabelPicture | null {
  if (video.videoWidth === 0 || video.videoHeight === 0) return null;
  if (typeof VideoFrame !== 'function' || typeof OffscreenCanvas !== 'function') return draw(video);
  try {
    return new VideoFrame(video);
  } catch {
    return draw(video);
  }
}

let canvas: HTMLCanvasElement | undefined;

function draw(video: HTMLVideoElement): ImageData | null {
  const scale = Math.min(1, LONG_SIDE / Math.max(video.videoWidth, video.videoHeight));
  const [width, height] = [Math.round(video.videoWidth * scale), Math.round(video.videoHeight * scale)];
  canvas ??= document.createElement('canvas');
  if (canvas.width !== width || canvas.height !== height) Object.assign(canvas, { width, height });
  const paint = canvas.getContext('2d', { willReadFrequently: true });
  if (!paint) return null;
  paint.drawImage(video, 0, 0, width, height);
  return paint.getImageData(0, 0, width, height);
}
