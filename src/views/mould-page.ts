import type { Day, MasterId, MouldId, PlaceId, Sha256 } from '../domain/brand.ts';
import { dayInWords } from '../domain/day-words.ts';
import type { Flag } from '../domain/flag.ts';
import { sayCount } from '../domain/measure-words.ts';
import { pathText } from '../domain/nesting.ts';
import { picturesOf, portraitOf } from '../domain/portrait.ts';
import type { InjectedWax, Mould, Shelf } from '../domain/shelf.ts';
import { titleOf } from '../domain/title.ts';
import type { Units } from '../domain/units.ts';
import { attentionOf, attentionTo } from './attention.ts';
import { type OnFront, onFront } from './front-of.ts';
import { countFacts, type Fact, injectionFacts, makingFacts, settingsThatWork } from './mould-facts.ts';
import { type State, statesOf } from './state.ts';

/** A thing named on the page, with the address part that opens it. */
export interface Named {
  readonly id: string;
  readonly title: string;
  readonly detail?: string;
  readonly picture?: Sha256;
}

/** What is most likely done next with a mould in hand. */
export type Next = 'instead' | 'back' | 'inspect' | 'run' | 'nothing';

export interface MouldPage {
  readonly id: MouldId;
  readonly title: string;
  readonly code?: string;
  readonly pictures: readonly Sha256[];
  readonly design?: Named;
  readonly size?: string;
  readonly purpose: string;
  readonly states: readonly State[];
  readonly flags: readonly Flag[];
  readonly gradeNote?: string;
  readonly nextLook?: string;
  readonly stands?: {
    readonly id: PlaceId;
    readonly path: string;
    readonly since?: string;
    readonly holder?: string;
    readonly front: OnFront | null;
  };
  readonly usual?: { readonly id: PlaceId; readonly path: string };
  readonly until?: { readonly says: string; readonly isLate: boolean };
  readonly counts: readonly Fact[];
  readonly making: readonly Fact[];
  readonly injection: readonly Fact[];
  /** Where the settings come from. */
  readonly injectionFrom?: string;
  readonly masters: readonly Named[];
  readonly made: readonly Named[];
  /** Masters dressed from its waxes: what makes an intermediate mould worth keeping. */
  readonly descendants: readonly Named[];
  readonly note?: string;
  readonly next: Next;
}

export function mouldPageOf(shelf: Shelf, id: MouldId, today: Day, units: Units): MouldPage | undefined {
  const mould = shelf.things.mould.get(id);
  if (!mould) return undefined;
  const flags = attentionTo(attentionOf(shelf, today, units), id);
  const design = mould.design ? shelf.things.design.get(mould.design) : undefined;
  const settings = settingsThatWork(mould);
  return {
    id,
    title: titleOf(shelf, mould),
    ...(mould.code ? { code: mould.code } : {}),
    pictures: picturesOf(shelf, mould),
    ...(design ? { design: { id: design.id, title: titleOf(shelf, design) } } : {}),
    ...(mould.size ? { size: mould.size } : {}),
    purpose: purposeOf(mould),
    states: statesOf(shelf, mould),
    flags,
    ...(mould.gradeNote ? { gradeNote: mould.gradeNote } : {}),
    ...(mould.nextLook ? { nextLook: dayInWords(mould.nextLook) } : {}),
    ...standing(shelf, mould, today),
    counts: countFacts(shelf, mould),
    making: makingFacts(mould, today),
    injection: settings ? injectionFacts(shelf, settings.wax, settings.injection, units, mould) : [],
    ...(settings ? { injectionFrom: settings.from } : {}),
    masters: [...new Set([mould.master, ...(mould.masters ?? [])])].flatMap((master) => named(shelf, master)),
    made: madeOf(shelf, mould),
    descendants: [...shelf.things.master.values()]
      .filter((master) => master.from?.some((from) => from === id || shelf.things.injectedWax.get(from as InjectedWax['id'])?.mould === id))
      .flatMap((master) => named(shelf, master.id)),
    ...(mould.note ? { note: mould.note } : {}),
    next: nextOf(shelf, mould, flags),
  };
}

function purposeOf(mould: Mould): string {
  if (mould.purpose === 'intermediate') return 'Intermediate: made only to get a wax to dress';
  return mould.purpose === 'production' ? 'Production' : 'Not said whether production or intermediate';
}

/** Out on loan comes first: whoever holds it in hand has just got it back. */
function nextOf(shelf: Shelf, mould: Mould, flags: readonly Flag[]): Next {
  if (mould.at && shelf.things.place.get(mould.at)?.kind === 'away') return 'back';
  if (mould.grade === 'failed') return 'instead';
  if (mould.retired) return 'nothing';
  return flags.some((flag) => flag.kind === 'look due') ? 'inspect' : 'run';
}

function standing(shelf: Shelf, mould: Mould, today: Day): Pick<MouldPage, 'stands' | 'usual' | 'until'> {
  const place = mould.at ? shelf.things.place.get(mould.at) : undefined;
  const usual = mould.usual && shelf.things.place.has(mould.usual) ? { id: mould.usual, path: pathText(shelf, mould.usual) } : undefined;
  const since = mould.atSince ? { since: dayInWords(mould.atSince) } : {};
  const holder = place?.kind === 'away' ? { holder: place.holder ?? titleOf(shelf, place) } : {};
  return {
    ...(place ? { stands: { id: place.id, path: pathText(shelf, place.id), front: onFront(shelf, place.id), ...since, ...holder } } : {}),
    ...(usual ? { usual } : {}),
    ...(mould.until ? { until: { says: dayInWords(mould.until), isLate: mould.until < today } } : {}),
  };
}

function named(shelf: Shelf, id: MasterId | undefined): readonly Named[] {
  const master = id ? shelf.things.master.get(id) : undefined;
  if (!master) return [];
  const detail = [master.kind, master.state, pathText(shelf, master.at)].filter(Boolean).join(' · ');
  const picture = portraitOf(shelf, master);
  return [{ id: master.id, title: titleOf(shelf, master), ...(detail ? { detail } : {}), ...(picture ? { picture } : {}) }];
}

function madeOf(shelf: Shelf, mould: Mould): readonly Named[] {
  const piles: Named[] = [];
  const isOurs = (pile: { readonly mould?: string; readonly pieces: number }) => pile.mould === mould.id && pile.pieces > 0;
  for (const pile of shelf.things.injectedWax.values()) {
    if (isOurs(pile))
      piles.push({
        id: pile.id,
        title: `${sayCount(pile.pieces, 'wax', 'waxes')}, ${pile.state ?? 'raw'}`,
        detail: pileDetail(shelf, pile),
      });
  }
  for (const pile of shelf.things.casting.values()) {
    if (isOurs(pile))
      piles.push({
        id: pile.id,
        title: `${sayCount(pile.pieces, 'casting')}${pile.metal ? `, ${pile.metal}` : ''}`,
        detail: pathText(shelf, pile.at) || 'no place yet',
      });
  }
  return piles;
}

function pileDetail(shelf: Shelf, pile: InjectedWax): string {
  const wax = pile.wax ? titleOf(shelf, shelf.things.wax.get(pile.wax)) : undefined;
  return [wax, pathText(shelf, pile.at) || 'no place yet'].filter(Boolean).join(' · ');
}
