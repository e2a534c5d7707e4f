import { isProblem, type Problem, problem } from '../domain/problem.ts';
import { eachOnce, type Sighting, turnedBack } from '../domain/sighting.ts';
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

export interface ReadPicture {
  readonly wide: number;
  readonly tall: number;
  /** At least one. */
  readonly seen: readonly Sighting[];
}

/** The symbols in a picture file; a Problem when it is too large, no picture, or shows none. */
export async function decodePicture(file: Blob, decoder: Pick<Decoder, 'decode'>): Promise<ReadPicture | Problem> {
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
    const looks = looksAt(bitmap.width, bitmap.height);
    const largest = looks.reduce((most, look) => (look.longSide > most.longSide ? look : most));
    for (const look of looks) {
      const first = await seenAt(bitmap, look, decoder);
      if (isProblem(first)) return first;
      if (first.length === 0) continue;
      // A picture of a whole drawer: the labels farther off are told only at its full size.
      const rest = look.longSide < largest.longSide ? await seenAt(bitmap, largest, decoder) : [];
      return { wide: bitmap.width, tall: bitmap.height, seen: eachOnce([...first, ...(isProblem(rest) ? [] : rest)]) };
    }
    return problem(
      'There is no label to be read in that picture.',
      'Take it closer, sharp, with the whole label and some white around it; or type the code.',
    );
  } finally {
    bitmap.close();
  }
}

/** Corners as shares of the picture as it was given, whatever it was looked at as. */
async function seenAt(bitmap: ImageBitmap, look: Look, decoder: Pick<Decoder, 'decode'>): Promise<readonly Sighting[] | Problem> {
  const image = draw(bitmap, look);
  const seen = image ? await decoder.decode(image, true) : [];
  if (!image || isProblem(seen)) return seen;
  const scale = look.longSide / Math.max(bitmap.width, bitmap.height);
  const [turned, shown] = [
    { wide: image.width, tall: image.height },
    { wide: bitmap.width * scale, tall: bitmap.height * scale },
  ];
  return seen.map(({ text, corners }) => {
    const inPx = corners.map(({ x, y }) => ({ x: x * turned.wide, y: y * turned.tall }));
    return { text, corners: turnedBack(inPx, turned, shown, look.turn).map(({ x, y }) => ({ x: x / shown.wide, y: y / shown.tall })) };
  });
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
