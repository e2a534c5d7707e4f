import { startJob } from '../device/worker-client.ts';
import { ancestorsOf, descendantsOf } from '../domain/lineage/descent.ts';
import { type Branch, familyOf, type Member, nearKin, outlineOf, type Reach } from '../domain/lineage/family.ts';
import { generationInWords, generationOf } from '../domain/lineage/generation.ts';
import { kinOf } from '../domain/lineage/kin.ts';
import type { Picture } from '../domain/lineage/layout.ts';
import { sayCount } from '../domain/measure-words.ts';
import type { Problem } from '../domain/problem.ts';
import type { Shelf } from '../domain/shelf.ts';
import { isSpent, isUsedUp } from '../domain/spent.ts';
import { NOUN_WORD, titleOf } from '../domain/title.ts';
import { type State, statesOf } from './state.ts';

export interface LineagePage {
  readonly title: string;
  /** Its generation, in words. */
  readonly says: string;
  /** Those that the picture shows: piles of which nothing is left and nothing came are left to the list. */
  readonly drawn: readonly Member[];
  readonly outline: readonly Branch[];
}

/** Where a thing came from and what came of it; undefined for what has no lineage. */
export function lineagePageOf(shelf: Shelf, id: string, reach: Reach): LineagePage | undefined {
  const thing = kinOf(shelf, id);
  const generation = generationOf(shelf, id);
  if (!thing || !generation) return undefined;
  const members = familyOf(shelf, id, reach);
  return {
    title: titleOf(shelf, thing),
    says: generationInWords(thing, generation),
    drawn: drawnOf(shelf, members, id),
    outline: outlineOf(members),
  };
}

function drawnOf(shelf: Shelf, members: readonly Member[], here: string): readonly Member[] {
  const leads = new Set(members.flatMap(({ parents }) => parents));
  return members.filter(({ id }) => {
    const thing = kinOf(shelf, id);
    return !thing || id === here || leads.has(id) || !isUsedUp(thing);
  });
}

/** How a member of a family is shown. */
export interface MemberWords {
  readonly title: string;
  readonly detail: string;
  readonly states: readonly State[];
  /** Failed, out of use or used up. */
  readonly isSpent: boolean;
}

export function memberWords(shelf: Shelf, id: string): MemberWords {
  const thing = kinOf(shelf, id);
  if (!thing) return { title: 'Not known', detail: 'no record of it here', states: [], isSpent: false };
  const states = statesOf(shelf, thing);
  const common = { title: titleOf(shelf, thing), states, isSpent: isSpent(thing) };
  switch (thing.noun) {
    case 'master':
      return { ...common, detail: thing.kind ?? 'master' };
    case 'mould':
      return { ...common, detail: ['mould', thing.code].filter(Boolean).join(' ') };
    case 'injectedWax':
      return { ...common, detail: `${piecesOf(thing.pieces, 'wax', 'waxes')}, ${thing.state ?? 'raw'}` };
    case 'casting':
      return { ...common, detail: [piecesOf(thing.pieces, 'casting', 'castings'), thing.metal].filter(Boolean).join(', ') };
  }
}

function piecesOf(pieces: number, one: string, many: string): string {
  return pieces > 0 ? sayCount(pieces, one, many) : `no ${many} left`;
}

/** The same, as one sentence of the outline. */
export function branchInWords(shelf: Shelf, { id, besides }: Branch): { readonly title: string; readonly detail: string } {
  const { title, detail, states } = memberWords(shelf, id);
  const others = besides.map((each) => memberWords(shelf, each).title);
  const count = generationOf(shelf, id)?.count;
  const parts = [
    detail,
    ...(count === undefined ? [] : [`generation ${count}`]),
    ...states.map(({ word }) => word),
    ...(others.length > 0 ? [`also from ${others.join(' and ')}`] : []),
  ];
  return { title, detail: parts.join(' · ') };
}

export interface KinSummary {
  readonly says: string;
  /** How much is above and below it. */
  readonly counts: string;
}

/** What a thing's own page says of its lineage. */
export function kinSummary(shelf: Shelf, id: string): KinSummary | undefined {
  const thing = kinOf(shelf, id);
  const generation = generationOf(shelf, id);
  if (!thing || !generation) return undefined;
  const above = [...ancestorsOf(shelf, id)].filter((each) => kinOf(shelf, each)).length;
  const below = descendantsOf(shelf, id).size;
  const up =
    above === 0 ? `Nothing is recorded that this ${NOUN_WORD[thing.noun]} came from` : `It came from ${sayCount(above, 'recorded thing')}`;
  const down = below === 0 ? 'nothing came of it yet' : `${sayCount(below, 'thing')} came of it`;
  return { says: generationInWords(thing, generation), counts: `${up}; ${down}.` };
}

/** The few that stand nearest to a thing, for the small picture on its page: none when it would stand there alone. */
export function nearKinOf(shelf: Shelf, id: string): readonly Member[] {
  const members = nearKin(shelf, id, (thing) => !isSpent(thing));
  return members.length > 1 ? members : [];
}

export interface Drawing {
  /** Undefined when it was called off. */
  readonly picture: Promise<Picture | Problem | undefined>;
  cancel(): void;
}

/** Lays the picture out beside the page: on a phone a large family takes dagre some hundred milliseconds. */
export function drawLineage(members: readonly Member[], across?: number): Drawing {
  const { answer, cancel } = startJob('lineage', { members, ...(across === undefined ? {} : { across }) });
  return { picture: answer, cancel };
}
