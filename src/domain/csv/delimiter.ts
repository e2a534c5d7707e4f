/** What parts the cells of a list. Apart from the parser, so that the screen does not load that. */
export const DELIMITERS = [',', ';', '\t'] as const;
export type Delimiter = (typeof DELIMITERS)[number];
