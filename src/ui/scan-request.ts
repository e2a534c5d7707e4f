import { signal } from '@preact/signals';
import type { Thing } from '../domain/shelf.ts';
import { go, to } from './router.ts';

/** What another screen wants scanned. */
export interface ScanRequest {
  /** The scan screen's title, such as “Scan what is to be moved”. */
  readonly purpose: string;
  /** Takes what was scanned. A sentence back keeps the camera on for the next; nothing back ends it and returns to the screen before. */
  readonly onThing: (thing: Thing) => string | undefined;
}

/** Kept until the scan screen is left. */
export const scanRequest = signal<ScanRequest | null>(null);

/** Opens the camera for another screen. What that screen has gathered so far has to outlive it: it is not shown meanwhile. */
export function requestScan(request: ScanRequest): void {
  scanRequest.value = request;
  go(to(['scan'], { for: 'screen' }));
}
