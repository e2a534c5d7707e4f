import { dayAfter, LAST_DAY, workDays } from './calendar.ts';
import { inspect, isInUse } from './care.ts';
import { planDescent } from './descent.ts';
import { designAt, designNamed } from './designs.ts';
import { planDoubts } from './doubts.ts';
import type { Chance, Ctx, Fate, Happen, Ids, MouldNote, On, Plan } from './kinds.ts';
import { planLoans, planStrays } from './loans.ts';
import { recordMasters } from './masters.ts';
import { mouldOf, recordMould, recordProduction } from './moulds.ts';
import { planLateWants, planShortages, planWants } from './sales.ts';
import { recordDesign } from './shelves.ts';
import { run } from './work.ts';

interface Launch {
  readonly index: number;
  readonly day: string;
}

/** Designs that come in during the two years. */
const LAUNCHED: readonly (readonly [string, string])[] = [
  ['Buffer terminal', '2025-01-20'],
  ['Peacock plaque', '2025-03-10'],
  ['Signet ring, shield', '2025-05-12'],
  ['Sea-horse plaque', '2025-07-07'],
  ['Moth hat ornament', '2025-09-22'],
  ['Bath-clog mount', '2025-11-17'],
  ['Rattle pendant', '2026-02-09'],
  ['Gaming piece, tern', '2026-04-20'],
  ['Equal-armed brooch', '2026-06-15'],
];
export const LAUNCHES: readonly Launch[] = LAUNCHED.map(([name, day]) => ({ index: designNamed(name), day }));

const FAULTS: readonly (readonly [string, ...string[]])[] = [
  ['torn gate'],
  ['torn cavity', 'torn gate'],
  ['brittle', 'torn keys'],
  ['flash', 'shifted halves'],
  ['torn cavity'],
  ['tacky', 'sticking'],
];
const FAILED_ON = ['2024-12-09', '2025-02-18', '2025-05-07', '2025-07-16', '2025-10-01', '2026-01-21', '2026-05-06'];
const FAILED_LATELY = ['2026-07-08', '2026-08-26', '2026-09-30', '2026-10-28', '2026-11-17'];

/** What happens on days of its own: a map from a day to the things done on it, each called with the story’s context. */
export function makePlan(ctx: Ctx): Plan {
  const { chance, ids } = ctx;
  const days = workDays();
  const plan = new Map<string, Happen[]>();
  const on: On = (day, happen) => {
    const open = days.find((each) => each >= day) ?? LAST_DAY;
    plan.set(open, [...(plan.get(open) ?? []), happen]);
  };
  const fated = (fate: Fate) => ids.moulds.filter((each) => each.fate === fate);

  for (const launch of LAUNCHES) planLaunch(on, chance, launch);
  for (const [i, mould] of fated('tornOut').entries())
    planFailure(on, chance, mould, FAILED_ON[i] ?? LAST_DAY, { isRetired: true, isReplaced: i !== 4 });
  for (const [i, mould] of fated('failed').entries())
    planFailure(on, chance, mould, FAILED_LATELY[i] ?? LAST_DAY, { isRetired: false, isReplaced: i < 2 });
  planLastLooks(on, chance, fated);
  for (const mould of fated('rejects')) {
    for (const day of ['2026-10-06', '2026-10-21', '2026-11-04', '2026-11-16']) {
      on(day, (live, roomC) =>
        run(live, mould, roomC, { by: 'Pell', shots: 10, extra: { bubbles: 0.18, 'short fill': 0.16, flash: 0.06 } }),
      );
    }
  }
  for (const mould of [...fated('oldShots'), ...fated('oldRubber'), ...fated('lookDue')]) {
    for (const day of ['2026-06-24', '2026-09-16', '2026-10-15']) {
      on(dayAfter(day, chance.whole(0, 20)), (live, roomC) => run(live, mould, roomC, { by: 'Jory', shots: chance.whole(3, 6) }));
    }
  }
  planLostMasters(on, [...fated('failed').slice(2), ...fated('worn')]);
  planLateDuds(on, chance);
  planSlips(on, chance, days);
  planCorrections(on, chance, days);
  planMeasures(on, chance, days);
  planWants(on, ids);
  planShortages(on, ids);
  planLoans(on, chance, days);
  planStrays(on, ids);
  planDescent(on);
  planDoubts(on);
  planLateWants(on);
  return plan;
}

function planLaunch(on: On, chance: Chance, { index, day }: Launch) {
  on(day, (live) => {
    recordDesign(live.book, live.ids, index, live.drawings[index]);
    recordMasters(live.book, chance, live.ids, index, [dayAfter(day, -25), 20]);
  });
  on(dayAfter(day, 9), (live) => {
    recordProduction(live.book, chance, live.ids, index, { made: live.book.today });
  });
}

/** A mould fails; most are retired and a new one is made from the master. */
function planFailure(
  on: On,
  chance: Chance,
  mould: MouldNote,
  day: string,
  { isRetired, isReplaced }: { isRetired: boolean; isReplaced: boolean },
) {
  const faults = chance.pick(FAULTS);
  on(day, (live) => {
    const shown = faults.map((fault) => live.mouldPictures[fault]).find(Boolean);
    const told = shown
      ? { pictures: [shown], note: chance.pick(['Tore on opening.', 'Gave way after the third shot.', 'Seen while cleaning.']) }
      : {};
    live.book.note('Jory', 'failed', { of: mould.id, faults, ...told });
  });
  if (isRetired) {
    on(dayAfter(day, chance.whole(3, 16)), (live) => {
      live.book.act('Maren', (add) => {
        add('retired', { of: mould.id, reason: faults.some((fault) => fault.startsWith('torn')) ? 'torn' : 'worn out' });
        add('moved', { things: [mould.id], to: live.ids.place.of('E4') });
      });
    });
  }
  if (isReplaced) {
    on(dayAfter(day, chance.whole(6, 24)), (live) => {
      const { master } = live.book.get(mould.id);
      const made = live.book.today;
      const id = recordMould(live.book, chance, live.ids, mould.index, mould.size, {
        ...(master ? { master } : {}),
        made,
        rubber: 'natural',
        cavities: mould.cavities,
      });
      inspect(live, mouldOf(live.ids, id), 'Maren');
    });
  }
}

/** The last looks of moulds that are past their best, this autumn; two of the next looks have gone by. */
function planLastLooks(on: On, chance: Chance, fated: (fate: Fate) => readonly MouldNote[]) {
  const doubtful = [...fated('watch'), ...fated('worn'), ...fated('faults')];
  for (const [i, mould] of doubtful.entries()) {
    const day = dayAfter('2026-09-14', chance.whole(0, 40));
    const next = i % 9 === 4 ? '2026-11-12' : dayAfter('2026-12-07', chance.whole(0, 60));
    on(day, (live) => inspect(live, mould, 'Maren', next));
  }
}

/** Two masters come to grief while the moulds made from them are spent. */
function planLostMasters(on: On, moulds: readonly MouldNote[]) {
  const alone = moulds.filter((each) => !designAt(each.index).hasOriginal).slice(0, 2);
  for (const [i, mould] of alone.entries()) {
    on(i === 0 ? '2026-09-08' : '2026-10-22', ({ book }) => {
      const { master } = book.get(mould.id);
      if (master)
        book.note('Maren', 'corrected', {
          noun: 'master',
          of: master,
          fields: { state: i === 0 ? 'broken' : 'worn' },
          note: 'Dropped on the stair.',
        });
    });
  }
}

function planLateDuds(on: On, chance: Chance) {
  const duds: readonly (readonly [string, string, string])[] = [
    ['Triskele harness mount', '2025-04-02', 'Frame opened too hot.'],
    ['Iris pendant', '2026-03-04', 'Bubbles against the petals.'],
  ];
  for (const [name, day, note] of duds) {
    on(day, (live) => {
      const index = designNamed(name);
      const size = designAt(index).sizes[0].label;
      const given = { master: live.ids.master.of(`${index}/${size}`), at: live.ids.place.of('E5'), made: live.book.today, note };
      const id = recordMould(live.book, chance, live.ids, index, size, given);
      mouldOf(live.ids, id).fate = 'dud';
      live.book.note('Jory', 'retired', { of: id, reason: 'dud' });
    });
  }
}

/** Slips of the thumb, taken back at once. */
function planSlips(on: On, chance: Chance, days: readonly string[]) {
  for (let i = 0; i < 14; i++) {
    on(chance.pick(days.slice(20)), (live) => {
      const { book, ids } = live;
      const mould = chance.pick(ids.moulds.filter((each) => each.fate === 'sound' && isInUse(live, each)));
      const slip =
        i % 3 === 0
          ? book.note('Pell', 'failed', { of: mould.id, faults: ['torn gate'] })
          : i % 3 === 1
            ? book.note('Jory', 'injected', { mould: mould.id, shots: 80, good: 80 * mould.cavities })
            : book.note('Pell', 'moved', { things: [mould.id], to: ids.place.of('B3') });
      book.note(i % 3 === 1 ? 'Jory' : 'Pell', 'withdrawn', { entry: slip });
    });
  }
}

function fatedIn(ids: Ids, fate: Fate): MouldNote {
  const mould = ids.moulds.findLast((each) => each.fate === fate);
  if (!mould) throw new Error(`no mould is ${fate}`);
  return mould;
}

function planCorrections(on: On, chance: Chance, days: readonly string[]) {
  const remarks = [
    'Open the near end first.',
    'Needs powder every third shot.',
    'Fill slowly, vent is small.',
    'Press between the thick plates.',
    'Cool two minutes before opening.',
  ];
  for (let i = 0; i < 46; i++) {
    on(chance.pick(days.slice(10)), ({ book, ids }) => {
      const mould = chance.pick(ids.moulds.filter((each) => !each.isPoured && each.fate === 'sound'));
      const { injection } = book.get(mould.id);
      const fields =
        chance.is(0.5) || !injection
          ? { note: chance.pick(remarks) }
          : { injection: { ...injection, holdS: injection.holdS + chance.whole(1, 3) } };
      book.note('Jory', 'corrected', { noun: 'mould', of: mould.id, fields });
    });
  }
  on('2025-06-11', ({ book, ids }) =>
    book.note('Maren', 'corrected', {
      noun: 'design',
      of: ids.design.of(designNamed('Duck toggle')),
      fields: { also: 'duck button, waterfowl' },
    }),
  );
  on('2026-10-12', ({ book, ids }) => {
    const mould = fatedIn(ids, 'oldRubber');
    book.note('Maren', 'corrected', {
      noun: 'mould',
      of: mould.id,
      fields: {},
      aside: { 'old rubber': '2027-01-15' },
      note: 'Still supple; look again in the new year.',
    });
  });
  for (const day of ['2025-01-29', '2025-06-25', '2025-12-10', '2026-05-20', '2026-09-02']) {
    on(day, ({ book, ids }) => {
      const wax = chance.pick([ids.wax.of('amber'), ids.wax.of('violet'), ids.wax.of('green')]);
      book.note('Jory', 'issued', {
        of: wax,
        grams: chance.whole(12, 30) * 10,
        reason: 'discarded',
        note: 'Dusty and scorched; not worth reclaiming.',
      });
    });
  }
  on('2025-04-16', ({ book, ids }) => {
    const master = ids.masters.map((id) => book.get(id)).find((each) => each.state === 'lost');
    if (master) book.note('Maren', 'retired', { of: master.id, reason: 'lost' });
  });
  for (const fate of ['worn', 'watch'] as const) {
    on('2026-10-29', ({ book, ids }) => {
      const mould = fatedIn(ids, fate);
      book.note('Maren', 'corrected', {
        noun: 'mould',
        of: mould.id,
        fields: { expectedShots: Math.round((mould.life * 0.95) / 10) * 10 },
      });
    });
  }
}

function planMeasures(on: On, chance: Chance, days: readonly string[]) {
  for (let i = 0; i < 44; i++) {
    on(chance.pick(days.slice(15)), ({ book, ids }) => {
      const master = book.get(chance.pick(ids.masters));
      if (master.state === 'lost') return;
      const mm = Math.round(master.lengthMm * chance.between(0.996, 1.003) * 100) / 100;
      if (chance.is(0.35)) {
        const isWorn = master.state === 'worn' || master.state === 'broken';
        book.note('Maren', 'inspected', {
          of: master.id,
          grade: isWorn ? 'worn' : 'sound',
          ...(isWorn ? { note: 'Edges going; make a new one before the next mould.' } : {}),
        });
      } else book.note('Maren', 'measured', { of: master.id, sizes: [{ name: 'length', mm }] });
    });
  }
}
