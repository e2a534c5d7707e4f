import type { Picture } from '../domain/picture.ts';
import { type Problem, problem } from '../domain/problem.ts';
import type { PlacedPicture } from '../worker/protocol.ts';
import { sha256Of } from './backup-zip.ts';

const CHANGED = problem(
  'The backup was changed or taken away while it was being read.',
  'What is on your shelves is untouched. Choose it again.',
);

async function bytesAt(file: Blob, at: number, bytes: number): Promise<ArrayBuffer> {
  return file.slice(at, at + bytes).arrayBuffer();
}

/** A picture out of a backup that was vouched for; looked at once more, since a file can be changed in between. */
export async function pictureFrom(file: Blob, { sha, type, at, bytes, thumb }: PlacedPicture): Promise<Picture | Problem> {
  try {
    const [whole, small] = [await bytesAt(file, at, bytes), await bytesAt(file, thumb.at, thumb.bytes)];
    if ((await sha256Of(whole)) !== sha || (await sha256Of(small)) !== thumb.sha) return CHANGED;
    return { sha, type, bytes: whole, thumb: { type: thumb.type, bytes: small } };
  } catch {
    return CHANGED;
  }
}
