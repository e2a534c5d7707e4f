import { parseCode } from '../label.ts';
import { isProblem } from '../problem.ts';

/** A thing as a cell names it: by what it is called, by its label code, or both. */
export interface Named {
  readonly name?: string;
  readonly code?: string;
}

/** Marks that lists part names by; a name with one of them is written between quotation marks. */
const PLAIN = /^[^\s",;/|>[\]][^",;/|>[\]\r\n]*$/;
const ITEM = /\s*(?:"((?:[^"]|"")*)"|([^"[\];]*?))\s*(?:\[([0-9A-Z]{8})\])?\s*(;|$)/y;

/** “Owl seal [DABC1234]; "Hare, running"”: names that `readNamed` reads back as they are; an exact one is always between quotation marks. */
export function writeNamed(things: readonly (Named & { readonly isExact?: boolean })[]): string {
  return things
    .map(({ name, code, isExact }) => {
      const called =
        name === undefined ? '' : !isExact && PLAIN.test(name) && name === name.trim() ? name : `"${name.replace(/"/g, '""')}"`;
      return [called, code === undefined ? '' : `[${code}]`].filter((part) => part !== '').join(' ');
    })
    .join('; ');
}

/** The things a cell names where it is written as `writeNamed` does; undefined for a cell in a person's own way. */
export function readNamed(cell: string): readonly Named[] | undefined {
  const things: Named[] = [];
  let isOurs = false;
  let at = 0;
  while (at < cell.length) {
    ITEM.lastIndex = at;
    const item = ITEM.exec(cell);
    if (!item || item[0] === '') return undefined;
    const [, quoted, plain = '', code] = item;
    if (code !== undefined && isProblem(parseCode(code))) return undefined;
    const name = quoted === undefined ? plain.trim() : quoted.replace(/""/g, '"');
    if (name === '' && code === undefined) return undefined;
    isOurs ||= quoted !== undefined || code !== undefined;
    things.push({ ...(name === '' ? {} : { name }), ...(code === undefined ? {} : { code }) });
    at = ITEM.lastIndex;
  }
  return isOurs ? things : undefined;
}
