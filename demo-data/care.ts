import type { Grade } from '../src/domain/grade.ts';
import { dayAfter, daysFrom } from './calendar.ts';
import type { Chance, Ctx, Fate, Ids, MouldNote, Person } from './kinds.ts';

const MILD = [['flash'], ['lost detail'], ['curled'], ['flawed skin']];
const WORN = [
  ['lost detail', 'flash'],
  ['torn keys', 'flash'],
  ['curled', 'shifted halves'],
  ['lost detail', 'tacky'],
];
const SOUND_NOTES = ['Cleaned with soap and water.', 'Talc brushed out of the cavity.', 'Keys still tight.', 'Vents opened with a blade.'];

/** Chooses which moulds age and how, so that every state is on the shelves and most are sound. Fates are told by `grade`. */
export function castFates(chance: Chance, ids: Ids) {
  const young = ids.moulds.filter((each) => each.fate === 'sound' && each.purpose === 'production' && !each.isPoured);
  const drawn = chance.shuffled(young);
  const take = (fate: Fate, count: number, fits: (mould: MouldNote) => boolean = () => true) => {
    const chosen = drawn.filter((each) => each.fate === 'sound' && fits(each)).slice(0, count);
    for (const mould of chosen) mould.fate = fate;
  };
  take('oldRubber', 4, (each) => (each.masterMade ?? '9') < '2018-06-01' && each.cavities === 1);
  take('oldShots', 3, (each) => each.rubber === 'platinum silicone');
  take('rejects', 2, (each) => !each.needsHigh && each.cavities === 1 && each.rubber !== 'tin silicone');
  take('watch', 9);
  take('worn', 6);
  take('tornOut', 7);
  take('failed', 5);
  take('faults', 3);
  take('lookDue', 4, (each) => each.rubber === 'natural');
  for (const mould of drawn) mould.turnsOn = dayAfter('2025-06-01', chance.whole(0, 400));
}

/** Share of its life a mould has shot before the journal begins. */
export function shareBefore(chance: Chance, mould: MouldNote) {
  if (mould.purpose === 'intermediate' || mould.isPoured || mould.fate === 'dud' || mould.fate === 'gone') return 0;
  if (mould.fate === 'oldShots') return chance.between(0.97, 1.02);
  if (mould.fate === 'worn') return chance.between(0.6, 0.72);
  if (mould.fate === 'watch' || mould.fate === 'faults') return chance.between(0.4, 0.55);
  return chance.is(0.2) ? 0 : chance.between(0.02, 0.38);
}

/** How the mould looks on a day: grade and faults. */
export function grade(chance: Chance, mould: MouldNote, day: string): { grade: Grade; faults: readonly string[] } {
  if (mould.turnsOn === undefined || day < mould.turnsOn) return { grade: 'sound', faults: [] };
  switch (mould.fate) {
    case 'watch':
      return { grade: 'watch', faults: chance.is(0.3) ? [] : chance.pick(MILD) };
    case 'worn':
      return daysFrom(mould.turnsOn, day) > 120
        ? { grade: 'worn', faults: chance.pick(WORN) }
        : { grade: 'watch', faults: chance.pick(MILD) };
    case 'faults':
      return { grade: 'watch', faults: ['torn gate', 'torn keys', 'flash'] };
    default:
      return { grade: 'sound', faults: [] };
  }
}

/** One look at a mould; those to watch get a day for the next look. */
export function inspect({ book, chance }: Ctx, mould: MouldNote, by: Person, next?: string) {
  const { grade: judged, faults } = grade(chance, mould, book.today);
  const told =
    judged === 'sound'
      ? chance.is(0.12)
        ? { note: chance.pick(SOUND_NOTES) }
        : {}
      : { next: next ?? dayAfter(book.today, chance.whole(70, 130)) };
  book.note(by, 'inspected', { of: mould.id, grade: judged, ...(faults.length > 0 ? { faults } : {}), ...told });
  mould.lookedOn = book.today;
}

export function isInUse({ book }: Ctx, mould: MouldNote) {
  const thing = book.get(mould.id);
  return !thing.retired && thing.grade !== 'failed';
}

/** Moulds nobody looks at for a while, so that a look falls due or a run of rejects stands. */
function isLeft(mould: MouldNote, today: string) {
  return (mould.fate === 'lookDue' && today > '2025-08-01') || (mould.fate === 'rejects' && today > '2026-10-20');
}

/** The mould that has gone longest without a look, of those in use. */
export function longestUnlooked(ctx: Ctx) {
  const due = ctx.ids.moulds.filter((each) => isInUse(ctx, each) && !isLeft(each, ctx.book.today));
  const looked = (each: MouldNote) => each.lookedOn ?? (each.fate === 'lookDue' ? '' : ' ');
  const [longest] = due.sort((a, b) => (looked(a) < looked(b) ? -1 : looked(a) > looked(b) ? 1 : a.id < b.id ? -1 : 1));
  if (!longest) throw new Error('no mould in use');
  return longest;
}
