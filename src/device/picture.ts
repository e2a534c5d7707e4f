import type { Sha256 } from '../domain/brand.ts';
import type { Picture } from '../domain/picture.ts';
import { type Problem, problem } from '../domain/problem.ts';

const LONG_SIDE = 2048;
const THUMB_SIDE = 240;
const BYTES_MAX = 60 * 1024 * 1024;
/** JPEG rather than WebP: Safari reads WebP but silently writes PNG in its place. */
const TYPE = 'image/jpeg';
const QUALITY = 0.85;
const KEPT = 'No picture was added; everything else you typed is still in the form.';

/**
 * Redrawn, so that nothing a camera wrote into the file (place, time, maker) stays with it: upright, at most 2048 px long, with a thumbnail
 * of at most 240 px. A file that is no picture, or over 60 MB, is a Problem.
 */
export async function encodePicture(file: Blob): Promise<Picture | Problem> {
  if (file.size > BYTES_MAX) {
    return problem(`That file is ${Math.round(file.size / 1024 / 1024)} MB; a picture may have up to 60 MB.`, KEPT);
  }
  let bitmap: ImageBitmap;
  try {
    bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch {
    return problem('That file is no picture this device can read.', KEPT);
  }
  try {
    const [whole, thumb] = [await redraw(bitmap, LONG_SIDE), await redraw(bitmap, THUMB_SIDE)];
    if (!whole || !thumb) return problem('This device could not redraw that picture; it may be too large.', KEPT);
    const bytes = await whole.arrayBuffer();
    return { sha: await sha256Of(bytes), type: whole.type, bytes, thumb: { type: thumb.type, bytes: await thumb.arrayBuffer() } };
  } finally {
    bitmap.close();
  }
}

function redraw(bitmap: ImageBitmap, longSide: number): Promise<Blob | null> {
  const scale = Math.min(1, longSide / Math.max(bitmap.width, bitmap.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(bitmap.width * scale));
  canvas.height = Math.max(1, Math.round(bitmap.height * scale));
  const context = canvas.getContext('2d');
  if (!context) return Promise.resolve(null);
  // JPEG has no transparency; without this a see-through drawing turns black.
  context.fillStyle = 'white';
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.imageSmoothingQuality = 'high';
  context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  return new Promise((done) => canvas.toBlob(done, TYPE, QUALITY));
}

async function sha256Of(bytes: ArrayBuffer): Promise<Sha256> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('') as Sha256;
}
