/** How far a mould can be trusted, best first. */
export const GRADES = ['sound', 'watch', 'worn', 'failed'] as const;
export type Grade = (typeof GRADES)[number];
