import { chance } from './chance.ts';

/** What breaks readers that trust their input. */
const ODD_TEXTS = [
  '\u0000',
  '"',
  '""',
  "'",
  '\r',
  '\r\n',
  '\n',
  ',',
  ';',
  '\t',
  '\ufeff',
  '\ud800',
  '\u202e',
  '\u2028',
  '−',
  '٣',
  '½',
  'ſ',
  'İ',
  '__proto__',
  'constructor',
  'NaN',
  'Infinity',
  '-0',
  '1e309',
  '%',
  '%E0%A4%A',
  '</script>',
  '=1+1',
  '$1',
  '9'.repeat(400),
  ' '.repeat(300),
  'a '.repeat(200),
  '1,'.repeat(200),
  '-'.repeat(300),
  'bc '.repeat(80),
];

const ODD_VALUES: readonly unknown[] = [
  null,
  true,
  0,
  -1,
  0.1,
  1e308,
  2 ** 53,
  '',
  ' ',
  '__proto__',
  [],
  [null],
  {},
  { problem: true },
  { length: 3 },
  { toString: null },
  '2024-02-30',
  '9'.repeat(400),
];

/** A sequence of draws for one input. */
export class Mutator {
  private readonly next: () => number;

  constructor(seed: number) {
    this.next = chance(seed);
  }

  below(count: number): number {
    return Math.floor(this.next() * count);
  }

  one<T>(list: readonly T[]): T {
    return list[this.below(list.length)] as T;
  }

  /** One of the samples with up to four things done to it; now and then nothing but noise. */
  text(samples: readonly string[]): string {
    if (this.next() < 0.04) return this.noise();
    let text = this.one(samples);
    for (let times = 1 + this.below(4); times > 0; times--) text = this.changed(text, samples);
    return text;
  }

  private noise(): string {
    const most = this.one([1, 8, 60]);
    return Array.from({ length: this.below(most) + 1 }, () => String.fromCharCode(this.below(this.one([128, 256, 65_536])))).join('');
  }

  private changed(text: string, samples: readonly string[]): string {
    const at = this.below(text.length + 1);
    const to = at + this.below(Math.min(40, text.length - at + 1));
    switch (this.below(7)) {
      case 0: // A bit flipped.
        return (
          text.slice(0, at) +
          String.fromCharCode(text.charCodeAt(at % Math.max(1, text.length)) ^ (1 << this.below(8))) +
          text.slice(at + 1)
        );
      case 1: // Cut short.
        return this.next() < 0.5 ? text.slice(0, at) : text.slice(at);
      case 2: // A part left out.
        return text.slice(0, at) + text.slice(to);
      case 3: // A part doubled.
        return text.slice(0, to) + text.slice(at);
      case 4: {
        // Spliced with another.
        const other = this.one(samples);
        return text.slice(0, at) + other.slice(this.below(other.length + 1));
      }
      case 5:
        return text.slice(0, at) + this.one(ODD_TEXTS) + text.slice(at);
      default:
        return text.slice(0, at) + this.one(ODD_TEXTS) + text.slice(to);
    }
  }

  /** One of the samples, plain data, with up to three of its parts replaced, left out, doubled, renamed or put into one another. */
  value(samples: readonly unknown[]): unknown {
    const root = { whole: structuredClone(this.one(samples)) as unknown };
    for (let times = 1 + this.below(3); times > 0; times--) this.changePart(root, samples);
    return root.whole;
  }

  private changePart(root: { whole: unknown }, samples: readonly unknown[]): void {
    let holder: Record<string, unknown> = root;
    let key = 'whole';
    // Into the depth, a step at a time.
    for (;;) {
      const inner = holder[key];
      if (typeof inner !== 'object' || inner === null || this.next() < 0.25) break;
      const keys = Object.keys(inner);
      if (keys.length === 0) break;
      holder = inner as Record<string, unknown>;
      key = this.one(keys);
    }
    const now = holder[key];
    switch (this.below(6)) {
      case 0:
        if (key !== 'whole') delete holder[key];
        break;
      case 1: // As JSON.parse would make it: a field of its own, also when it is called __proto__.
        define(holder, this.one(['__proto__', 'constructor', 'problem', `${key}x`, 'code', 'in', 'note']), now);
        break;
      case 2:
        holder[key] = structuredClone(this.one(samples));
        break;
      case 3:
        holder[key] = Array.from({ length: this.one([2, 50, 3000]) }, () => now);
        break;
      default:
        if (typeof now === 'string') holder[key] = this.text([now]);
        else if (typeof now === 'number') holder[key] = this.one([-now, now * 1e6, now + 0.5, now * 1e-9, String(now)]);
        else holder[key] = structuredClone(this.one(ODD_VALUES)); // Else what is done to it would be found in later draws, too.
    }
  }
}

function define(holder: object, key: string, value: unknown): void {
  Object.defineProperty(holder, key, { value, enumerable: true, writable: true, configurable: true });
}
