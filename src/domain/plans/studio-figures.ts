import type { Desk } from '../desk.ts';
import type { Entry } from '../entry.ts';
import { LOOK_DAYS } from '../flag.ts';
import { formProblem } from '../form-problem.ts';
import { linkStart } from '../label-qr.ts';
import { DEFAULT_LIFE } from '../life.ts';
import { RUBBERS, type Rubber } from '../mould.ts';
import { isProblem, type Problem } from '../problem.ts';
import { hemisphereOf } from '../room.ts';
import type { Shelf } from '../shelf.ts';
import { type Hemisphere, STUDIO_FIELDS, type StudioFields } from '../studio.ts';
import { allWritten } from './written.ts';

/** How long a rubber lasts here; what is left out goes by the figure from memory. */
interface OwnLife {
  readonly shots?: number | undefined;
  readonly years?: number | undefined;
}

export interface StudioFigures {
  readonly name?: string | undefined;
  readonly hemisphere?: Hemisphere | undefined;
  /** Days between looks; `null` goes back to the usual ones. */
  readonly lookDays?: number | null | undefined;
  /** Where this app lies on the web, for labels that are links. */
  readonly labelAddress?: string | undefined;
  readonly usesLinks?: boolean | undefined;
  /** Rubbers left out stay as they are. */
  readonly life?: { readonly [R in Rubber]?: OwnLife } | undefined;
}

/** The studio's own name and figures. What is wrong is told beside `name`, `lookDays`, or “RUBBER shots” and “RUBBER years”. Only what differs is written. */
export function planStudioFigures(shelf: Shelf, desk: Desk, command: StudioFigures): readonly Entry[] | Problem {
  const { studio } = shelf;
  const wrong: Record<string, string> = {};
  const fields: { -readonly [F in keyof StudioFields]?: unknown } = {};
  const { name, hemisphere, life = {} } = command;

  if (name !== undefined && name.trim() !== (studio.name ?? '')) {
    const read = STUDIO_FIELDS.name(name);
    if (name.trim() === '') wrong['name'] = 'The studio has a name already: type another instead of none.';
    else if (isProblem(read)) wrong['name'] = read.says;
    else fields.name = read;
  }
  if (hemisphere !== undefined && hemisphere !== hemisphereOf(studio)) fields.hemisphere = hemisphere;
  if (command.lookDays !== undefined) {
    const days = command.lookDays ?? LOOK_DAYS;
    if (isProblem(STUDIO_FIELDS.lookDays(days))) wrong['lookDays'] = 'Days between looks: a whole number from 1 to 3650.';
    else if (days !== (studio.lookDays ?? LOOK_DAYS)) fields.lookDays = days;
  }
  if (command.labelAddress !== undefined && command.labelAddress.trim() !== (studio.labelAddress ?? '')) {
    const address = command.labelAddress.trim();
    const start = linkStart(address);
    if (address === '') wrong['labelAddress'] = 'Type the address, or choose the bare code.';
    else if (isProblem(start))
      wrong['labelAddress'] = 'That is not an address a link can start with. It looks like https://example.org/shelves/.';
    else if (!start.startsWith('https:'))
      wrong['labelAddress'] = 'The address has to begin with https: a phone’s camera and its storage work on nothing less.';
    else if (isProblem(STUDIO_FIELDS.labelAddress(address))) wrong['labelAddress'] = 'That address is too long: 200 characters fit.';
    else fields.labelAddress = address;
  }
  if (command.usesLinks !== undefined && command.usesLinks !== (studio.usesLinks ?? false)) fields.usesLinks = command.usesLinks;
  const changed: { [R in Rubber]?: OwnLife } = {};
  for (const rubber of RUBBERS) {
    const own = life[rubber];
    if (!own) continue;
    const asked = ownOf(rubber, own, studio);
    for (const figure of ['shots', 'years'] as const) {
      const value = asked[figure];
      if (value !== undefined && isProblem(STUDIO_FIELDS.life({ [rubber]: { [figure]: value } })))
        wrong[`${rubber} ${figure}`] = `${rubber}: ${RANGE[figure]}`;
    }
    const now = studio.life?.[rubber];
    if (asked.shots !== now?.shots || asked.years !== now?.years) changed[rubber] = asked;
  }
  if (Object.keys(wrong).length > 0) return formProblem(wrong);
  if (Object.keys(changed).length > 0) fields.life = changed;
  if (Object.keys(fields).length === 0) return [];
  return allWritten([{ ...desk.entry(), kind: 'corrected', noun: 'studio', fields }]);
}

const RANGE = { shots: 'shots are a whole number from 1 to 1 000 000.', years: 'years are a number from 0.1 to 200.' } as const;

/** The default typed in again where the studio had no figure is still the default. */
function ownOf(rubber: Rubber, { shots, years }: OwnLife, studio: StudioFields): OwnLife {
  const now = studio.life?.[rubber];
  const usual = DEFAULT_LIFE[rubber];
  return {
    ...(shots === undefined || (now?.shots === undefined && shots === usual.shots) ? {} : { shots }),
    ...(years === undefined || (now?.years === undefined && years === usual.years) ? {} : { years }),
  };
}
