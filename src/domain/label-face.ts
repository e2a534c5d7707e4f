/** What a label says besides its symbol. */
export interface LabelWords {
  readonly code: string;
  /** What the thing is called; on a drawer's front its short label, in large type. */
  readonly name: string;
  /** Smaller lines under it, the most telling first: size, period, span of years, where. */
  readonly lines: readonly string[];
  /** Its kind in a word, beside the kind's shape. */
  readonly kind: string;
  readonly isFront: boolean;
}

/** Width of a text at a font size of 1 mm, in mm. */
export type Measure = (text: string, font: 'plain' | 'bold' | 'code') => number;

export interface FaceText {
  readonly text: string;
  readonly font: 'plain' | 'bold' | 'code';
  /** Left end of the baseline, mm from the label's corner. */
  readonly x: number;
  readonly y: number;
  /** Font size, mm. */
  readonly size: number;
}

/** Where everything lies on one label, mm from its top left corner. */
export interface LabelFace {
  readonly symbol: { readonly x: number; readonly y: number; readonly side: number };
  readonly texts: readonly FaceText[];
  readonly shape: { readonly x: number; readonly y: number; readonly size: number };
}

/** Space kept free at the label's edge, and the smallest type that is still read, mm (5 pt). */
const EDGE = 1;
const SMALLEST = 1.75;
/** Read from two arms' lengths; beyond that, words are worth more than a larger symbol. mm */
const SYMBOL_MOST = 30;
const LARGEST = 6;
const LEADING = 1.18;
/** Above the baseline, as a share of the font size. */
const ASCENT = 0.8;

interface Part {
  readonly text: string;
  readonly font: FaceText['font'];
  /** Size beside that of the others. */
  readonly share: number;
  readonly lines: number;
  readonly hasShape?: boolean;
  /** Goes last when there is no room. */
  readonly isName?: boolean;
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly wide: number;
  readonly tall: number;
}

/** Lays out a label of any size: the symbol on the left or on top, the words beside or below, as large as they fit. */
export function layFace(words: LabelWords, wide: number, tall: number, measure: Measure): LabelFace {
  const { symbol, box } = divided(wide, tall, words.isFront);
  const parts = words.isFront ? frontParts(words) : thingParts(words);
  return { symbol, ...setWords(parts, box, measure) };
}

/** The symbol's quiet zone counts as its own edge, so on a small label it may lie on the label's edge. */
function divided(wide: number, tall: number, isFront: boolean): { symbol: LabelFace['symbol']; box: Box } {
  const inset = Math.min(wide, tall) < 20 ? 0 : EDGE;
  if (tall > wide) {
    const side = Math.min(wide - 2 * inset, tall * 0.6);
    const y = inset + side;
    return { symbol: { x: (wide - side) / 2, y: inset, side }, box: { x: EDGE, y, wide: wide - 2 * EDGE, tall: tall - y - EDGE } };
  }
  const side = Math.min(tall - 2 * inset, wide * (isFront ? 0.36 : 0.48), SYMBOL_MOST);
  const x = inset + side;
  return {
    symbol: { x: inset, y: (tall - side) / 2, side },
    box: { x, y: EDGE, wide: wide - x - EDGE, tall: tall - 2 * EDGE },
  };
}

function thingParts({ code, name, lines, kind }: LabelWords): readonly Part[] {
  return [
    { text: code, font: 'code', share: 1.15, lines: 1 },
    { text: name, font: 'bold', share: 1.1, lines: 3, isName: true },
    ...lines.map((text): Part => ({ text, font: 'plain', share: 1, lines: 1 })),
    { text: kind, font: 'plain', share: 1, lines: 1, hasShape: true },
  ];
}

function frontParts({ code, name, lines, kind }: LabelWords): readonly Part[] {
  const [first, ...others] = lines;
  return [
    { text: name, font: 'bold', share: 2.6, lines: 1, isName: true },
    ...(first === undefined ? [] : [{ text: first, font: 'bold', share: 1.2, lines: 2 } as const]),
    ...others.map((text): Part => ({ text, font: 'plain', share: 1, lines: 1 })),
    { text: kind, font: 'plain', share: 0.8, lines: 1, hasShape: true },
    { text: code, font: 'code', share: 0.9, lines: 1 },
  ];
}

function setWords(parts: readonly Part[], box: Box, measure: Measure): Pick<LabelFace, 'texts' | 'shape'> {
  for (let unit = Math.min(LARGEST, box.tall / 3); unit >= SMALLEST; unit *= 0.96) {
    const set = setAt(parts, box, unit, measure);
    if (set.isWhole && set.tall <= box.tall) return placed(set, box);
  }
  // Too much for the label: its lines go one by one, then the kind; the code and the name stay, the name perhaps cut short.
  for (let kept = parts; ; kept = withoutOne(kept)) {
    const set = setAt(kept, box, SMALLEST, measure);
    if (set.tall <= box.tall) return placed(set, box);
    if (kept.length > 1) continue;
    const small = (SMALLEST * box.tall) / set.tall;
    return placed(setAt(kept, box, small, measure), box);
  }
}

function withoutOne(parts: readonly Part[]): readonly Part[] {
  const spare = parts.findLastIndex((part) => part.font !== 'code' && !part.hasShape && !part.isName);
  const many = parts.findIndex((part) => part.lines > 1);
  if (spare >= 0) return parts.filter((_, i) => i !== spare);
  if (many >= 0) return parts.map((part, i) => (i === many ? { ...part, lines: part.lines - 1 } : part));
  const kind = parts.findIndex((part) => part.hasShape);
  return parts.filter((part, i) => (kind >= 0 ? i !== kind : !part.isName));
}

interface SetLine {
  readonly text: string;
  readonly part: Part;
  readonly size: number;
}

interface SetWords {
  readonly lines: readonly SetLine[];
  readonly tall: number;
  /** Whether nothing was cut short. */
  readonly isWhole: boolean;
}

function setAt(parts: readonly Part[], box: Box, unit: number, measure: Measure): SetWords {
  let isWhole = true;
  const lines = parts.flatMap((part) => {
    const room = box.wide - (part.hasShape ? unit * part.share * 1.2 : 0);
    // A code is never broken nor cut: it shrinks to the label's width.
    const size = part.font === 'code' ? Math.min(unit * part.share, room / measure(part.text, part.font)) : unit * part.share;
    const broken = part.font === 'code' ? [part.text] : wrap(part.text, part.lines, (text) => measure(text, part.font) * size <= room);
    if (broken.join(' ') !== part.text.trim().replace(/\s+/g, ' ')) isWhole = false;
    return broken.map((text): SetLine => ({ text, part, size }));
  });
  return { lines, tall: lines.reduce((sum, { size }) => sum + size * LEADING, 0), isWhole };
}

/** Words on at most so many lines that fit; what is left over is cut short with “…”. */
function wrap(text: string, most: number, fits: (text: string) => boolean): readonly string[] {
  const words = text.trim().split(/\s+/);
  const lines: string[] = [];
  let line = '';
  for (const [i, word] of words.entries()) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    if (line === '' || lines.length === most - 1) return [...lines, cutShort([line, ...words.slice(i)].join(' ').trim(), fits)];
    lines.push(line);
    line = word;
    if (!fits(word)) return [...lines, cutShort(words.slice(i).join(' '), fits)];
  }
  return [...lines, line];
}

function cutShort(text: string, fits: (text: string) => boolean): string {
  const letters = [...text];
  for (let length = Math.min(letters.length, 80); length > 0; length--) {
    const short = `${letters.slice(0, length).join('').trimEnd()}…`;
    if (fits(short)) return short;
  }
  return '';
}

/** In the middle of the box's height. */
function placed({ lines, tall }: SetWords, box: Box): Pick<LabelFace, 'texts' | 'shape'> {
  let y = box.y + Math.max(0, box.tall - tall) / 2;
  let shape = { x: box.x, y: box.y, size: 0 };
  const texts = lines.map(({ text, part, size }): FaceText => {
    const baseline = y + size * (ASCENT + (LEADING - 1) / 2);
    if (part.hasShape) shape = { x: box.x, y: baseline - size * 0.82, size };
    y += size * LEADING;
    return { text, font: part.font, x: box.x + (part.hasShape ? size * 1.2 : 0), y: baseline, size };
  });
  return { texts: texts.filter(({ text }) => text !== ''), shape };
}
