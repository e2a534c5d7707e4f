import { describe, expect, it, vi } from 'vitest';
import { listCameras, openCamera } from '../../src/device/camera.ts';
import { isProblem } from '../../src/domain/problem.ts';

function aStream(capabilities: object, applyConstraints = vi.fn(async () => undefined)) {
  const stop = vi.fn();
  const track = { getCapabilities: () => capabilities, getSettings: () => ({}), applyConstraints, stop };
  return { stream: { getVideoTracks: () => [track], getTracks: () => [track] } as unknown as MediaStream, stop, applyConstraints };
}

function mediaOf(getUserMedia: (wish: MediaStreamConstraints) => Promise<MediaStream>): MediaDevices {
  return { getUserMedia } as unknown as MediaDevices;
}

function refusal(name: string): MediaDevices {
  return mediaOf(() => Promise.reject(Object.assign(new Error(name), { name })));
}

const rear = { facing: 'environment' } as const;

describe('opening a camera', () => {
  it.each([
    ['NotAllowedError', 'refused', 'permissions'],
    ['SecurityError', 'refused', 'permissions'],
    ['NotFoundError', 'no camera', 'Type the code'],
    ['OverconstrainedError', 'no camera', 'Type the code'],
    ['NotReadableError', 'busy', 'Close that one'],
    ['AbortError', 'busy', 'Close that one'],
    ['SomethingNew', 'did not start', 'Try again'],
  ])('says what %s means and what to do instead', async (name, says, todo) => {
    const outcome = await openCamera(rear, refusal(name));
    if (!isProblem(outcome)) throw new Error('it opened');
    expect(outcome.says).toContain(says);
    expect(outcome.kept).toContain(todo);
    expect(outcome.kept).toContain('use a picture');
  });

  it.each([['no media devices', {} as MediaDevices]])('says that a page without https has %s', async (_, media) => {
    const outcome = await openCamera(rear, media);
    expect(isProblem(outcome) && outcome.says).toContain('secure');
  });

  it('asks for the rear camera and no sound, and turns everything off', async () => {
    const { stream, stop } = aStream({});
    const ask = vi.fn(async (_: MediaStreamConstraints) => stream);
    const camera = await openCamera(rear, mediaOf(ask));
    if (isProblem(camera)) throw new Error(camera.says);
    expect(ask.mock.calls[0]?.[0]).toMatchObject({ audio: false, video: { facingMode: { ideal: 'environment' } } });
    expect(camera.torch).toBeUndefined();
    camera.stop();
    expect(stop).toHaveBeenCalledOnce();
  });

  it('takes any camera when the one chosen before is gone', async () => {
    const { stream } = aStream({});
    const ask = vi.fn(async (wish: MediaStreamConstraints) => {
      if (typeof wish.video === 'object' && wish.video.deviceId) throw Object.assign(new Error(), { name: 'OverconstrainedError' });
      return stream;
    });
    expect(isProblem(await openCamera({ ...rear, deviceId: 'gone' }, mediaOf(ask)))).toBe(false);
    expect(ask).toHaveBeenCalledTimes(2);
  });

  it('has a torch only where the camera has one, and says when it would not light', async () => {
    const { stream, applyConstraints } = aStream({ torch: true, focusMode: ['manual', 'continuous'] });
    const camera = await openCamera(
      rear,
      mediaOf(async () => stream),
    );
    if (isProblem(camera)) throw new Error(camera.says);
    expect(applyConstraints).toHaveBeenCalledWith({ advanced: [{ focusMode: 'continuous' }] });
    expect(await camera.torch?.on(true)).toBe(true);
    expect(applyConstraints).toHaveBeenCalledWith({ advanced: [{ torch: true }] });
    applyConstraints.mockRejectedValueOnce(new Error('no'));
    expect(await camera.torch?.on(false)).toBe(false);
  });

  it('comes closer only where the camera can, by the steps it can', async () => {
    const open = async (capabilities: object) => {
      const { stream, applyConstraints } = aStream(capabilities);
      const camera = await openCamera(
        rear,
        mediaOf(async () => stream),
      );
      if (isProblem(camera)) throw new Error(camera.says);
      return { camera, applyConstraints };
    };
    for (const none of [{}, { zoom: { min: 1, max: 1.5 } }]) expect((await open(none)).camera.zoom).toBeUndefined();
    const { camera, applyConstraints } = await open({ zoom: { min: 1, max: 3 } });
    expect(camera.zoom?.times).toEqual([1, 2]);
    expect(await camera.zoom?.to(2)).toBe(true);
    expect(applyConstraints).toHaveBeenCalledWith({ advanced: [{ zoom: 2 }] });
  });
});

describe('the device’s cameras', () => {
  it('are told by name, microphones left out; none where they cannot be asked for', async () => {
    const device = (kind: string, deviceId: string, label: string) => ({ kind, deviceId, label });
    const all = [
      device('audioinput', 'm', 'Mic'),
      device('videoinput', 'r', 'Rear'),
      device('videoinput', 'f', ''),
      device('videoinput', '', ''),
    ];
    const media = { enumerateDevices: async () => all } as unknown as MediaDevices;
    expect(await listCameras(media)).toEqual([
      { deviceId: 'r', name: 'Rear' },
      { deviceId: 'f', name: 'Camera 2' },
    ]);
    expect(await listCameras({} as MediaDevices)).toEqual([]);
    expect(await listCameras({ enumerateDevices: () => Promise.reject(new Error('no')) } as unknown as MediaDevices)).toEqual([]);
  });
});
