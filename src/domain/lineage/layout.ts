import dagre from '@dagrejs/dagre';
import type { Member } from './family.ts';

/** A thing's box in the picture, px; a mould's box holds a line for each pile that came out of it. */
export interface Card {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
  /** Piles shown inside, from the top. */
  readonly piles: readonly string[];
}

/** From the foot of one card to the head of another, or of a frame. */
export interface Line {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** Moulds of the same masters, of which nothing was moulded again, stand together in a frame. */
export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** Where a generation begins: its moulds, and the masters made of their waxes below them. */
export interface Band {
  readonly y: number;
  readonly generation: number;
}

export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly cards: readonly Card[];
  readonly lines: readonly Line[];
  readonly frames: readonly Frame[];
  readonly bands: readonly Band[];
}

export const CARD_W = 208;
export const HEAD_H = 76;
export const PILE_H = 48;
const GAP = 14;
const ROW_GAP = 44;
const FRAME_PAD = 10;
/** Cards side by side in a frame, unless told otherwise; a phone is some two wide. */
const ACROSS = 3;

interface Box {
  readonly key: string;
  readonly w: number;
  readonly h: number;
  /** Cards with their places inside the box. */
  readonly cards: readonly Card[];
  readonly isFrame: boolean;
  readonly parents: readonly string[];
  readonly row: number;
  readonly generation: number;
}

/**
 * Generations as rows, laid out by dagre. A row of three hundred boxes would be fifty screens wide and take dagre seconds, so it is given fewer
 * and larger ones: piles are lines in their mould's card, and moulds that lead no further stand together in frames.
 */
export function layOut(members: readonly Member[], across = ACROSS): Picture {
  const boxes = boxesOf(members, across);
  const graph = new dagre.graphlib.Graph();
  // Rows are known from the generations, which spares dagre its own ranking; a lineage rarely crosses itself, so the first order will do.
  graph.setGraph({ ranker: 'none' as never, ranksep: ROW_GAP, nodesep: GAP, edgesep: GAP, rankalign: 'top' });
  graph.setDefaultEdgeLabel(() => ({}));
  const boxOf = new Map<string, Box>();
  for (const box of boxes) {
    // dagre counts two ranks from row to row, to have room for labels on lines.
    graph.setNode(box.key, { width: box.w, height: box.h, rank: box.row * 2 });
    for (const card of box.cards) for (const id of [card.id, ...card.piles]) boxOf.set(id, box);
  }
  for (const box of boxes) {
    for (const parent of new Set(box.parents)) {
      const above = boxOf.get(parent);
      if (above && above !== box) graph.setEdge(above.key, box.key);
    }
  }
  dagre.layout(graph, { disableOptimalOrderHeuristic: boxes.length > MANY_BOXES });
  return pictureOf(boxes, boxOf, graph as unknown as Placed);
}

/** Above this many, dagre's search for fewer crossings takes longer than somebody waits. */
const MANY_BOXES = 40;

interface Placed {
  node(key: string): { readonly x: number; readonly y: number };
  graph(): { readonly width?: number; readonly height?: number };
}

function pictureOf(boxes: readonly Box[], boxOf: ReadonlyMap<string, Box>, graph: Placed): Picture {
  const at = (box: Box) => {
    const { x, y } = graph.node(box.key);
    return { x: x - box.w / 2, y: y - box.h / 2 };
  };
  const cards: Card[] = [];
  const frames: Frame[] = [];
  const lines: Line[] = [];
  const bands = new Map<number, Band>();
  for (const box of boxes) {
    const { x, y } = at(box);
    if (box.isFrame) frames.push({ x, y, w: box.w, h: box.h });
    cards.push(...box.cards.map((card) => ({ ...card, x: card.x + x, y: card.y + y })));
    const band = bands.get(box.generation);
    if (!band || band.y > y) bands.set(box.generation, { y, generation: box.generation });
  }
  const places = new Map(cards.flatMap((card) => [card.id, ...card.piles].map((id) => [id, card] as const)));
  for (const box of boxes) {
    const { x, y } = at(box);
    for (const parent of new Set(box.parents)) {
      const from = places.get(parent);
      if (from && boxOf.get(parent) !== box) lines.push({ x1: from.x + from.w / 2, y1: from.y + from.h, x2: x + box.w / 2, y2: y });
    }
  }
  const { width = 0, height = 0 } = graph.graph();
  return { width, height, cards, lines, frames, bands: [...bands.values()].sort((a, b) => a.y - b.y) };
}

function boxesOf(members: readonly Member[], across: number): readonly Box[] {
  const byId = new Map(members.map((member) => [member.id, member]));
  const inMould = (member: Member) => {
    const isPile = member.noun === 'injectedWax' || member.noun === 'casting';
    return isPile && byId.get(member.parents[0] ?? '')?.noun === 'mould';
  };
  const piles = new Map<string, string[]>();
  const hasFurther = new Set<string>();
  for (const member of members) {
    if (inMould(member)) piles.set(member.parents[0] as string, [...(piles.get(member.parents[0] as string) ?? []), member.id]);
    else for (const parent of member.parents) hasFurther.add(parent);
  }
  const shown = members.filter((member) => !inMould(member));
  const holder = (id: string) => {
    const member = byId.get(id);
    return member && inMould(member) ? (member.parents[0] as string) : id;
  };
  const rows = new Map<string, number>();
  for (const { id, noun, parents, generation } of shown) {
    const above = parents.map((parent) => rows.get(holder(parent)) ?? -1);
    rows.set(id, Math.max(noun === 'mould' ? 2 * generation - 1 : 2 * generation, ...above.map((row) => row + 1), 0));
  }
  const boxes: Box[] = [];
  const frames = new Map<string, Member[]>();
  for (const member of shown) {
    const own = piles.get(member.id) ?? [];
    const leads = hasFurther.has(member.id) || own.some((pile) => hasFurther.has(pile));
    if (member.noun === 'mould' && !leads && member.parents.length > 0) {
      const key = `frame ${rows.get(member.id)} ${member.parents.join(' ')}`;
      frames.set(key, [...(frames.get(key) ?? []), member]);
    } else boxes.push(boxOf([member], piles, rows, member.id, 1));
  }
  for (const [key, moulds] of frames) boxes.push(boxOf(moulds, piles, rows, moulds.length > 1 ? key : (moulds[0] as Member).id, across));
  // dagre keeps to the order it is given: eldest first, from left to right.
  return boxes.sort((a, b) => a.row - b.row);
}

function boxOf(
  members: readonly Member[],
  piles: ReadonlyMap<string, readonly string[]>,
  rows: ReadonlyMap<string, number>,
  key: string,
  most: number,
): Box {
  const [first] = members as readonly [Member];
  const isFrame = members.length > 1;
  const pad = isFrame ? FRAME_PAD : 0;
  const across = Math.min(most, members.length);
  const columns = Array.from({ length: across }, (): number => pad);
  const cards = members.map(({ id }): Card => {
    const own = piles.get(id) ?? [];
    const column = columns.indexOf(Math.min(...columns));
    const y = columns[column] as number;
    const h = HEAD_H + own.length * PILE_H;
    columns[column] = y + h + GAP;
    return { id, x: pad + column * (CARD_W + GAP), y, w: CARD_W, h, piles: own };
  });
  return {
    key,
    w: across * (CARD_W + GAP) - GAP + 2 * pad,
    h: Math.max(...columns) - GAP + pad,
    cards,
    isFrame,
    parents: members[0] ? [...first.parents] : [],
    row: rows.get(first.id) ?? 0,
    generation: first.generation,
  };
}
