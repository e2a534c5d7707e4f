import type { Code } from '../domain/brand.ts';
import { pathText } from '../domain/nesting.ts';
import { NOUNS } from '../domain/noun.ts';
import type { Shelf, Thing } from '../domain/shelf.ts';
import { designBeside, NOUN_WORD, titleOf } from '../domain/title.ts';

/** A thing to choose among others. */
export interface Bearer {
  readonly thing: Thing;
  readonly title: string;
  /** Its kind, its design where the title does not say it, where it stands, and whether it is out of use. */
  readonly detail: string;
}

export function asBearer(shelf: Shelf, thing: Thing): Bearer {
  const where = thing.noun === 'place' ? pathText(shelf, thing.in) : pathText(shelf, thing.at);
  const parts = [
    NOUN_WORD[thing.noun],
    designBeside(shelf, thing) ?? '',
    where,
    thing.retired ? `out of use: ${thing.retired.reason}` : '',
  ];
  return { thing, title: titleOf(shelf, thing), detail: parts.filter((part) => part !== '').join(' · ') };
}

/** Everything that carries a code: one thing as a rule, several when two devices gave out the same, those out of use last. */
export function findCode(shelf: Shelf, code: Code): readonly Bearer[] {
  const found: Thing[] = [];
  for (const noun of NOUNS) {
    for (const thing of (shelf.things[noun] as ReadonlyMap<string, Thing>).values()) if (thing.code === code) found.push(thing);
  }
  return found.sort((a, b) => Number(a.retired !== undefined) - Number(b.retired !== undefined)).map((thing) => asBearer(shelf, thing));
}
