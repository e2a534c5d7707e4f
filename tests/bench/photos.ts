import type { Sha256 } from '../../src/domain/brand.ts';
import type { Entry } from '../../src/domain/entry.ts';
import type { Picture } from '../../src/domain/picture.ts';
import { isProblem, type Problem } from '../../src/domain/problem.ts';
import type { Keeper } from '../../src/store/keeper.ts';
import { chance } from '../support/chance.ts';

const WHOLE = { width: 1600, height: 1200 };
const THUMB = { width: 240, height: 180 };
/** Pictures kept in one transaction. */
const AT_ONCE = 25;

function canvasOf({ width, height }: { width: number; height: number }): [HTMLCanvasElement, CanvasRenderingContext2D] {
  const canvas = Object.assign(document.createElement('canvas'), { width, height });
  const paint = canvas.getContext('2d');
  if (!paint) throw new Error('there is nothing to paint on');
  return [canvas, paint];
}

/** Speckled as rubber and skin are, larger than a picture, so that each can take another part of it. */
function speckles(): HTMLCanvasElement {
  const [canvas, paint] = canvasOf({ width: WHOLE.width + 512, height: WHOLE.height + 512 });
  const next = chance(11);
  const image = paint.createImageData(canvas.width, canvas.height);
  for (let i = 0; i < image.data.length; i += 4) {
    const grey = 128 + (next() - 0.5) * 34;
    image.data.set([grey, grey, grey, 255], i);
  }
  paint.putImageData(image, 0, 0);
  return canvas;
}

async function jpeg(canvas: HTMLCanvasElement, quality: number): Promise<ArrayBuffer> {
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg', quality));
  if (!blob) throw new Error('the picture was not packed');
  return blob.arrayBuffer();
}

const shaOf = async (bytes: ArrayBuffer) =>
  Array.from(new Uint8Array(await crypto.subtle.digest('SHA-256', bytes)), (byte) => byte.toString(16).padStart(2, '0')).join('') as Sha256;

/** Pictures as large as those the app keeps of a phone's (some 350 kB of JPEG with a thumbnail), no two alike. */
async function* photos(from: number, to: number): AsyncGenerator<Picture> {
  const rough = speckles();
  const [whole, paint] = canvasOf(WHOLE);
  const [thumb, paintThumb] = canvasOf(THUMB);
  for (let i = from; i < to; i++) {
    const light = paint.createRadialGradient(300 + i, 400, 50, 800, 600, 1100);
    light.addColorStop(0, `hsl(${(i * 37) % 360} 60% 70%)`);
    light.addColorStop(1, `hsl(${(i * 53) % 360} 40% 25%)`);
    paint.globalCompositeOperation = 'source-over';
    paint.fillStyle = light;
    paint.fillRect(0, 0, WHOLE.width, WHOLE.height);
    paint.globalCompositeOperation = 'overlay';
    paint.drawImage(rough, -((i * 7) % 512), -((i * 13) % 512));
    paintThumb.drawImage(whole, 0, 0, THUMB.width, THUMB.height);
    const bytes = await jpeg(whole, 0.8);
    yield { sha: await shaOf(bytes), type: 'image/jpeg', bytes, thumb: { type: 'image/jpeg', bytes: await jpeg(thumb, 0.85) } };
  }
}

function must<T>(outcome: T | Problem): T {
  if (isProblem(outcome)) throw new Error(outcome.says);
  return outcome;
}

/** Takes pictures number `from` up to `to` of as many moulds, in the app's own way. Gives the bytes of their JPEGs. */
export async function takePhotos(keeper: Keeper, from: number, to: number): Promise<number> {
  const moulds = [...keeper.shelf().things.mould.values()].slice(from, to);
  const shas: Sha256[] = [];
  let batch: Picture[] = [];
  let bytes = 0;
  const keep = async () => {
    must(await keeper.keepPictures(batch));
    batch = [];
  };
  for await (const photo of photos(from, to)) {
    shas.push(photo.sha);
    bytes += photo.bytes.byteLength + photo.thumb.bytes.byteLength;
    if (batch.push(photo) === AT_ONCE) await keep();
  }
  await keep();
  must(
    await keeper.act((_, desk) =>
      moulds.map(
        ({ id }, i): Entry => ({ ...desk.entry(), kind: 'corrected', noun: 'mould', of: id, fields: {}, pictures: [shas[i] as Sha256] }),
      ),
    ),
  );
  return bytes;
}
