import type { MouldId } from '../brand.ts';
import type { Entry, EntryOf } from '../entry.ts';

export type IsDirect = (entry: EntryOf<'cast'>) => boolean;

/** Whether castings were poured straight into the mould, by what is recorded now of its design, or of theirs. */
export function pouredDirect(entries: readonly Entry[], mould: MouldId): IsDirect {
  const routes = new Map<string, string | null | undefined>();
  let design: string | null | undefined;
  for (const entry of entries) {
    if (entry.kind !== 'recorded' && entry.kind !== 'corrected') continue;
    const id = entry.kind === 'recorded' ? entry.id : entry.noun === 'studio' ? undefined : entry.of;
    if (entry.noun === 'design' && id !== undefined && entry.fields.route !== undefined) routes.set(id, entry.fields.route);
    if (entry.noun === 'mould' && (id as string) === mould && entry.fields.design !== undefined) design = entry.fields.design;
  }
  return (cast) => cast.mould === mould && routes.get(cast.design ?? design ?? '') === 'poured in the mould';
}
