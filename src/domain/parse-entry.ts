import type { PlaceId } from './brand.ts';
import { COMMON, type Entry, FLAG_KINDS, grams, KINDS, PICTURES_MAX, pieces, thing } from './entry.ts';
import { type Check, type Checks, clearable, day, listOf, oneOf, recordOf, ref, sha256, shape } from './field.ts';
import { FIELDS } from './fields.ts';
import { NOUNS, type Noun } from './noun.ts';
import { isProblem, type Problem, problem, quoted } from './problem.ts';
import { STUDIO_FIELDS } from './studio.ts';

const plainChecks = new Map<string, Check<object>>(
  Object.entries(KINDS).map(([kind, { checks, needed }]) => [
    kind,
    shape<Checks, string>({ kind: oneOf([kind]), ...COMMON, ...checks }, ['kind', 'id', 'on', ...needed]),
  ]),
);

const asideCheck: Check<object> = recordOf(FLAG_KINDS, (raw) => (raw === null ? null : day(raw)));

function recordedCheck(noun: Noun): Check<object> {
  return shape<Checks, string>(
    { kind: oneOf(['recorded']), ...COMMON, noun: oneOf([noun]), fields: shape(FIELDS[noun] as Checks), at: ref<PlaceId>(), pieces, grams },
    ['kind', 'id', 'on', 'noun', 'fields'],
  );
}

function correctedCheck(noun: Noun): Check<object> {
  return shape<Checks, string>(
    {
      kind: oneOf(['corrected']),
      ...COMMON,
      noun: oneOf([noun]),
      of: thing,
      fields: clearable(FIELDS[noun] as Checks),
      aside: asideCheck,
      without: listOf(sha256, PICTURES_MAX),
      first: sha256,
    },
    ['kind', 'id', 'on', 'noun', 'of', 'fields'],
  );
}

const recordedChecks = new Map<string, Check<object>>(NOUNS.map((noun) => [noun, recordedCheck(noun)]));
const correctedChecks = new Map<string, Check<object>>(NOUNS.map((noun) => [noun, correctedCheck(noun)]));
correctedChecks.set(
  'studio',
  shape<Checks, string>({ kind: oneOf(['corrected']), ...COMMON, noun: oneOf(['studio']), fields: shape(STUDIO_FIELDS) }, [
    'kind',
    'id',
    'on',
    'noun',
    'fields',
  ]),
);

/** Reads one entry from a backup, another device or a stored page. Anything unknown, missing or out of range is a Problem. */
export function parseEntry(raw: unknown): Entry | Problem {
  if (typeof raw !== 'object' || raw === null) return problem('An entry has to be a record.');
  const { kind, noun } = raw as { kind?: unknown; noun?: unknown };
  const check =
    kind === 'recorded'
      ? recordedChecks.get(noun as string)
      : kind === 'corrected'
        ? correctedChecks.get(noun as string)
        : plainChecks.get(kind as string);
  if (!check) return problem(`There is no entry of the kind ${quoted(kind)}${noun === undefined ? '' : ` for ${quoted(noun)}`}.`);
  const entry = check(raw);
  if (isProblem(entry)) return { ...entry, ...problem(`Entry ${quoted((raw as { id?: unknown }).id)}, ${quoted(kind)}: ${entry.says}`) };
  return withinReason(entry as Entry);
}

/** Rules between fields of one entry. */
function withinReason(entry: Entry): Entry | Problem {
  if (entry.step !== undefined && entry.step >= entry.id) return problem(`Entry ${entry.id} says it belongs to an action after itself.`);
  if (entry.kind === 'withdrawn' && entry.entry >= entry.id)
    return problem(`Entry ${entry.id} takes back an entry that is not older than itself.`);
  if (isInItself(entry)) return problem(`Entry ${entry.id} puts a place inside itself.`);
  return entry;
}

function isInItself(entry: Entry): boolean {
  if (entry.kind === 'moved') return (entry.things as readonly string[]).includes(entry.to);
  if (entry.kind === 'recorded')
    return entry.at === (entry.id as string) || (entry.noun === 'place' && entry.fields.in === (entry.id as string));
  return entry.kind === 'corrected' && entry.noun === 'place' && entry.fields.in === entry.of;
}
