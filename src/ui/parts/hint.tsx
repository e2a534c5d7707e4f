import { lazy } from './lazy.tsx';

/** The next step of the first use, with the second load: a studio that knows its way never fetches it. */
export const Hint = lazy(async () => (await import('./first-hint.tsx')).FirstHint, null);
