import type { Code } from '../domain/brand.ts';
import { NOUNS } from '../domain/noun.ts';
import type { Shelf, Thing } from '../domain/shelf.ts';

/** Whether some thing on the shelf carries a code; the codes are listed when first asked for. */
export function codesOf(shelf: Shelf): (code: Code) => boolean {
  let codes: Set<Code | undefined> | undefined;
  return (code) => {
    codes ??= new Set(NOUNS.flatMap((noun) => [...(shelf.things[noun] as ReadonlyMap<string, Thing>).values()].map((thing) => thing.code)));
    return codes.has(code);
  };
}
