import wasmUrl from 'zxing-wasm/reader/zxing_reader.wasm?url';
import { makeDecoder } from '../../src/device/decode.ts';
import { isProblem } from '../../src/domain/problem.ts';
import { greyOf, greyOfFrame } from '../../src/worker/grey.ts';
import { lookAt } from '../../src/worker/second-look.ts';
import { loadSymbols, readSymbols } from '../../src/worker/symbols.ts';
import { chance } from '../support/chance.ts';
import { drawCodes } from '../support/codes.ts';
import { labelModules, paintLabel, toImageData } from '../support/label-picture.ts';

export interface AnswerTimes {
  /** The look itself, done on the page: a worker is not slowed. From a camera's frame, and from pixels where there are no such frames. */
  readonly reckoned: number;
  readonly reckonedFromPixels: number;
  /** The whole way through the app's worker and back. */
  readonly there: number;
  /** The page's longest wait for its own thread during one of those. */
  readonly heldUp: number;
}

/** Medians over looks at a clear label in a frame of 1280 × 720, all in ms. */
export async function answerLabel(times: number): Promise<AnswerTimes> {
  const [code = ''] = drawCodes(1, chance(5));
  const image = toImageData(paintLabel(labelModules(code, '2-H'), { width: 1280, height: 720, side: 360, turn: 9 }));
  const decoder = makeDecoder();
  const pixels = () => new ImageData(new Uint8ClampedArray(image.data), image.width, image.height);
  const check = (seen: unknown) => {
    if (!Array.isArray(seen) || seen[0]?.text !== code) throw new Error('the label was not read');
  };
  await loadSymbols({ url: wasmUrl });
  const reckoned = await median(
    times,
    () => frameOf(image),
    async (frame) => {
      const grey = await greyOfFrame(frame);
      check(grey && (await lookAt(grey, false, readSymbols)));
    },
  );
  const reckonedFromPixels = await median(times, pixels, async (picture) => check(await lookAt(greyOf(picture), false, readSymbols)));
  const waits: number[] = [];
  const there = await median(
    times,
    () => frameOf(image),
    async (frame) => {
      const answer = decoder.decode(frame);
      let isOver = false;
      const turns = (async () => {
        let longest = 0;
        while (!isOver) {
          const began = performance.now();
          await turn();
          longest = Math.max(longest, performance.now() - began);
        }
        waits.push(longest);
      })();
      const seen = await answer;
      isOver = true;
      await turns;
      if (isProblem(seen)) throw new Error(seen.says);
      check(seen);
    },
  );
  return { reckoned, reckonedFromPixels, there, heldUp: middle(waits) };
}

/** As a camera gives it: light in one plane, colours in two of a quarter of the size. */
function frameOf({ width, height, data }: ImageData): VideoFrame {
  const planes = new Uint8Array((width * height * 3) / 2).fill(128);
  for (let i = 0; i < width * height; i++) planes[i] = data[4 * i] as number;
  return new VideoFrame(planes, { format: 'I420', codedWidth: width, codedHeight: height, timestamp: 0 });
}

/** One turn of the page's own work; a timer would be held to 4 ms. */
function turn(): Promise<void> {
  return new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      done();
    };
    port2.postMessage(0);
  });
}

async function median<T>(times: number, make: () => T, job: (made: T) => Promise<void>): Promise<number> {
  const each: number[] = [];
  for (let i = 0; i <= times; i++) {
    const made = make();
    const began = performance.now();
    await job(made);
    each.push(performance.now() - began);
  }
  return middle(each);
}

/** The first time, which loads and warms, is left out. */
function middle([, ...each]: readonly number[]): number {
  return each.sort((a, b) => a - b)[Math.floor(each.length / 2)] ?? Number.NaN;
}
