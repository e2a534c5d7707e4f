import type { Day, WaxId } from '../domain/brand.ts';
import { dayInWords } from '../domain/day-words.ts';
import { expectedLife, type LifeFrom, yearsOld } from '../domain/life.ts';
import { sayCount, sayMass, sayNumber, sayPressure, sayTemperature } from '../domain/measure-words.ts';
import type { Injection } from '../domain/mould.ts';
import { wentWell } from '../domain/run.ts';
import type { Mould, Shelf } from '../domain/shelf.ts';
import { titleOf } from '../domain/title.ts';
import type { Units } from '../domain/units.ts';

/** A figure and what it is a figure of. */
export interface Fact {
  readonly name: string;
  readonly says: string;
}

const LIFE_FROM: Readonly<Record<LifeFrom, string>> = {
  'this mould': 'as set for this mould',
  'the studio': 'the studio’s figure for this rubber',
  memory: 'a rule of thumb for this rubber; set your own in Settings',
};

/** What it has done so far. */
export function countFacts(shelf: Shelf, mould: Mould): readonly Fact[] {
  const made = mould.good + mould.rejects;
  const facts: Fact[] = [{ name: 'Shots', says: sayNumber(mould.shots) }];
  const share =
    made > 0
      ? `${sayNumber(mould.rejects)} of ${sayNumber(made)} waxes (${Math.round((100 * mould.rejects) / made)} %)`
      : mould.shots > 0
        ? 'not known'
        : 'no waxes yet';
  const worst = Object.entries(mould.byFault ?? {}).sort((a, b) => b[1] - a[1])[0];
  facts.push({ name: 'Rejects', says: worst ? `${share}, most often ${worst[0]}` : share });
  const life = expectedLife(mould, shelf.studio).shots;
  if (life) {
    const used = `${Math.round((100 * mould.shots) / life.value)} % of about ${sayNumber(life.value)} shots`;
    facts.push({ name: 'Life used', says: `${used} (${LIFE_FROM[life.from]})` });
  }
  if (mould.sound || mould.scrap)
    facts.push({ name: 'Castings', says: `${sayNumber(mould.sound ?? 0)} sound, ${sayNumber(mould.scrap ?? 0)} scrap` });
  return facts;
}

/** What it is made of and how old it is. */
export function makingFacts(mould: Mould, today: Day): readonly Fact[] {
  const facts: Fact[] = [];
  if (mould.rubber) facts.push({ name: 'Rubber', says: mould.rubber });
  if (mould.made) {
    const years = yearsOld(mould.made, today);
    const age = years < 1 ? sayCount(Math.max(0, Math.floor(years * 12)), 'month') : sayCount(Math.floor(years), 'year');
    facts.push({ name: 'Made', says: `${dayInWords(mould.made)}, ${age} old` });
  }
  if (mould.cavities && mould.cavities > 1) facts.push({ name: 'Cavities', says: sayNumber(mould.cavities) });
  return facts;
}

export interface Settings {
  readonly wax: WaxId | undefined;
  readonly injection: Injection;
  readonly from: string;
}

/** The mould's own settings; without them those of its last run with hardly a reject; without one, of its last run. */
export function settingsThatWork(mould: Mould): Settings | undefined {
  if (mould.injection || mould.wax) return { wax: mould.wax, injection: mould.injection ?? {}, from: 'As set for this mould' };
  const run = mould.runs?.findLast(wentWell) ?? mould.runs?.at(-1);
  if (!run) return undefined;
  const { waxC, pressureKpa, holdS } = run;
  const injection = Object.fromEntries(
    Object.entries({ waxC, pressureKpa, holdS }).filter(([, value]) => value !== undefined),
  ) as Injection;
  return {
    wax: run.wax,
    injection,
    from: `From the run of ${dayInWords(run.on)}: ${sayCount(run.good, 'good wax', 'good waxes')}, ${sayCount(run.rejects, 'reject')}`,
  };
}

/** Wax and injection settings, in the studio's units. */
export function injectionFacts(shelf: Shelf, wax: WaxId | undefined, injection: Injection, units: Units, mould: Mould): readonly Fact[] {
  const facts: Fact[] = [];
  const known = wax ? shelf.things.wax.get(wax) : undefined;
  if (known) facts.push({ name: 'Wax', says: titleOf(shelf, known) });
  if (injection.waxC !== undefined) facts.push({ name: 'Wax temperature', says: sayTemperature(injection.waxC, units) });
  if (injection.pressureKpa !== undefined) facts.push({ name: 'Pressure', says: sayPressure(injection.pressureKpa, units) });
  if (injection.holdS !== undefined) facts.push({ name: 'Hold', says: `${sayNumber(injection.holdS, 1)} s` });
  if (mould.shotGrams !== undefined) facts.push({ name: 'Wax in a shot', says: sayMass(mould.shotGrams, units) });
  return facts;
}
