import { type Problem, problem } from '../domain/problem.ts';
import type { Sighting } from '../domain/sighting.ts';
import type { LabelPicture } from '../worker/protocol.ts';
import { type Decode, openPlatformReader } from './platform-reader.ts';

export type { LabelPicture };

export interface Decoder {
  /** Loads what reads labels, so that the first look does not wait for it. */
  warm(): void;
  /** What was found, nothing being an empty list. A Problem when there is no decoder to be had at all. The picture is used up. */
  decode(picture: LabelPicture, isThorough?: boolean): Promise<readonly Sighting[] | Problem>;
}

async function openOwn(): Promise<Decode> {
  const { openOwnReader } = await import('./own-reader.ts');
  return openOwnReader();
}

/**
 * A decoder: the platform's where it has one, and the app's own where it has none, where it fails, and on the second look at something
 * that the platform's could not read.
 */
export function makeDecoder(open = { platform: openPlatformReader, own: openOwn }): Decoder {
  let platform: Promise<Decode | null> | undefined;
  let own: Promise<Decode> | undefined;

  async function fromOwn(picture: LabelPicture, isThorough: boolean): Promise<readonly Sighting[] | Problem> {
    own ??= open.own();
    try {
      return await (await own)(picture, isThorough);
    } catch {
      letGo(picture);
      // Asked for again next time: the file may have been out of reach only for now.
      own = undefined;
      return problem('The part that reads labels could not be loaded.', 'Type the code, or try again when there is a network.');
    }
  }

  return {
    warm() {
      platform ??= open.platform();
      own ??= open.own();
      // What is out of reach is told by the look that needs it.
      own.catch(() => undefined);
    },
    async decode(picture, isThorough = false) {
      platform ??= open.platform();
      const quick = await platform;
      if (!quick) return fromOwn(picture, isThorough);
      try {
        const seen = await quick(picture, isThorough);
        if (seen.length === 0 && isThorough) return fromOwn(picture, isThorough);
        letGo(picture);
        return seen;
      } catch {
        platform = Promise.resolve(null);
        return fromOwn(picture, isThorough);
      }
    },
  };
}

/** A camera hands out few frames at a time, and no more until they are closed. */
function letGo(picture: LabelPicture): void {
  if (!('data' in picture)) picture.close();
}
