import { isProblem, type Problem, problem } from '../domain/problem.ts';
import type { Decoder } from './decode.ts';

/** Bytes; a phone's largest pictures have some 30 MB. */
const PICTURE_MAX = 60_000_000;

export interface Look {
  /** Long side of the image looked at, px. */
  readonly longSide: number;
  /** Degrees it is turned by. */
  readonly turn: number;
}

/**
 * The looks worth taking at a picture, quickest first: middle sizes average grain away, the full size shows small labels, and a turned
 * look gives the finder patterns other pixels to be found by.
 */
export function looksAt(width: number, height: number): readonly Look[] {
  const full = Math.max(width, height);
  const sizes = [1200, 640, 2400, 4000].map((size) => Math.min(size, full));
  return [...new Set(sizes)]
    .map((longSide) => ({ longSide, turn: 0 }))
    .concat([
      { longSide: Math.min(1000, full), turn: 30 },
      { longSide: Math.min(500, full), turn: 0 },
    ]);
}

/** Texts of the labels in a picture file, at least one; a Problem when it is too large, no picture, or shows no label. */
export async function decodePicture(file: Blob, decoder: Decoder): Promise<readonly string[] | Problem> {
  if (file.size > PICTURE_MAX) {
    return problem(
      `That file is too large for a picture of a label (${Math.round(file.size / 1e6)} MB).`,
      'Nothing was changed. Take a picture of the label alone.',
    );
  }
  let bitmap: ImageBitmap;
  try {
    bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch {
    return problem('That file is not a picture this phone can open.', 'Nothing was changed. Choose another, or type the code.');
  }
  try {
    for (const look of looksAt(bitmap.width, bitmap.height)) {
      const image = draw(bitmap, look);
      const texts = image ? await decoder.decode(image, true) : [];
      if (isProblem(texts) || texts.length > 0) return texts;
    }
    return problem(
      'There is no label to be read in that picture.',
      'Take it closer, sharp, with the whole label and some white around it; or type the code.',
    );
  } finally {
    bitmap.close();
  }
}

function draw(bitmap: ImageBitmap, { longSide, turn }: Look): ImageData | null {
  const scale = longSide / Math.max(bitmap.width, bitmap.height);
  const [width, height] = [bitmap.width * scale, bitmap.height * scale];
  const radians = (turn * Math.PI) / 180;
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(width * Math.cos(radians) + height * Math.sin(radians)));
  canvas.height = Math.max(1, Math.round(width * Math.sin(radians) + height * Math.cos(radians)));
  const paint = canvas.getContext('2d', { willReadFrequently: true });
  if (!paint) return null;
  // A picture with see-through parts counts as lying on white.
  paint.fillStyle = '#fff';
  paint.fillRect(0, 0, canvas.width, canvas.height);
  paint.imageSmoothingQuality = 'high';
  paint.translate(canvas.width / 2, canvas.height / 2);
  paint.rotate(radians);
  paint.drawImage(bitmap, -width / 2, -height / 2, width, height);
  return paint.getImageData(0, 0, canvas.width, canvas.height);
}
