declare const brand: unique symbol;
/** A type that differs only in name, so that a mould's id is never handed over where a wax's is meant. */
export type Brand<T, B extends string> = T & { readonly [brand]: B };

export type EntryId = Brand<string, 'EntryId'>;
/** Calendar day in the studio, `YYYY-MM-DD`. */
export type Day = Brand<string, 'Day'>;
/** Lower-case hex SHA-256 of a picture's bytes. */
export type Sha256 = Brand<string, 'Sha256'>;
/** Label code: kind letter, six Crockford characters, one ISO 7064 MOD 37-2 check character. */
export type Code = Brand<string, 'Code'>;

export type PlaceId = Brand<string, 'PlaceId'>;
export type PeriodId = Brand<string, 'PeriodId'>;
export type DesignId = Brand<string, 'DesignId'>;
export type MasterId = Brand<string, 'MasterId'>;
export type MouldId = Brand<string, 'MouldId'>;
export type WaxId = Brand<string, 'WaxId'>;
export type InjectorId = Brand<string, 'InjectorId'>;
export type InjectedWaxId = Brand<string, 'InjectedWaxId'>;
export type CastingId = Brand<string, 'CastingId'>;
export type FlaskId = Brand<string, 'FlaskId'>;
export type WantId = Brand<string, 'WantId'>;
export type ThingId =
  | PlaceId
  | PeriodId
  | DesignId
  | MasterId
  | MouldId
  | WaxId
  | InjectorId
  | InjectedWaxId
  | CastingId
  | FlaskId
  | WantId;

export type Grams = Brand<number, 'Grams'>;
export type Millimetres = Brand<number, 'Millimetres'>;
export type Celsius = Brand<number, 'Celsius'>;
export type Kilopascals = Brand<number, 'Kilopascals'>;
/** Astronomical year: 1 BC is 0, 600 BC is −599. */
export type Year = Brand<number, 'Year'>;
