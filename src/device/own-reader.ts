import wasmUrl from 'zxing-wasm/reader/zxing_reader.wasm?url';
import type { Sighting } from '../domain/sighting.ts';
import type { LookReply, LookRequest } from '../worker/protocol.ts';
import type { Decode } from './platform-reader.ts';

/** Enough for the decoder to go through its ways once, px. */
const FIRST_SIDE = 64;

interface Asked {
  readonly resolve: (seen: readonly Sighting[]) => void;
  readonly reject: (why: Error) => void;
}

/** The app's own decoder in a worker of its own, so that no look holds the page up. Rejects, as do its looks, when it can't be had. */
export async function openOwnReader(): Promise<Decode> {
  const worker = new Worker(new URL('../worker/label-reader.ts', import.meta.url), { type: 'module' });
  const waiting = new Map<number, Asked>();
  let looks = 0;
  const giveUp = () => {
    worker.terminate();
    for (const { reject } of waiting.values()) reject(new Error('the reader of labels failed'));
    waiting.clear();
  };
  worker.onerror = giveUp;
  worker.onmessage = ({ data: { look, seen } }: MessageEvent<LookReply>) => {
    if (!seen) return giveUp();
    waiting.get(look)?.resolve(seen);
    waiting.delete(look);
  };
  const decode: Decode = (picture, isThorough) =>
    new Promise((resolve, reject) => {
      looks += 1;
      waiting.set(looks, { resolve, reject });
      const handed = 'data' in picture ? picture.data.buffer : picture;
      worker.postMessage({ look: looks, wasmUrl, picture, isThorough } satisfies LookRequest, [handed]);
    });
  await decode(new ImageData(FIRST_SIDE, FIRST_SIDE), true);
  return decode;
}
