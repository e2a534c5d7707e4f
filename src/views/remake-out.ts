import type { ListOut } from './list-out.ts';
import type { LastMould, RemakeList } from './remake-first.ts';

/** Moulds to make again in their order, and after them the last of their kind that nothing is wanted of. */
export function remakeOut({ items }: RemakeList, last: readonly LastMould[]): ListOut {
  const listed = new Set(items.flatMap(({ moulds }) => moulds.map(({ id }) => id)));
  return {
    title: 'Make again first',
    headings: ['Piece', 'Would be missed', 'Wanted', 'Chance', 'When to start', 'Master', 'Stands in', 'Its moulds', 'Last of its kind'],
    rows: [
      ...items.map(({ title, missed, wanted, chance, start, source, moulds, isLast }) => [
        title,
        missed.toFixed(1),
        wanted,
        chance,
        start,
        [source.says, source.master?.title].filter(Boolean).join(': '),
        source.place?.path ?? '',
        moulds.map((mould) => `${mould.title}: ${mould.says}`).join('; '),
        isLast ? 'yes' : '',
      ]),
      ...last.filter(({ id }) => !listed.has(id)).map(({ title, detail }) => [title, '', '', '', '', 'None', '', detail, 'yes']),
    ],
  };
}
