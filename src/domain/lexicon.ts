import { fold } from './folding.ts';

/** A code written in two parts, “M-014” or “KO 12”: many type it in one. In running words only capitals with a blank behind them are taken for one. */
const TWO_PARTS = /(?<![\p{L}\p{N}])(?:(\p{L}{1,6})[-‐‑–./_]|(\p{Lu}{1,3}) )(\d[\p{L}\p{N}]*)/gu;
/** Whether a text may have one, told in a twentieth of the time. */
const MAY_HAVE_TWO = /[^\s\d][-‐‑–./_]\d|[^\s\da-z] \d/;

/** Every word met so far with its number; a word keeps its number for as long as the app is open, so that what was read once need not be read again. */
export class Lexicon {
  readonly words: string[] = [];
  private readonly numbers = new Map<string, number>();
  private readonly read = new Map<string, readonly number[]>();
  private joined: JoinedWords | undefined;

  /** The numbers of a text's words. Names and notes repeat a lot: each text is folded once. */
  numbersOf(text: string): readonly number[] {
    if (text === '') return [];
    const known = this.read.get(text);
    if (known) return known;
    const folded = fold(text);
    const words = folded === '' ? [] : folded.split(' ');
    if (MAY_HAVE_TWO.test(text)) {
      for (const [, joined = '', apart = '', figures = ''] of text.matchAll(TWO_PARTS)) words.push(fold(joined + apart + figures));
    }
    const numbers = words.map((word) => this.numberOf(word));
    this.read.set(text, numbers);
    return numbers;
  }

  private numberOf(word: string): number {
    const known = this.numbers.get(word);
    if (known !== undefined) return known;
    const number = this.words.push(word) - 1;
    this.numbers.set(word, number);
    return number;
  }

  /** All words in one text, made again when there are more of them. */
  inOneText(): JoinedWords {
    if (this.joined?.words.length !== this.words.length) this.joined = joinWords([...this.words]);
    return this.joined;
  }
}

/** Words one after another in one text, which is gone through for a piece ten times quicker than word by word. */
export interface JoinedWords {
  readonly words: readonly string[];
  readonly text: string;
  /** Where each word begins, and one more, where the next would. */
  readonly starts: Int32Array;
}

function joinWords(words: readonly string[]): JoinedWords {
  const starts = new Int32Array(words.length + 1);
  let at = BETWEEN.length;
  for (let i = 0; i < words.length; i++) {
    starts[i] = at;
    at += (words[i] as string).length + BETWEEN.length;
  }
  starts[words.length] = at;
  return { words, text: BETWEEN + words.join(BETWEEN), starts };
}

/** In no word and no query. */
const BETWEEN = '\n';

/** Calls with the number of each word that has the piece in it, in their order. A letter alone has to begin the word: nearly all have it somewhere. */
export function eachWordWith({ text, starts }: JoinedWords, piece: string, tell: (word: number) => void): void {
  const before = piece.length === 1 ? BETWEEN : '';
  const sought = before + piece;
  let word = 0;
  for (let at = text.indexOf(sought); at !== -1; at = text.indexOf(sought, (starts[word] as number) - before.length)) {
    while ((starts[word + 1] as number) <= at + before.length) word++;
    tell(word);
    word++;
  }
}
