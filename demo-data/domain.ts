// What the scripts here need of the domain, as one entry to bundle.
export { CLOCK_ZERO, clockOf } from '../src/domain/clock.ts';
export { makeDesk } from '../src/domain/desk.ts';
export { foldAll, foldOn } from '../src/domain/fold.ts';
export { traceFrom } from '../src/domain/lineage/trace.ts';
export { parseEntry } from '../src/domain/parse-entry.ts';
export { isProblem } from '../src/domain/problem.ts';
export { EMPTY_SHELF, thingOf } from '../src/domain/shelf.ts';
