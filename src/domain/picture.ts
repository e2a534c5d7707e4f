import type { Sha256 } from './brand.ts';

/** A picture ready to be kept, with its thumbnail. Its name is the SHA-256 of its bytes. */
export interface Picture {
  readonly sha: Sha256;
  readonly type: string;
  readonly bytes: ArrayBuffer;
  readonly thumb: { readonly type: string; readonly bytes: ArrayBuffer };
}
