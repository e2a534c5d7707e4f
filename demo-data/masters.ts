import { dayAfter } from './calendar.ts';
import { designAt } from './designs.ts';
import type { Book, Chance, Ids } from './kinds.ts';
import { recordMould } from './moulds.ts';
import { frontFor } from './shelves.ts';

const MATERIALS: Readonly<Record<string, readonly string[]>> = {
  carved: ['hard carving wax', 'boxwood', 'brass'],
  print: ['resin'],
  casting: ['bronze', 'pewter', 'silver'],
  'dressed wax': ['wax'],
};
const FOUND_AT = [
  'Bought at a house sale; paper kept in the office file.',
  'Lent for copying by a private owner, returned and bought later.',
  'From the old shop’s window, with its bill.',
  'Cast from a study copy, with leave.',
  'Left by the founder; no paper with it.',
];
/** States of masters that are past use, by their number in order of recording. */
const UNSOUND: Readonly<Record<number, string>> = {
  9: 'worn',
  17: 'broken',
  26: 'lost',
  38: 'worn',
  47: 'broken',
  61: 'worn',
  72: 'lost',
  85: 'worn',
  94: 'broken',
  113: 'worn',
};

function recordMaster(
  book: Book,
  chance: Chance,
  ids: Ids,
  index: number,
  fields: { readonly kind: string; readonly [field: string]: unknown },
  note?: string,
) {
  const number = ids.masters.length;
  const state = UNSOUND[number] ?? 'sound';
  const at = state === 'lost' ? {} : { at: frontFor(book, ids, 'masters', designAt(index).periods) };
  const material = chance.pick(MATERIALS[fields.kind] ?? ['old bronze']);
  const id = book.record('Maren', 'master', { design: ids.design.of(index), ...fields, state, material, ...(note ? { note } : {}) }, at);
  ids.masters.push(id);
  return id;
}

/**
 * The masters of a design, and with an original the whole line: original, an intermediate mould of it, and its dressed wax as the
 * first master. `ids.master` names the master of each design and size.
 */
export function recordMasters(book: Book, chance: Chance, ids: Ids, index: number, madeBetween: readonly [string, number]) {
  const design = designAt(index);
  const days = design.sizes.map(() => dayAfter(madeBetween[0], chance.whole(0, madeBetween[1]))).sort();
  for (const [i, { label, mm }] of design.sizes.entries()) {
    const day = days[i] ?? madeBetween[0];
    const common = { size: label, made: day, lengthMm: Math.round(mm * 10.4) / 10 };
    const key = `${index}/${label}`;
    if (i === 0 && design.hasOriginal) {
      const name = `${design.name}, original`;
      const fields = { name, size: label, kind: 'original', lengthMm: Math.round(mm * 10.7) / 10 };
      const original = recordMaster(book, chance, ids, index, fields, chance.pick(FOUND_AT));
      const mould = recordMould(book, chance, ids, index, label, {
        master: original,
        purpose: 'intermediate',
        made: dayAfter(day, -chance.whole(6, 30)),
      });
      ids.master.set(
        key,
        recordMaster(book, chance, ids, index, {
          ...common,
          kind: chance.is(0.7) ? 'dressed wax' : 'casting',
          from: [mould],
        }),
      );
    } else if (i > 0 && chance.is(0.5)) {
      ids.master.set(
        key,
        recordMaster(book, chance, ids, index, {
          ...common,
          kind: 'casting',
          from: [ids.master.of(`${index}/${design.sizes[0].label}`)],
        }),
      );
    } else {
      ids.master.set(key, recordMaster(book, chance, ids, index, { ...common, kind: chance.is(0.6) ? 'carved' : 'print' }));
    }
  }
}
