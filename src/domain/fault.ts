/** What can be wrong, in the trade's terms (trade-facts 7; the choice of list is common practice, no source). */
export const MOULD_FAULTS = [
  'torn gate',
  'torn cavity',
  'torn keys',
  'cut wrong',
  'curled',
  'flawed skin',
  'flash',
  'shifted halves',
  'bubbles in rubber',
  'undercured',
  'tacky',
  'lost detail',
  'brittle',
  'contaminated',
  'sticking',
] as const;
export type MouldFault = (typeof MOULD_FAULTS)[number];

/** Those of them that a master can have too; whatever else befell it is for words. Common practice, no source. */
export const MASTER_FAULTS = ['lost detail', 'brittle', 'contaminated'] as const satisfies readonly MouldFault[];

/** What can be wrong with a wax as it comes out of the mould. */
export const WAX_FAULTS = [
  'flash',
  'short fill',
  'bubbles',
  'torn gate',
  'sticking',
  'sink',
  'broken',
  'bent',
  'shifted halves',
  'milky skin',
  'lost detail',
] as const;
export type WaxFault = (typeof WAX_FAULTS)[number];

export const CASTING_FAULTS = [
  'porosity',
  'short fill',
  'fins',
  'rough skin',
  'inclusion',
  'cold shut',
  'sink',
  'cracked',
  'bent',
  'lost detail',
] as const;
export type CastingFault = (typeof CASTING_FAULTS)[number];
