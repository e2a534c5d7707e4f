/** What the page may say to the service worker: `go` lets a waiting version take over. */
export interface PageMessage {
  readonly kind: 'go';
}

export const go: PageMessage = { kind: 'go' };

/** Reads a message that could have come from anywhere. */
export function parsePageMessage(data: unknown): PageMessage | undefined {
  return typeof data === 'object' && data !== null && 'kind' in data && data.kind === 'go' ? go : undefined;
}

/** Where the worker lays pictures shared from another app until somebody says what they are of: a cache, and the start of their addresses below the scope. */
export const SHARED_CACHE = 'mouldkeep-shared';
export const SHARED_PATH = 'shared-pictures/';

/**
 * Why the worker did not take what was shared: it is no picture, empty, too large, one too many, had no room, or could not be read; `none`
 * when nothing but words came. The screen's address tells how many of each, and how many were `kept`.
 */
export const REFUSALS = ['kind', 'empty', 'large', 'many', 'room', 'unread', 'none'] as const;
export type Refusal = (typeof REFUSALS)[number];
/** More at once is a slip of the thumb in a gallery. */
export const SHARED_MAX = 20;
export const SHARED_MAX_MB = 60;
