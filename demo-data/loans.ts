import { dayAfter } from './calendar.ts';
import { isInUse } from './care.ts';
import type { Chance, Ids, On } from './kinds.ts';

/** Things lent out and brought home, and three that are still away at the end, one of them late. */
export function planLoans(on: On, chance: Chance, days: readonly string[]) {
  for (let i = 0; i < 12; i++) {
    const out = chance.pick(days.slice(12, -60));
    const held = chance.whole(9, 30);
    let thing = '';
    on(out, (live) => {
      const { book, ids } = live;
      const isCastings = i % 2 === 0;
      const choice = isCastings
        ? book.all('casting').filter((pile) => pile.pieces > 4)
        : ids.masters.map((id) => book.get(id)).filter((master) => master.state === 'sound');
      thing = chance.pick(choice.filter((each) => !each.until)).id;
      book.note('Maren', 'moved', {
        things: [thing],
        to: ids.place.of(isCastings ? 'plater' : 'shop'),
        until: dayAfter(out, held + chance.whole(0, 8)),
        usual: 'kept',
      });
    });
    on(dayAfter(out, held), ({ book }) => book.note('Maren', 'moved', { things: [thing], to: book.get(thing).usual }));
  }
  const stillOut: readonly (readonly [string, string, string, string])[] = [
    ['2026-09-28', 'plater', '2026-10-30', 'casting'],
    ['2026-11-09', 'plater', '2026-12-04', 'casting'],
    ['2026-10-19', 'shop', '2027-01-31', 'master'],
  ];
  for (const [day, place, until, noun] of stillOut) {
    on(day, ({ book, ids }) => {
      const choice =
        noun === 'master'
          ? ids.masters.map((id) => book.get(id)).filter((each) => each.kind === 'original')
          : book.all('casting').filter((pile) => pile.pieces > 5);
      const { id } = chance.pick(choice.filter((each) => !each.until));
      book.note('Maren', 'moved', { things: [id], to: ids.place.of(place), until, usual: 'kept' });
    });
  }
}

/** Things put in a drawer that is not theirs. */
export function planStrays(on: On, ids: Ids) {
  const wrong: readonly (readonly [string, string, string])[] = [
    ['minoan', 'C10', '2026-08-24'],
    ['latene', 'D6', '2026-09-21'],
    ['georgian', 'C5', '2026-10-07'],
    ['nouveau', 'D4', '2026-10-26'],
    ['hallstatt', 'D9', '2026-11-06'],
  ];
  for (const [period, label, day] of wrong) {
    on(day, (live) => {
      const { book } = live;
      const mould = ids.moulds.find(
        (each) =>
          each.fate === 'sound' &&
          each.purpose === 'production' &&
          isInUse(live, each) &&
          book.get(book.get(each.id).design).periods[0] === ids.period.of(period),
      );
      if (!mould) throw new Error(`no mould to stray to ${label}`);
      book.note('Pell', 'moved', { things: [mould.id], to: ids.place.of(label) });
      mould.fate = 'stray';
    });
  }
  on('2026-11-11', ({ book }) => {
    const pile = book.all('injectedWax').find((each) => each.pieces > 1 && each.pieces < 6 && each.state === 'dressed');
    if (pile) book.note('Pell', 'moved', { things: [pile.id], to: ids.place.of('C8') });
  });
}
