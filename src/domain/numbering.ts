/** What is numbered: the words before the number, and the number as its digits stand, with leading noughts. */
interface Numbered {
  readonly stem: string;
  readonly digits: string;
}

function numberedOf(name: string): Numbered {
  const [, stem = name, digits = ''] = /^(.*?)(\d*)$/s.exec(name.trimEnd()) ?? [];
  return { stem, digits };
}

/**
 * The next `count` names after one: “Toggle 07” is followed by “Toggle 08”, and “Toggle” by “Toggle 2”. Noughts in front are kept as long as
 * they fit. What is taken already is passed over.
 */
export function numberOn(name: string, count: number, isTaken: (name: string) => boolean = () => false): readonly string[] {
  const { stem, digits } = numberedOf(name);
  const names: string[] = [];
  const before = digits === '' ? `${stem} ` : stem;
  // Numbers are as long as whoever wrote them liked.
  for (let number = digits === '' ? 2n : BigInt(digits) + 1n; names.length < count; number++) {
    const next = `${before}${String(number).padStart(digits.length, '0')}`;
    if (!isTaken(next)) names.push(next);
  }
  return names;
}

/** Whether a name or a size ends in a number that can be counted on from. */
export function endsInNumber(name: string | undefined): boolean {
  return name !== undefined && numberedOf(name).digits !== '';
}
