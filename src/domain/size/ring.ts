import { parseTypedNumber } from '../typed-number.ts';

/** A ring's size in every system, told from its inside circumference (ISO 8653:2016: the size is the circumference in mm). */
export interface RingSize {
  readonly circumferenceMm: number;
  readonly diameterMm: number;
  /** Nearest whole millimetre. */
  readonly iso: string;
  /** US and Canada, nearest quarter; undefined below 0. */
  readonly us?: string;
  /** Letter, nearest half; undefined below A. */
  readonly uk?: string;
  /** Nearest whole size; undefined below 1. */
  readonly japan?: string;
}

export const RING_SYSTEMS = ['ISO', 'US', 'UK', 'Japan'] as const;
export type RingSystem = (typeof RING_SYSTEMS)[number];

/** US and Canada: d = 0.458 in + 0.032 in × n, which is 11.63 mm + 0.8128 mm × n; no body keeps a standard. */
const US_START_MM = 11.63;
const US_STEP_MM = 0.8128;
/** UK letters (BS 6820): C = 36.25 mm + 1.25 mm × k, A = 1. */
const UK_START_MM = 36.25;
const UK_STEP_MM = 1.25;
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** How far printed charts lie apart, mm of circumference. */
export const CHARTS_DISAGREE_MM = 0.5;
export const RING_CAUTION =
  'Printed charts disagree by half a millimetre. Trust the millimetres; the letters and numbers are names for them.';

export const usIndex = (diameterMm: number) => (diameterMm - US_START_MM) / US_STEP_MM;
export const usDiameter = (size: number) => US_START_MM + US_STEP_MM * size;
export const ukIndex = (circumferenceMm: number) => (circumferenceMm - UK_START_MM) / UK_STEP_MM;
export const ukCircumference = (index: number) => UK_START_MM + UK_STEP_MM * index;
/** Japan (JIS S 4700): d = (n + 38) ÷ 3 mm. */
export const japanIndex = (diameterMm: number) => 3 * diameterMm - 38;
export const japanDiameter = (size: number) => (size + 38) / 3;

/** Inside circumferences of rings for fingers, from a small child's to the largest hand's, mm. Common practice, no source. */
export const SMALLEST_RING_MM = 30;
export const LARGEST_RING_MM = 100;
export const isRingSize = (circumferenceMm: number) => circumferenceMm >= SMALLEST_RING_MM && circumferenceMm <= LARGEST_RING_MM;

export function ringFromCircumference(circumferenceMm: number): RingSize {
  const diameterMm = circumferenceMm / Math.PI;
  const uk = ukLetter(ukIndex(circumferenceMm));
  const us = Math.round(usIndex(diameterMm) * 4) / 4;
  const japan = Math.round(japanIndex(diameterMm));
  return {
    circumferenceMm,
    diameterMm,
    iso: String(Math.round(circumferenceMm)),
    ...(us >= 0 ? { us: quarters(us) } : {}),
    ...(uk ? { uk } : {}),
    ...(japan >= 1 ? { japan: String(japan) } : {}),
  };
}

export function ringFromDiameter(diameterMm: number): RingSize {
  return ringFromCircumference(diameterMm * Math.PI);
}

const PART = { 0: '', 0.25: '¼', 0.5: '½', 0.75: '¾' } as const;

function quarters(value: number): string {
  const whole = Math.floor(value);
  const part = PART[(value - whole) as keyof typeof PART];
  return whole === 0 && part !== '' ? part : `${whole}${part}`;
}

/** The nearest half letter; beyond Z they go on as Z+1, Z+2. */
export function ukLetter(index: number): string | undefined {
  const halves = Math.round(index * 2) / 2;
  const whole = Math.floor(halves);
  if (whole < 1) return undefined;
  const half = halves > whole ? '½' : '';
  return whole <= 26 ? `${LETTERS[whole - 1]}${half}` : `Z+${whole - 26}${half}`;
}

function ukIndexOf(typed: string): number | undefined {
  const match = /^([A-Z])(?:\s*\+\s*(\d{1,2}))?\s*(½|1\/2|\.5)?$/.exec(typed);
  if (!match) return undefined;
  const [, letter = '', beyond, half] = match;
  if (beyond && letter !== 'Z') return undefined;
  return LETTERS.indexOf(letter) + 1 + Number(beyond ?? 0) + (half ? 0.5 : 0);
}

function numberOf(typed: string): number | undefined {
  const part = /^(\d*)\s*(¼|½|¾|1\/4|1\/2|3\/4)$/.exec(typed);
  if (part) return Number(part[1] ?? 0) + { '¼': 0.25, '1/4': 0.25, '½': 0.5, '1/2': 0.5, '¾': 0.75, '3/4': 0.75 }[part[2] as '¼'];
  const read = parseTypedNumber(typed);
  return typeof read === 'number' ? read : undefined;
}

const NAMED = /^(ISO|EU|US|UK|JAPAN|JP|JIS)\s*(.+)$/;

/** Whether something typed begins as the name of a ring's size does, be there such a size or not. */
export function isRingName(typed: string): boolean {
  return NAMED.test(typed.trim().toUpperCase());
}

/**
 * The ring that a size's label names, such as “US 7½”, “ISO 54”, “UK N½” or “Japan 14”. Undefined for anything else, and for sizes of no finger: a bare
 * number says too little.
 */
export function parseRingLabel(label: string): RingSize | undefined {
  const circumferenceMm = circumferenceOf(label);
  return circumferenceMm !== undefined && isRingSize(circumferenceMm) ? ringFromCircumference(circumferenceMm) : undefined;
}

function circumferenceOf(label: string): number | undefined {
  const [, system = '', rest = ''] = NAMED.exec(label.trim().toUpperCase()) ?? [];
  if (system === '') return undefined;
  if (system === 'UK') {
    const index = ukIndexOf(rest.trim());
    return index === undefined ? undefined : ukCircumference(index);
  }
  const size = numberOf(rest.trim());
  if (size === undefined || size < 0) return undefined;
  if (system === 'ISO' || system === 'EU') return size;
  return (system === 'US' ? usDiameter(size) : japanDiameter(size)) * Math.PI;
}
