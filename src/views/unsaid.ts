import { fieldWord } from '../domain/field-words.ts';
import type { Noun } from '../domain/noun.ts';
import type { Thing } from '../domain/shelf.ts';

/** What is worth knowing of each kind sooner or later; a name and a place are enough to begin with. */
const WORTH_KNOWING: Partial<Record<Noun, readonly string[]>> = {
  mould: ['design', 'size', 'purpose', 'rubber', 'master'],
  master: ['design', 'size', 'kind', 'state'],
  design: ['periods', 'sizes'],
  wax: ['use', 'pressure', 'roomLowC', 'roomHighC'],
};

/** What nobody has said of a thing yet, as words for a sentence; empty for what is out of use. */
export function unsaidOf(thing: Thing): readonly string[] {
  if (thing.retired) return [];
  const fields = thing as unknown as Readonly<Record<string, unknown>>;
  return (WORTH_KNOWING[thing.noun] ?? [])
    .filter((field) => fields[field] === undefined)
    .map((field) => fieldWord(thing.noun, field).toLowerCase());
}
