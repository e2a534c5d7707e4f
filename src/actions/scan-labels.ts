import { type Camera, type CameraName, listCameras, openCamera } from '../device/camera.ts';
import { makeDecoder } from '../device/decode.ts';
import { decodePicture, type ReadPicture } from '../device/decode-picture.ts';
import { startScanLoop } from '../device/scan-loop.ts';
import { vibrate } from '../device/vibrate.ts';
import { stayAwake } from '../device/wake-lock.ts';
import type { Code } from '../domain/brand.ts';
import { parseCode } from '../domain/label.ts';
import { labelsIn, makeListening, type SeenLabel } from '../domain/label-choice.ts';
import { isProblem, type Problem, problem } from '../domain/problem.ts';
import type { Sighting } from '../domain/sighting.ts';

export interface ScanListener {
  readonly onCode: (code: Code) => void;
  /** Several labels in view, to be chosen from; none once there is no choice any more. */
  readonly onSeveral: (labels: readonly SeenLabel[]) => void;
  /** A symbol that is no label of the studio's, or has a slip; scanning goes on. */
  readonly onStranger: (why: Problem) => void;
  /** Scanning has ended by itself. */
  readonly onEnd: (why: Problem) => void;
}

export interface Scanning {
  readonly torch?: Camera['torch'];
  readonly zoom?: Camera['zoom'];
  /** Which camera it is, of which. */
  readonly deviceId?: string;
  readonly cameras: readonly CameraName[];
  /** Turns the camera off. */
  readonly stop: () => void;
}

const decoder = makeDecoder();

/** Shows the camera in the video and reads labels from it until stopped. `deviceId` is the camera chosen before. */
export async function scanLabels(video: HTMLVideoElement, listener: ScanListener, deviceId?: string): Promise<Scanning | Problem> {
  decoder.warm();
  const camera = await openCamera({ facing: 'environment', ...(deviceId ? { deviceId } : {}) });
  if (isProblem(camera)) return camera;
  const listen = makeListening();
  const hear = (seen: readonly Sighting[]) => {
    const { code, several, stranger } = listen(seen, performance.now());
    if (several) listener.onSeveral(several);
    if (stranger) listener.onStranger(stranger);
    if (code === undefined) return;
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
  const stopLoop = startScanLoop({ video, decoder, onLook: hear, onProblem: end });
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
  const { torch, zoom, deviceId: used } = camera;
  const cameras = await listCameras();
  return { ...(torch ? { torch } : {}), ...(zoom ? { zoom } : {}), ...(used ? { deviceId: used } : {}), cameras, stop };
}

/** Several labels in one picture, to be chosen from. */
export interface SeveralLabels extends Pick<ReadPicture, 'wide' | 'tall'> {
  readonly several: readonly SeenLabel[];
}

/** The code of the label in a picture file, or all of them when it shows several. */
export async function scanPicture(file: Blob): Promise<Code | SeveralLabels | Problem> {
  const picture = await decodePicture(file, decoder);
  if (isProblem(picture)) return picture;
  const labels = labelsIn(picture.seen);
  if (labels.length > 1) return { several: labels, wide: picture.wide, tall: picture.tall };
  const [first] = picture.seen;
  return labels[0]?.code ?? parseCode(first?.text);
}
