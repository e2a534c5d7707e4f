import { type Problem, problem } from '../domain/problem.ts';

/** An open camera. It stays on until `stop`. */
export interface Camera {
  readonly stream: MediaStream;
  /** Only where the camera has a lamp. */
  readonly torch?: { on(lit: boolean): Promise<boolean> };
  /** Only where the camera can come closer: how many times, and how to. */
  readonly zoom?: { readonly times: readonly number[]; to(times: number): Promise<boolean> };
  /** Which of the device's cameras this is. */
  readonly deviceId?: string;
  stop(): void;
}

export interface CameraWish {
  readonly facing: 'environment' | 'user';
  /** A camera chosen before; when it is gone, another one is taken. */
  readonly deviceId?: string;
}

/** What phones' cameras can do besides what the DOM library knows of. */
interface PhoneCamera {
  readonly torch?: boolean;
  readonly focusMode?: readonly string[];
  readonly zoom?: { readonly min: number; readonly max: number };
}

export interface CameraName {
  readonly deviceId: string;
  readonly name: string;
}

/** The cameras of this device, to choose from; names are only told once one of them was allowed. */
export async function listCameras(media: MediaDevices | undefined = navigator.mediaDevices): Promise<readonly CameraName[]> {
  try {
    const devices = (await media?.enumerateDevices?.()) ?? [];
    return devices
      .filter(({ kind, deviceId }) => kind === 'videoinput' && deviceId !== '')
      .map(({ deviceId, label }, i) => ({ deviceId, name: label || `Camera ${i + 1}` }));
  } catch {
    return [];
  }
}

/** Steps a thumb can tell apart. */
const ZOOM_TIMES = [1, 2, 4];

const INSTEAD = 'Type the code, or use a picture of the label.';

/** Opens a camera, asking the user where needed. A Problem says why there is none and what to do instead. */
export async function openCamera(wish: CameraWish, media: MediaDevices | undefined = navigator.mediaDevices): Promise<Camera | Problem> {
  if (!media?.getUserMedia) {
    return problem('The camera can only be used on a secure (https) page, and this one is not.', INSTEAD);
  }
  const size = { width: { ideal: 1280 }, height: { ideal: 720 } };
  const wishes: MediaTrackConstraints[] = [{ facingMode: { ideal: wish.facing }, ...size }];
  if (wish.deviceId) wishes.unshift({ deviceId: { exact: wish.deviceId }, ...size });
  let why: unknown;
  for (const video of wishes) {
    try {
      return cameraOf(await media.getUserMedia({ audio: false, video }));
    } catch (error) {
      why = error;
      if (!isName(error, 'OverconstrainedError', 'NotFoundError')) break;
    }
  }
  return whyNot(why);
}

function cameraOf(stream: MediaStream): Camera {
  const [track] = stream.getVideoTracks();
  const can = (track?.getCapabilities?.() ?? {}) as PhoneCamera;
  if (can.focusMode?.includes('continuous')) void apply(track, { focusMode: 'continuous' });
  const { zoom } = can;
  const times = zoom ? ZOOM_TIMES.filter((each) => each >= zoom.min && each <= zoom.max) : [];
  const deviceId = track?.getSettings?.().deviceId;
  return {
    stream,
    ...(deviceId ? { deviceId } : {}),
    ...(times.length > 1 ? { zoom: { times, to: (each: number) => apply(track, { zoom: each }) } } : {}),
    ...(can.torch ? { torch: { on: (lit: boolean) => apply(track, { torch: lit }) } } : {}),
    stop: () => {
      for (const each of stream.getTracks()) each.stop();
    },
  };
}

/** Whether the camera did it; some say they have a lamp and then refuse to light it. */
async function apply(track: MediaStreamTrack | undefined, setting: object): Promise<boolean> {
  try {
    await track?.applyConstraints({ advanced: [setting as MediaTrackConstraintSet] });
    return true;
  } catch {
    return false;
  }
}

function isName(error: unknown, ...names: readonly string[]): boolean {
  return typeof error === 'object' && error !== null && names.includes((error as { name?: string }).name ?? '');
}

function whyNot(error: unknown): Problem {
  if (isName(error, 'NotAllowedError', 'SecurityError')) {
    return problem(
      'The camera was refused.',
      `To allow it, open this page’s permissions (the sign beside the address, or the phone’s settings for this app) and try again. ${INSTEAD}`,
    );
  }
  if (isName(error, 'NotFoundError', 'OverconstrainedError')) return problem('This device has no camera that can be used.', INSTEAD);
  if (isName(error, 'NotReadableError', 'AbortError')) {
    return problem('The camera is busy: another app or tab is using it.', `Close that one and try again. ${INSTEAD}`);
  }
  return problem('The camera did not start.', `Try again. ${INSTEAD}`);
}
