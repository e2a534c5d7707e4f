export interface Import {
  readonly specifier: string;
  readonly line: number;
}

/** Comments, strings, templates without nesting, and what may be a regular expression, in the order they must be told apart. */
const tokens =
  /\/\/[^\n]*|\/\*[\s\S]*?\*\/|'(?:\\.|[^'\\\n])*'|"(?:\\.|[^"\\\n])*"|`(?:\\.|[^`\\])*`|(?<=[=(,:;!&|?{}[]\s*)\/(?![/*])(?:\\.|\[(?:\\.|[^\]\\\n])*\]|[^/\\\n[])+\/[a-z]*/g;

const blank = (text: string) => text.replace(/[^\n]/g, ' ');

/** The code with its comments blanked out, every line where it was. */
export function withoutComments(text: string): string {
  return text.replace(tokens, (token) => (token.startsWith('//') || token.startsWith('/*') ? blank(token) : token));
}

/** Where everything a module asks for is named: `import`, `import type`, `export … from`, `import()` in code and in types. */
export function findImports(text: string): Import[] {
  const code = withoutComments(text);
  // Strings stand as numbered tokens while the statements are looked for, so that text inside them cannot be taken for code.
  const strings: string[] = [];
  const bare = code.replace(tokens, (token) => {
    strings.push(token);
    return `§${strings.length - 1}§${'\n'.repeat(token.split('\n').length - 1)}`;
  });
  const statements = /\bimport\s*\(?\s*§(\d+)§|\b(?:import|export)\b[\w\s{},*$]*?\bfrom\s*§(\d+)§/g;
  return [...bare.matchAll(statements)].map((match) => ({
    specifier: (strings[Number(match[1] ?? match[2])] ?? '').slice(1, -1),
    line: lineOf(bare, match.index),
  }));
}

export function lineOf(text: string, index: number): number {
  return text.slice(0, index).split('\n').length;
}
