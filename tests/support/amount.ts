/** Set for `npm run nightly`: many more draws of everything that chance decides. */
const isNightly = Boolean(process.env.MOULDKEEP_NIGHTLY);

/** Random inputs over each parser. */
export const DRAWS = isNightly ? 100_000 : 2_000;
/** For one that takes a hundredth of a second for each. */
export const SLOW_DRAWS = isNightly ? DRAWS : DRAWS / 2;
/** How often the browser is killed. */
export const KILLS = isNightly ? 200 : 20;
/** How long one test of such may take. */
export const LONG_MS = isNightly ? 3_600_000 : 900_000;
/** Another one each time, so that each run looks somewhere else; MOULDKEEP_SEED takes one that failed again. */
export const SEED = Number(process.env.MOULDKEEP_SEED ?? Date.now() % 1_000_000_007);
