import { saveFile } from '../device/files.ts';
import { zipTexts } from '../device/zip-texts.ts';
import { studioLists } from '../domain/csv/studio-lists.ts';
import { type Problem, problem } from '../domain/problem.ts';
import type { Deps } from './deps.ts';

const READ_ME = `Lists of a studio, written by Mouldkeep. Each is a table that a spreadsheet opens (CSV, UTF-8).

Those with a number come back in by “Bring in my list”, one after the other, in the order of their numbers.
The others are for reading. Figures are in g, mm, °C and kPa, as their headings say.

What happened to each thing, and its pictures, are not in these lists: that is what the backup is for.
`.replace(/\n/g, '\r\n');

/** Hands the whole studio over as lists, one for each kind of thing, in one zip, with headings spelt as `spell` does. False when the person thought better of it. */
export async function saveLists(
  { keeper, today }: Pick<Deps, 'keeper' | 'today'>,
  spell: (text: string) => string,
): Promise<boolean | Problem> {
  try {
    const lists = [...studioLists(keeper.shelf(), spell), { name: 'read-me.txt', text: `\ufeff${READ_ME}` }];
    return await saveFile(`mouldkeep-lists-${today()}.zip`, await zipTexts(lists));
  } catch {
    return problem('The lists could not be made or handed over.', 'Nothing was changed. Load the page again and try once more.');
  }
}
