import { type Problem, problem } from '../domain/problem.ts';
import type { Sighting } from '../domain/sighting.ts';
import { openPlatformReader } from './platform-reader.ts';

/** The QR symbols in an image. A thorough look takes longer, and may find several. */
export type Decode = (image: ImageData, isThorough: boolean) => Promise<readonly Sighting[]>;

export interface Decoder {
  /** What was found, nothing being an empty list. A Problem when there is no decoder to be had at all. */
  decode(image: ImageData, isThorough?: boolean): Promise<readonly Sighting[] | Problem>;
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

  async function fromOwn(image: ImageData, isThorough: boolean): Promise<readonly Sighting[] | Problem> {
    own ??= open.own();
    try {
      return await (await own)(image, isThorough);
    } catch {
      // Asked for again next time: the file may have been out of reach only for now.
      own = undefined;
      return problem('The part that reads labels could not be loaded.', 'Type the code, or try again when there is a network.');
    }
  }

  return {
    async decode(image, isThorough = false) {
      platform ??= open.platform();
      const quick = await platform;
      if (!quick) return fromOwn(image, isThorough);
      try {
        const seen = await quick(image, isThorough);
        return seen.length > 0 || !isThorough ? seen : fromOwn(image, isThorough);
      } catch {
        platform = Promise.resolve(null);
        return fromOwn(image, isThorough);
      }
    },
  };
}
