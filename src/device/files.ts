import { sayNumber } from '../domain/measure-words.ts';
import { isProblem, type Problem, problem } from '../domain/problem.ts';
import { type DecodedText, decodeText } from './text-encoding.ts';

/** Beyond this a phone would be busy for long, and a list of everything a studio has is far smaller. */
const LIST_BYTES_MAX = 20_000_000;

export interface ListFile extends DecodedText {
  readonly name: string;
}

/** A list the person chose, as text. Looks at the size before it reads a byte. */
export async function readListFile(file: File): Promise<ListFile | Problem> {
  if (file.size > LIST_BYTES_MAX) {
    const megabytes = sayNumber(file.size / 1e6);
    return problem(
      `That file is ${megabytes} MB; a list may have ${LIST_BYTES_MAX / 1e6} MB.`,
      'Nothing was changed. Leave out pictures, or split the list.',
    );
  }
  if (file.size === 0) return problem('That file is empty.', 'Nothing was changed.');
  try {
    const decoded = decodeText(new Uint8Array(await file.arrayBuffer()));
    return isProblem(decoded) ? decoded : { name: file.name, ...decoded };
  } catch {
    return problem(
      'That file could not be read.',
      'Nothing was changed. It may be on a drive that is not at hand: copy it to this device first.',
    );
  }
}

/**
 * Hands a file over: to the share sheet of an installed app on a phone, where a download would be hard to find, else as a download. False when
 * the person closed the share sheet; what becomes of the file after it was handed over, no browser tells.
 */
export async function saveFile(name: string, blob: Blob): Promise<boolean> {
  const file = new File([blob], name, { type: blob.type });
  const isInstalled = window.matchMedia('(display-mode: standalone)').matches;
  const isTouch = window.matchMedia('(pointer: coarse)').matches;
  if (isInstalled && isTouch && navigator.canShare?.({ files: [file] })) {
    try {
      await navigator.share({ files: [file] });
      return true;
    } catch (error) {
      // Closed by the person: nothing more is wanted. Anything else is downloaded instead.
      if (error instanceof DOMException && error.name === 'AbortError') return false;
    }
  }
  const url = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // Safari reads the blob only after the click has been dealt with.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
  return true;
}
