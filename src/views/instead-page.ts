import type { Day, MouldId, PlaceId, Sha256 } from '../domain/brand.ts';
import { insteadOf } from '../domain/instead.ts';
import { isLastOfItsKind } from '../domain/last-of-kind.ts';
import { expectedLife, isAged } from '../domain/life.ts';
import { sayCount, sayNumber } from '../domain/measure-words.ts';
import { pathText } from '../domain/nesting.ts';
import { portraitOf } from '../domain/portrait.ts';
import type { Master, Mould, Shelf, Thing } from '../domain/shelf.ts';
import { titleOf } from '../domain/title.ts';
import { type OnFront, onFront } from './front-of.ts';
import { type State, statesOf } from './state.ts';

/** Something to reach for in place of a mould that failed. */
export interface Substitute {
  readonly id: string;
  readonly noun: 'mould' | 'master';
  readonly title: string;
  readonly states: readonly State[];
  readonly detail: string;
  readonly at?: { readonly id: PlaceId; readonly path: string; readonly front: OnFront | null };
  readonly picture?: Sha256;
}

export interface InsteadPage {
  readonly title: string;
  readonly isFailed: boolean;
  readonly isLast: boolean;
  readonly faults: readonly string[];
  readonly says: string;
  readonly moulds: readonly Substitute[];
  /** Worn ones, when there is no better. */
  readonly lastResort: readonly Substitute[];
  readonly masters: readonly Substitute[];
  /** Where the failed one still stands. */
  readonly stands?: string;
}

export function insteadPageOf(shelf: Shelf, id: MouldId, today: Day): InsteadPage | undefined {
  const mould = shelf.things.mould.get(id);
  if (!mould) return undefined;
  const { moulds, lastResort, masters, says } = insteadOf(shelf, id, today);
  const ofMoulds = (list: readonly Mould[]) => list.map((each) => substitute(shelf, each, shotsOf(shelf, each, today)));
  const stands = pathText(shelf, mould.at);
  return {
    title: titleOf(shelf, mould),
    isFailed: mould.grade === 'failed',
    isLast: isLastOfItsKind(shelf, mould),
    faults: mould.faults ?? [],
    says,
    moulds: ofMoulds(moulds),
    lastResort: ofMoulds(lastResort),
    masters: masters.map((each) => substitute(shelf, each, masterDetail(each))),
    ...(stands ? { stands } : {}),
  };
}

function substitute(shelf: Shelf, thing: Mould | Master, detail: string): Substitute {
  const picture = portraitOf(shelf, thing);
  const path = pathText(shelf, thing.at);
  return {
    id: thing.id,
    noun: thing.noun,
    title: titleOf(shelf, thing as Thing),
    states: statesOf(shelf, thing),
    detail,
    ...(thing.at && path ? { at: { id: thing.at, path, front: onFront(shelf, thing.at) } } : {}),
    ...(picture ? { picture } : {}),
  };
}

function shotsOf(shelf: Shelf, mould: Mould, today: Day): string {
  const life = expectedLife(mould, shelf.studio).shots;
  const shots = sayCount(mould.shots, 'shot');
  const told = life ? `${shots} of about ${sayNumber(life.value)}` : shots;
  const aged = isAged(mould, shelf.studio, today) ? 'the rubber is past its years' : undefined;
  return [told, aged, mould.code].filter(Boolean).join(' · ');
}

function masterDetail(master: Master): string {
  return [master.kind, master.code].filter(Boolean).join(' · ');
}
