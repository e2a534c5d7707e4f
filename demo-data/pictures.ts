import { createHash } from 'node:crypto';
import type { Design } from './designs.ts';
import { MOTIFS } from './motifs.ts';
import { curve, line, oval, ring } from './strokes.ts';

const PAPER = '#f6f1e6';
const INK = '#3d362e';
/** Hides what lies behind the one shape given. */
const solid = (shape: string) => shape.replace('/>', ` fill="${PAPER}"/>`);

/** Outlines by sort of piece, in a square of 200; each says where its ornament goes: [outline, cx, cy, radius]. */
const OUTLINES: Readonly<Record<string, () => readonly [string, number, number, number]>> = {
  seal: () => [oval(100, 128, 54, 48) + oval(100, 128, 46, 40) + curve('M72 84Q82 52 100 50T128 84') + ring(100, 42, 10), 100, 128, 32],
  bead: () => [ring(100, 100, 62) + oval(100, 42, 18, 6) + oval(100, 158, 18, 6), 100, 100, 42],
  pendant: () => [ring(100, 116, 58) + ring(100, 46, 12) + ring(100, 46, 6), 100, 116, 46],
  finial: () => [
    curve('M70 168h60l-8-26H78Z') +
      line([
        [84, 142],
        [84, 128],
        [116, 128],
        [116, 142],
      ]) +
      ring(100, 84, 46),
    100,
    84,
    38,
  ],
  brooch: () => [
    curve('M34 118Q100 30 166 118Q100 88 34 118Z') +
      line([
        [34, 120],
        [166, 126],
      ]) +
      solid(ring(100, 92, 34)),
    100,
    92,
    27,
  ],
  toggle: () => [curve('M40 76h120q14 24 0 48H40q-14-24 0-48Z') + oval(100, 140, 16, 9), 100, 98, 30],
  'signet ring': () => [ring(100, 122, 52) + ring(100, 122, 42) + solid(oval(100, 66, 38, 28)), 100, 66, 22],
  'mirror handle': () => [
    curve('M58 30Q100 84 142 30') + curve('M92 64V160M108 64V160') + ring(100, 172, 12) + solid(ring(100, 108, 38)),
    100,
    108,
    30,
  ],
  'harness mount': () => [
    curve('M100 30L164 66V134L100 170L36 134V66Z') +
      [
        [100, 42],
        [152, 72],
        [152, 128],
        [100, 158],
        [48, 128],
        [48, 72],
      ]
        .map(([x = 0, y = 0]) => ring(x, y, 4))
        .join(''),
    100,
    100,
    44,
  ],
  plaque: () => [`<rect x="36" y="44" width="128" height="112" rx="8"/><rect x="44" y="52" width="112" height="96" rx="4"/>`, 100, 100, 42],
  buckle: () => [
    `<rect x="30" y="46" width="140" height="108" rx="26"/><rect x="66" y="146" width="68" height="16" rx="6"/>` +
      line([
        [100, 46],
        [100, 30],
      ]),
    100,
    100,
    42,
  ],
  'belt hook': () => [
    curve('M28 84Q90 60 140 84Q176 90 172 118Q164 134 152 122') + curve('M28 84v34Q90 140 138 112') + ring(44, 101, 8),
    96,
    99,
    26,
  ],
  'gaming piece': () => [curve('M54 164h92l-10-22H64Z') + oval(100, 142, 36, 8), 100, 88, 48],
  'coffer foot': () => [
    curve('M40 36h120v22q-22 8-22 34') +
      curve('M40 58q22 8 22 34') +
      line([
        [40, 36],
        [40, 58],
        [160, 58],
      ]),
    100,
    124,
    44,
  ],
};

function sheet(strokes: string) {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 200"><rect width="200" height="200" fill="${PAPER}"/><g fill="none" stroke="${INK}" stroke-width="2.5" stroke-linecap="round" stroke-linejoin="round">${strokes}</g></svg>`;
}

/** A drawing of a design: the outline of its sort with its own ornament. */
export function drawDesign(design: Design, number: number) {
  const drawn = OUTLINES[design.sort]?.();
  const motif = MOTIFS[design.drawing];
  if (!drawn || !motif) throw new Error(`no drawing of ${design.name}`);
  const [outline, cx, cy, radius] = drawn;
  return sheet(outline + motif(cx, cy, radius * (0.86 + (number % 7) * 0.03), number));
}

/** A mould opened out, with what went wrong with it. */
const MOULD_MARKS: Readonly<Record<string, string>> = {
  'torn gate': '<path d="M92 40l6 16-8 8 10 14M108 40l-4 12 6 10"/>',
  'torn cavity': '<path d="M62 112l12-6-4 14 12 2M128 96l10 8-2 12"/>',
  brittle: '<path d="M34 60l18 14 6 20M166 140l-20-10-10-22M40 150l16-12"/>',
  flash: '<path d="M70 84q-10 4-8 16t8 18M130 84q10 4 8 16t-8 18" stroke-dasharray="4 5"/>',
};
export const MOULD_PICTURES = Object.keys(MOULD_MARKS);

export function drawMould(fault: string) {
  return sheet(
    `<rect x="26" y="34" width="148" height="132" rx="14"/><path d="M92 34l4 44h8l4-44"/>${oval(100, 106, 34, 28)}${[
      [44, 52],
      [156, 52],
      [44, 148],
      [156, 148],
    ]
      .map(([x = 0, y = 0]) => ring(x, y, 7))
      .join('')}${MOULD_MARKS[fault]}`,
  );
}

/** An album: SVG text by the SHA-256 of its bytes. */
export function openAlbum() {
  const pages: Record<string, string> = {};
  return {
    pages,
    add(svg: string): string {
      const name = createHash('sha256').update(svg, 'utf8').digest('hex');
      pages[name] = svg;
      return name;
    },
  };
}
