import type {
  CastingId,
  DesignId,
  FlaskId,
  InjectedWaxId,
  InjectorId,
  MasterId,
  MouldId,
  PeriodId,
  PlaceId,
  WantId,
  WaxId,
} from './brand.ts';

/** Every kind of thing the studio records, in the order screens list them. */
export const NOUNS = [
  'place',
  'period',
  'design',
  'master',
  'mould',
  'wax',
  'injector',
  'injectedWax',
  'casting',
  'flask',
  'want',
] as const;
export type Noun = (typeof NOUNS)[number];

export interface IdOf {
  place: PlaceId;
  period: PeriodId;
  design: DesignId;
  master: MasterId;
  mould: MouldId;
  wax: WaxId;
  injector: InjectorId;
  injectedWax: InjectedWaxId;
  casting: CastingId;
  flask: FlaskId;
  want: WantId;
}

/** First letter of a label code. None of them is O, I or L, which a typed code reads as digits, nor a character drawn twice. */
export const CODE_LETTER: Readonly<Record<Noun, string>> = {
  place: 'P',
  period: 'E',
  design: 'D',
  master: 'R',
  mould: 'M',
  wax: 'W',
  injector: 'J',
  injectedWax: 'N',
  casting: 'C',
  flask: 'F',
  want: 'T',
};
