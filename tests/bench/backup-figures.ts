import type { Figure } from './table.ts';
import type { Seen } from './watched.ts';

/** A backup of so many pictures: made, looked at, and put in the place of what was there. */
export interface Worked {
  readonly pictures: number;
  /** Of the file. */
  readonly bytes: number;
  readonly write: Seen;
  readonly open: Seen;
  readonly replace: Seen;
}

/**
 * A hundred thousand entries are some 20 MB of text and 100 MB as records, which the worker and the page both have for a while; the rest is for
 * pictures on their way and for what is not yet swept up. A phone gives a page several times that (from memory).
 */
const PAGE_MB = 350;

const MB = (bytes: number) => (bytes / 1e6).toFixed(0);
const DOING = { write: 'made and read back', open: 'looked at', replace: 'put in the place of another' } as const;

const KINDS = ['write', 'open', 'replace'] as const;
const memory = (worked: Worked) => KINDS.reduce((sum, doing) => sum + worked[doing].grown.pages, 0);

export function backupFigures(worked: readonly Worked[], refused: number): readonly Figure[] {
  const [half, whole] = worked as [Worked, Worked];
  return [
    ...KINDS.flatMap((doing) => figuresOf(doing, half, whole)),
    // Of the three together: when the browser sweeps up makes one of them alone half or twice as much.
    {
      name: `a backup of ${whole.pictures} pictures: memory against half as many`,
      value: memory(whole) / memory(half),
      unit: '×',
      bound: 1.3,
    },
    {
      name: `spoiled backups of ${whole.pictures} pictures refused, nothing changed`,
      value: refused,
      unit: '',
      least: refused,
      note: 'cut short, a byte changed, of a newer version',
    },
  ];
}

function figuresOf(doing: keyof typeof DOING, half: Worked, whole: Worked): readonly Figure[] {
  const what = `a backup of ${whole.pictures} pictures, ${DOING[doing]}`;
  const seen = whole[doing];
  const { pages, rest } = seen.grown;
  const turns = seen.sentences.map(([says, at]) => `${says || 'done'} ${(at / 1000).toFixed(1)} s`).join(', ');
  return [
    { name: what, value: seen.ms, unit: 'ms', bound: 30_000, note: `${MB(whole.bytes)} MB; ${turns}` },
    {
      name: `${what}: memory of the page`,
      value: pages / 1e6,
      unit: 'MB',
      bound: PAGE_MB,
      note: `${MB(half[doing].grown.pages)} MB with half of them; the browser besides ${MB(rest)} and ${MB(half[doing].grown.rest)} MB`,
    },
    { name: `${what}: longest time without word`, value: seen.silent, unit: 'ms', bound: 1500, note: `${seen.notices} moves of the bar` },
    { name: `${what}: longest the page was held up`, value: seen.blocked, unit: 'ms', bound: 100 },
  ];
}
