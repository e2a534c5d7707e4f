import list from 'big-list-of-naughty-strings/blns.json' with { type: 'json' };

/** The npm registry's big list of naughty strings: 461 texts with a high probability of causing trouble as input (MIT). */
export const NAUGHTY: readonly string[] = list;

/** As a field of at most `max` characters keeps it: without control characters, trimmed; undefined when nothing is left or it is too long. */
export function keptAs(text: string, max = 120): string | undefined {
  const clean = [...text]
    .filter((character) => !isControl(character))
    .join('')
    .trim();
  return clean === '' || clean.length > max ? undefined : clean;
}

function isControl(character: string): boolean {
  const code = character.codePointAt(0) ?? 0;
  return (code < 0x20 && !'\t\n\r'.includes(character)) || code === 0x7f;
}

/** Those that would run, load or close something if they were taken for markup, scripts or formulas, and those hardest to draw. */
export const NASTIEST: readonly string[] = NAUGHTY.filter((text) => keptAs(text) !== undefined)
  .filter(
    (text, index) =>
      /<(?:script|svg|img|iframe|body|a |style|plaintext)|javascript:|onerror|\bDROP\b|\{\{|\u202e|\ufdfa|[\u0300-\u036f]{3}|%s|^=|__proto__|\.\.\//i.test(
        text,
      ) && index % 3 === 0,
  )
  .slice(0, 36);
