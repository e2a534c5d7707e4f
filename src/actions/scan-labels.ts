import { type Camera, openCamera } from '../device/camera.ts';
import { makeDecoder } from '../device/decode.ts';
import { decodePicture } from '../device/decode-picture.ts';
import { startScanLoop } from '../device/scan-loop.ts';
import { vibrate } from '../device/vibrate.ts';
import { stayAwake } from '../device/wake-lock.ts';
import type { Code } from '../domain/brand.ts';
import { parseCode } from '../domain/label.ts';
import { isProblem, type Problem, problem } from '../domain/problem.ts';

export interface ScanListener {
  readonly onCode: (code: Code) => void;
  /** A symbol that is no label of the studio's, or has a slip; scanning goes on. */
  readonly onStranger: (why: Problem) => void;
  /** Scanning has ended by itself. */
  readonly onEnd: (why: Problem) => void;
}

export interface Scanning {
  readonly torch?: Camera['torch'];
  /** Turns the camera off. */
  readonly stop: () => void;
}

/** A label held before the camera counts once, until it has been out of sight this long. */
const SAME_MS = 2000;
const decoder = makeDecoder();

/** Shows the camera in the video and reads labels from it until stopped. */
export async function scanLabels(video: HTMLVideoElement, listener: ScanListener): Promise<Scanning | Problem> {
  const camera = await openCamera({ facing: 'environment' });
  if (isProblem(camera)) return camera;
  let seen: { readonly text: string; readonly at: number } | undefined;
  const hear = (text: string) => {
    const isNew = text !== seen?.text || performance.now() - seen.at > SAME_MS;
    seen = { text, at: performance.now() };
    if (!isNew) return;
    const code = parseCode(text);
    if (isProblem(code)) return listener.onStranger(code);
    vibrate(50);
    listener.onCode(code);
  };
  const sleep = stayAwake();
  const stop = () => {
    sleep();
    stopLoop();
    camera.stop();
    video.srcObject = null;
  };
  const end = (why: Problem) => {
    stop();
    listener.onEnd(why);
  };
  const stopLoop = startScanLoop({ video, decoder, onText: hear, onProblem: end });
  // `ended` is only told when the system took the camera away, not after `stop`.
  camera.stream.getVideoTracks()[0]?.addEventListener('ended', () => {
    end(problem('The camera was taken away by the phone or by another app.', 'Try again, type the code, or use a picture.'));
  });
  video.srcObject = camera.stream;
  try {
    await video.play();
  } catch (error) {
    // Broken off when the screen is left at once: the stop that follows is all that is needed. Refused when a phone saves its battery.
    if ((error as { readonly name?: string }).name !== 'AbortError') {
      stop();
      return problem('The phone did not let the camera’s picture be shown.', 'Try again, type the code, or use a picture.');
    }
  }
  return { ...(camera.torch ? { torch: camera.torch } : {}), stop };
}

/** The code of the first label in a picture file. */
export async function scanPicture(file: Blob): Promise<Code | Problem> {
  const texts = await decodePicture(file, decoder);
  if (isProblem(texts)) return texts;
  const read = texts.map(parseCode);
  return read.find((each): each is Code => !isProblem(each)) ?? read[0] ?? problem('There is no label to be read in that picture.');
}
