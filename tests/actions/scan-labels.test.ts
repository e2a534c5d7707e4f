import { afterEach, expect, it, vi } from 'vitest';
import { scanLabels } from '../../src/actions/scan-labels.ts';
import { isProblem } from '../../src/domain/problem.ts';

const stopped = vi.hoisted(() => vi.fn());
const letSleep = vi.hoisted(() => vi.fn());
vi.mock('../../src/device/camera.ts', () => ({
  listCameras: async () => [],
  openCamera: async () => ({ stream: { getVideoTracks: () => [] }, stop: stopped }),
}));
vi.mock('../../src/device/decode.ts', () => ({ makeDecoder: () => ({ warm: () => undefined }) }));
vi.mock('../../src/device/scan-loop.ts', () => ({ startScanLoop: () => () => undefined }));
vi.mock('../../src/device/wake-lock.ts', () => ({ stayAwake: () => letSleep }));
afterEach(() => vi.clearAllMocks());

const listener = { onCode: () => undefined, onSeveral: () => undefined, onStranger: () => undefined, onEnd: () => undefined };
const videoRefusing = (name: string) =>
  ({ srcObject: null, play: () => Promise.reject(new DOMException('refused', name)) }) as unknown as HTMLVideoElement;

it('says so, and turns the camera off and lets the phone sleep, when the phone refuses to show its picture', async () => {
  const outcome = await scanLabels(videoRefusing('NotAllowedError'), listener);
  expect(isProblem(outcome) && outcome.says).toContain('did not let');
  expect(stopped).toHaveBeenCalledOnce();
  expect(letSleep).toHaveBeenCalledOnce();
});

it('is not put off by a screen left at once', async () => {
  expect(isProblem(await scanLabels(videoRefusing('AbortError'), listener))).toBe(false);
  expect(stopped).not.toHaveBeenCalled();
  expect(letSleep).not.toHaveBeenCalled();
});
