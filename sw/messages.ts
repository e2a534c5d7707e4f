/** What the page may say to the service worker: `go` lets a waiting version take over. */
export interface PageMessage {
  readonly kind: 'go';
}

export const go: PageMessage = { kind: 'go' };

/** Reads a message that could have come from anywhere. */
export function parsePageMessage(data: unknown): PageMessage | undefined {
  return typeof data === 'object' && data !== null && 'kind' in data && data.kind === 'go' ? go : undefined;
}
