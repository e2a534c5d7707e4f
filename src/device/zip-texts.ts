import type { Zippable } from 'fflate';

/** Texts as the files of one zip. The packer is fetched only now. */
export async function zipTexts(files: readonly { readonly name: string; readonly text: string }[]): Promise<Blob> {
  const { strToU8, zipSync } = await import('fflate');
  const parts: Zippable = Object.fromEntries(files.map(({ name, text }) => [name, strToU8(text)]));
  return new Blob([zipSync(parts) as BlobPart], { type: 'application/zip' });
}
