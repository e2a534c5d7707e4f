import { daysBetween } from './day.ts';
import { dayInWords, spanInWords } from './day-words.ts';
import { type Flag, flagOn, LOOK_DAYS, type Rules } from './flag.ts';
import { flagOnRejects } from './flag-rejects.ts';
import { expectedLife, type LifeFrom, yearsOld } from './life.ts';
import type { Mould } from './shelf.ts';

/** Share of its life from which a mould is worth watching. Common practice, no source. */
const LIFE_WATCH = 0.8;

/** What a mould's own record calls for; where it stands is judged apart. */
export function mouldFlags(mould: Mould, rules: Rules): readonly Flag[] {
  if (mould.retired) return [];
  const flags: Flag[] = [];
  const add = (flag: Flag | undefined) => {
    if (flag) flags.push(flag);
  };
  add(gradeFlag(mould, rules));
  if (mould.grade === 'failed') return flags;
  add(shotsFlag(mould, rules));
  add(ageFlag(mould, rules));
  add(flagOnRejects(mould, rules));
  add(lookFlag(mould, rules));
  return flags;
}

const seenOn = (mould: Mould) => (mould.gradeOn ? ` on ${dayInWords(mould.gradeOn)}` : '');
const faultsOf = (mould: Mould) => (mould.faults?.length ? mould.faults.join(', ') : '');

/** What was put where it stands as it was recorded has not been moved, although it failed on an earlier day. */
function isMovedSince({ gradeOn, atSince, since, usual }: Mould): boolean {
  return gradeOn !== undefined && atSince !== undefined && atSince > gradeOn && (atSince > since || usual !== undefined);
}

function gradeFlag(mould: Mould, rules: Rules): Flag | undefined {
  const { grade } = mould;
  const faults = faultsOf(mould);
  const named = faults ? `: ${faults}` : '';
  if (grade === 'failed') {
    return isMovedSince(mould)
      ? flagOn(
          mould,
          rules,
          'failed',
          'note',
          `Failed${seenOn(mould)}${named}; moved since.`,
          'Retire it when there is nothing more to learn from it.',
        )
      : flagOn(
          mould,
          rules,
          'failed',
          'act',
          `Failed${seenOn(mould)}${named}, and still in its place.`,
          'Move it out from among the good moulds, or retire it.',
        );
  }
  if (grade === 'worn') {
    return flagOn(mould, rules, 'worn', 'soon', `Graded worn${seenOn(mould)}${named}.`, 'Make a new mould while its master is sound.');
  }
  if (faults)
    return flagOn(mould, rules, 'faults', 'soon', `Faults seen${seenOn(mould)}${named}.`, 'Mend it or look again before a long run.');
  if (grade === 'watch')
    return flagOn(mould, rules, 'worn', 'note', `Graded watch${seenOn(mould)}.`, 'Look at the first waxes of the next run.');
  return undefined;
}

const FROM: Readonly<Record<LifeFrom, string>> = {
  'this mould': 'as set for this mould',
  'the studio': 'the studio’s figure',
  memory: 'a figure from memory',
};

function shotsFlag(mould: Mould, rules: Rules): Flag | undefined {
  const life = expectedLife(mould, rules.studio).shots;
  if (!life || mould.shots < life.value * LIFE_WATCH) return undefined;
  const share = Math.round((mould.shots / life.value) * 100);
  const what = life.from === 'this mould' ? 'it' : mould.rubber;
  const says = `${mould.shots} shots, ${share} % of the ${life.value} expected of ${what} (${FROM[life.from]}).`;
  return mould.shots >= life.value
    ? flagOn(mould, rules, 'old shots', 'act', says, 'Look at it closely, and make a new mould before you rely on it.')
    : flagOn(mould, rules, 'old shots', 'soon', says, 'Plan a new mould while its master is sound.');
}

function ageFlag(mould: Mould, rules: Rules): Flag | undefined {
  const life = expectedLife(mould, rules.studio).years;
  if (!life || !mould.made) return undefined;
  const years = yearsOld(mould.made, rules.today);
  if (years < life.value * LIFE_WATCH) return undefined;
  const says = `The rubber is ${years.toFixed(1)} years old; ${mould.rubber} is expected to last ${life.value} (${FROM[life.from]}).`;
  return years >= life.value
    ? flagOn(mould, rules, 'old rubber', 'soon', says, 'Bend it gently and look for cracks and tackiness.')
    : flagOn(mould, rules, 'old rubber', 'note', says, 'Plan a new mould while its master is sound.');
}

/** Due by the day set at the last look, or by the usual days when it was shot since. */
function lookFlag(mould: Mould, rules: Rules): Flag | undefined {
  const { nextLook, gradeOn } = mould;
  if (nextLook !== undefined) {
    if (nextLook > rules.today) return undefined;
    const late = daysBetween(nextLook, rules.today);
    const says = late === 0 ? 'A look is due today.' : `A look was due on ${dayInWords(nextLook)}, ${spanInWords(late)} ago.`;
    return flagOn(mould, rules, 'look due', 'soon', says, 'Inspect it.');
  }
  const lastRun = mould.runs?.at(-1)?.on;
  const lastLook = gradeOn ?? mould.since;
  const days = rules.studio.lookDays ?? LOOK_DAYS;
  if (lastRun === undefined || lastRun <= lastLook || lastLook > rules.lookBefore) return undefined;
  const ago = spanInWords(daysBetween(lastLook, rules.today));
  const seen = gradeOn ? `Last looked at on ${dayInWords(gradeOn)}, ${ago} ago` : `Never looked at since it was recorded ${ago} ago`;
  return flagOn(
    mould,
    rules,
    'look due',
    'note',
    `${seen}, and shot since; a look is due every ${days === 1 ? 'day' : `${days} days`}.`,
    'Inspect it.',
  );
}
