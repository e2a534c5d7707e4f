import { pathText } from '../domain/nesting.ts';
import type { Noun } from '../domain/noun.ts';
import type { Shelf, Thing } from '../domain/shelf.ts';
import { designBeside, NOUN_WORD, titleOf } from '../domain/title.ts';
import { compareTitles } from '../domain/title-order.ts';

/** A thing that can be chosen in a form. */
export interface Choice {
  readonly id: string;
  readonly title: string;
  readonly detail?: string;
}

/** `isOfMany` where things of several kinds are offered beside each other: it then says which it is. */
export function choiceOf(shelf: Shelf, thing: Thing, isOfMany = false): Choice {
  if (thing.noun === 'place') {
    const detail = [thing.name !== thing.label ? thing.name : undefined, thing.kind].filter(Boolean).join(' · ');
    return { id: thing.id, title: pathText(shelf, thing.id), ...(detail ? { detail } : {}) };
  }
  const detail = [isOfMany ? NOUN_WORD[thing.noun] : undefined, designBeside(shelf, thing), thing.code, pathText(shelf, thing.at)]
    .filter(Boolean)
    .join(' · ');
  return { id: thing.id, title: titleOf(shelf, thing), ...(detail ? { detail } : {}) };
}

const plain = (text: string) => text.normalize('NFD').replace(/\p{M}/gu, '').toLocaleLowerCase();

/** Things of these kinds whose name, code or place holds every word typed; those that begin with it first. Retired ones are left out. */
export function choicesFor(shelf: Shelf, nouns: readonly Noun[], typed: string, most: number): readonly Choice[] {
  const words = plain(typed).split(/\s+/).filter(Boolean);
  const found: { choice: Choice; rank: number }[] = [];
  for (const noun of nouns) {
    for (const thing of (shelf.things[noun] as ReadonlyMap<string, Thing>).values()) {
      if (thing.retired) continue;
      const choice = choiceOf(shelf, thing, nouns.length > 1);
      const text = plain(`${choice.title} ${thing.name ?? ''} ${thing.code ?? ''} ${choice.detail ?? ''}`);
      if (!words.every((word) => text.includes(word))) continue;
      const first = words[0] ?? '';
      found.push({ choice, rank: text.startsWith(first) ? 0 : text.includes(` ${first}`) ? 1 : 2 });
    }
  }
  return found
    .sort((a, b) => a.rank - b.rank || compareTitles(a.choice.title, b.choice.title))
    .slice(0, most)
    .map(({ choice }) => choice);
}
