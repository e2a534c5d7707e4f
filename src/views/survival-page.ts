import { sayCount, sayNumber } from '../domain/measure-words.ts';
import { isProblem } from '../domain/problem.ts';
import type { Shelf } from '../domain/shelf.ts';
import { type Curve, Z95 } from '../domain/survival/kaplan-meier.ts';
import type { LifeSum } from '../domain/survival/life-sums.ts';
import { livesByRubber, RUBBER_GROUPS } from '../domain/survival/rubber-lives.ts';
import type { WeibullFit } from '../domain/survival/weibull-fit.ts';
import { ALL, type StudioLife, type SumName } from './life-known.ts';
import type { Fact } from './mould-facts.ts';
import { saidOfLives } from './mould-life.ts';

/** What the moulds of one rubber say about it. */
export interface SurvivalCard {
  readonly name: SumName;
  readonly title: string;
  readonly says: string;
  readonly facts: readonly Fact[];
  /** Why there is no fitted life. */
  readonly noFit?: string;
  readonly curve: Curve;
  /** Shots at five marks from nothing to the end of the curve, with the moulds that came so far. */
  readonly marks: readonly { readonly shots: number; readonly atRisk: number }[];
  readonly table: readonly {
    readonly shots: number;
    readonly atRisk: number;
    readonly ends: number;
    readonly share: string;
    readonly range: string;
  }[];
}

/** Names of the sums this studio has moulds for, all rubbers together last. */
export function survivalNames(shelf: Shelf): readonly SumName[] {
  const groups = new Set(livesByRubber(shelf).map(({ group }) => group));
  const names: SumName[] = RUBBER_GROUPS.filter((group) => groups.has(group));
  return names.length > 1 ? [...names, ALL] : names;
}

export function survivalCards(shelf: Shelf, life: StudioLife): readonly SurvivalCard[] {
  const rubbers = livesByRubber(shelf);
  return [...life].map(([name, { sum }]): SurvivalCard => {
    const lives = name === ALL ? rubbers.flatMap((each) => each.lives) : (rubbers.find(({ group }) => group === name)?.lives ?? []);
    const { curve, fit } = sum;
    const title = name === ALL ? 'All rubbers together' : name === 'not said' ? 'Rubber not said' : name;
    const ends = curve.ends;
    return {
      name,
      title,
      says:
        name === ALL
          ? `${sayCount(curve.moulds, 'mould')}, ${sayNumber(curve.moulds - ends)} still whole`
          : saidOfLives(name, curve.moulds, ends),
      facts: factsOf(sum, name !== ALL),
      ...(name === ALL
        ? { noFit: 'rubbers wear too differently for one; see each by itself.' }
        : isProblem(fit)
          ? { noFit: fit.says }
          : isVague(fit)
            ? { noFit: `${sayCount(ends, 'end')} ${ends === 1 ? 'says' : 'say'} too little yet.` }
            : {}),
      curve,
      marks: marksOf(curve, lives),
      table: curve.steps.map(({ shots, atRisk, ends: at, share, low, high }) => ({
        shots,
        atRisk,
        ends: at,
        share: percent(share),
        range: low === undefined || high === undefined ? '' : `${percent(low)} to ${percent(high)}`,
      })),
    };
  });
}

/** A fitted life known no better than to half its size or double says nothing a caster could use. */
const isVague = ({ scale, scaleError }: WeibullFit) => scaleError > scale / 2;

/** Several rubbers mixed would look as if moulds grew hardier with use, since the weak ones go first: no life is fitted to them together. */
function factsOf({ curve, fit }: LifeSum, isOneRubber: boolean): readonly Fact[] {
  const facts: Fact[] = [{ name: 'Half of them make', says: medianSays(curve) }];
  if (!isOneRubber || isProblem(fit) || isVague(fit)) return facts;
  facts.push({ name: 'The first tenth is gone by', says: `about ${sayNumber(Math.round(fit.tenth))} shots, by the fitted life` });
  facts.push({ name: 'How they go', says: shapeSays(fit) });
  const { scale, scaleError, shape, shapeError } = fit;
  facts.push({
    name: 'Fitted life (Weibull)',
    says: `scale ${sayNumber(Math.round(scale))} ± ${sayNumber(Math.round(scaleError))} shots, shape ${shape.toFixed(2)} ± ${shapeError.toFixed(2)} (standard errors)`,
  });
  return facts;
}

function medianSays({ median, medianLow, medianHigh, longest, ends }: Curve): string {
  if (ends === 0) return `not known: none has ended yet, and the furthest has come to ${sayNumber(longest)} shots`;
  if (median === undefined) return `more than ${sayNumber(longest)} shots: fewer than half have ended`;
  const low = sayNumber(medianLow ?? median);
  const range = medianHigh === undefined ? `${low} or more` : `between ${low} and ${sayNumber(medianHigh)}`;
  return `${sayNumber(median)} shots; the true figure is ${range} with 95 %`;
}

/** By the shape's own 95 % interval, on its log: 1 is accident alone. */
function shapeSays({ shape, shapeError }: WeibullFit): string {
  const width = (Z95 * shapeError) / shape;
  if (shape * Math.exp(-width) > 1) return 'they wear out: the more shots, the likelier the next is the last';
  if (shape * Math.exp(width) < 1) return 'they fail young, and those that last keep lasting';
  return 'wear and accident cannot be told apart yet';
}

const MARKS = 5;

function marksOf({ longest }: Curve, lives: readonly { readonly shots: number }[]): SurvivalCard['marks'] {
  return Array.from({ length: MARKS }, (_, i) => {
    const shots = Math.round((longest * i) / (MARKS - 1));
    return { shots, atRisk: lives.filter((life) => life.shots >= shots).length };
  });
}

function percent(share: number): string {
  return `${Math.round(100 * share)} %`;
}
