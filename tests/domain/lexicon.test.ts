import fc from 'fast-check';
import { expect, test } from 'vitest';
import { eachWordWith, Lexicon } from '../../src/domain/lexicon.ts';

const letters = (least: number, most: number) =>
  fc.string({ unit: fc.constantFrom('a', 'b', 'é', '1'), minLength: least, maxLength: most });

function wordsWith(words: readonly string[], piece: string): readonly string[] {
  const lexicon = new Lexicon();
  lexicon.numbersOf(words.join(' '));
  const joined = lexicon.inOneText();
  const found: string[] = [];
  eachWordWith(joined, piece, (word) => found.push(joined.words[word] ?? 'none'));
  return found;
}

test('a piece is found in the very words that have it, each once and in their order', () => {
  fc.assert(
    fc.property(fc.array(letters(1, 5), { maxLength: 12 }), letters(2, 3), (written, typed) => {
      const plain = (text: string) => text.replaceAll('é', 'e');
      const words = [...new Set(written.map(plain))];
      const piece = plain(typed);
      expect(wordsWith(written, piece)).toEqual(words.filter((word) => word.includes(piece)));
    }),
  );
});

test('a letter alone has to begin the word', () => {
  expect(wordsWith(['toggle', 'otter', 't', 'bolt', 'tern'], 't')).toEqual(['toggle', 't', 'tern']);
  expect(wordsWith([], 't')).toEqual([]);
});

test('words met later are found too', () => {
  const lexicon = new Lexicon();
  lexicon.numbersOf('heron brooch');
  lexicon.inOneText();
  const [tern] = lexicon.numbersOf('tern');
  const found: number[] = [];
  eachWordWith(lexicon.inOneText(), 'ern', (word) => found.push(word));
  expect(found).toEqual([tern]);
});
