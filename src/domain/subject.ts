import type { Entry } from './entry.ts';

/** The thing an entry's pictures show. */
export function subjectOf(entry: Entry): string | undefined {
  switch (entry.kind) {
    case 'recorded':
      return entry.id;
    case 'corrected':
      return entry.noun === 'studio' ? undefined : entry.of;
    case 'injected':
      return entry.mould;
    case 'moved':
      return entry.things[0];
    case 'received':
    case 'weighed':
      return entry.wax;
    case 'dressed':
      return entry.from;
    case 'invested':
      return entry.flask;
    case 'cast':
      return entry.mould ?? entry.flask ?? entry.onto ?? entry.id;
    case 'withdrawn':
      return undefined;
    default:
      return entry.of;
  }
}
