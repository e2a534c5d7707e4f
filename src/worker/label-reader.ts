import { greyOf, greyOfFrame } from './grey.ts';
import type { LookReply, LookRequest } from './protocol.ts';
import { lookAt } from './second-look.ts';
import { loadSymbols, readSymbols } from './symbols.ts';

let loaded: Promise<void> | undefined;

async function answerTo({ look, wasmUrl, picture, isThorough }: LookRequest): Promise<LookReply> {
  try {
    loaded ??= loadSymbols({ url: wasmUrl });
    const grey = 'data' in picture ? greyOf(picture) : await greyOfFrame(picture);
    await loaded;
    return { look, seen: grey ? await lookAt(grey, isThorough, readSymbols) : null };
  } catch {
    return { look, seen: null };
  }
}

self.addEventListener('message', ({ data }: MessageEvent<LookRequest>) => {
  void answerTo(data).then((reply) => self.postMessage(reply));
});
