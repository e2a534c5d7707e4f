import { fold } from './folding.ts';

/** Every word met so far with its number; a word keeps its number for as long as the app is open, so that what was read once need not be read again. */
export class Lexicon {
  readonly words: string[] = [];
  private readonly numbers = new Map<string, number>();
  private readonly read = new Map<string, readonly number[]>();

  /** The numbers of a text's words. Names and notes repeat a lot: each text is folded once. */
  numbersOf(text: string): readonly number[] {
    if (text === '') return [];
    const known = this.read.get(text);
    if (known) return known;
    const folded = fold(text);
    const numbers = folded === '' ? [] : folded.split(' ').map((word) => this.numberOf(word));
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
}
