import type { Code } from '../../src/domain/brand.ts';
import { CROCKFORD } from '../../src/domain/crockford.ts';
import { makeCode } from '../../src/domain/label.ts';
import { NOUNS } from '../../src/domain/noun.ts';

/** `count` label codes of every kind, drawn with the given chance. */
export function drawCodes(count: number, random: () => number): Code[] {
  const codes: Code[] = [];
  const draw = <T>(list: ArrayLike<T>): T => list[Math.floor(random() * list.length)] as T;
  while (codes.length < count) {
    const code = makeCode(draw(NOUNS), Array.from({ length: 6 }, () => draw(CROCKFORD)).join(''));
    if (code) codes.push(code);
  }
  return codes;
}
