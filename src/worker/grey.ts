/** A picture's light alone, row by row, 0 black to 255 white. */
export interface Grey {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}

/** What can be looked at. A frame or an image is used up by that. */
export type Picture = VideoFrame | ImageData;

/** Long side of a camera's frame as it is looked at, px: a label held at arm's length still has some 4 px to a module. */
export const FRAME_SIDE = 1280;

/** ITU-R BT.601 weights, in 256ths. */
export function greyOf({ width, height, data }: ImageData): Grey {
  const grey = new Uint8Array(width * height);
  for (let i = 0, k = 0; i < grey.length; i++, k += 4)
    grey[i] = (77 * (data[k] as number) + 150 * (data[k + 1] as number) + 29 * (data[k + 2] as number)) >> 8;
  return { width, height, data: grey };
}

/** Formats whose first plane is the light alone, a byte to the point. Phones' cameras give one of these. */
const HAS_LIGHT = /^(I420|I422|I444|NV12)A?$/;

/** The light of a camera's frame; a large one is made smaller. Null where it can be neither copied nor drawn. Closes the frame. */
export async function greyOfFrame(frame: VideoFrame): Promise<Grey | null> {
  try {
    return (await lightPlane(frame).catch(() => null)) ?? drawn(frame);
  } finally {
    frame.close();
  }
}

/** The frame's own light, which costs a copy; null where it has none, is too large, or is shown turned or stretched. */
async function lightPlane(frame: VideoFrame): Promise<Grey | null> {
  const { format, visibleRect, displayWidth, displayHeight } = frame;
  const { rotation = 0, flip = false } = frame as { rotation?: number; flip?: boolean };
  if (!format || !HAS_LIGHT.test(format) || !visibleRect || rotation !== 0 || flip) return null;
  const { width, height } = visibleRect;
  if (width !== displayWidth || height !== displayHeight || Math.max(width, height) > FRAME_SIDE) return null;
  const bytes = new Uint8Array(frame.allocationSize());
  const [light] = await frame.copyTo(bytes);
  if (!light) return null;
  const { offset, stride } = light;
  if (stride === width) return { width, height, data: bytes.subarray(offset, offset + width * height) };
  const data = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) data.set(bytes.subarray(offset + y * stride, offset + y * stride + width), y * width);
  return { width, height, data };
}

function drawn(frame: VideoFrame): Grey | null {
  const { displayWidth, displayHeight } = frame;
  const scale = Math.min(1, FRAME_SIDE / Math.max(displayWidth, displayHeight));
  const [width, height] = [Math.round(displayWidth * scale), Math.round(displayHeight * scale)];
  const paint = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true });
  if (!paint) return null;
  paint.drawImage(frame, 0, 0, width, height);
  return greyOf(paint.getImageData(0, 0, width, height));
}
