import { Zip, ZipDeflate, ZipPassThrough } from 'fflate';
import type { Sha256 } from '../domain/brand.ts';
import type { BackupTarget } from './backup-target.ts';

const hexOf = (digest: ArrayBuffer) => Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('') as Sha256;

export async function sha256Of(bytes: BufferSource): Promise<Sha256> {
  return hexOf(await crypto.subtle.digest('SHA-256', bytes));
}

export interface PackedFile {
  add(piece: Uint8Array<ArrayBuffer>): Promise<void>;
  /** Gives the bytes and the SHA-256 of all pieces together. */
  end(): Promise<{ readonly bytes: number; readonly sha256: Sha256 }>;
}

/** A zip written to a target as it grows; no more of it is in memory than the file just added. */
export class BackupZip {
  /** Bytes written so far. */
  bytes = 0;
  private readonly zip: Zip;
  private readonly target: BackupTarget;
  private waiting: Uint8Array<ArrayBuffer>[] = [];
  private failed: Error | undefined;

  constructor(target: BackupTarget) {
    this.target = target;
    this.zip = new Zip((error, chunk) => {
      if (error) this.failed = error;
      else this.waiting.push(chunk as Uint8Array<ArrayBuffer>);
    });
  }

  /** A file stored as it is: pictures are packed already. */
  async store(name: string, bytes: ArrayBuffer): Promise<void> {
    const file = new ZipPassThrough(name);
    this.zip.add(file);
    file.push(new Uint8Array(bytes), true);
    await this.flush();
  }

  /** A file that is packed while it comes in, piece by piece, so that the page can breathe in between. No other may be begun before its end. */
  begin(name: string): PackedFile {
    const file = new ZipDeflate(name, { level: 6 });
    this.zip.add(file);
    const pieces: Uint8Array<ArrayBuffer>[] = [];
    return {
      add: async (piece) => {
        pieces.push(piece);
        file.push(piece);
        await this.flush();
      },
      end: async () => {
        file.push(new Uint8Array(), true);
        await this.flush();
        const whole = new Blob([...pieces]);
        return { bytes: whole.size, sha256: await sha256Of(await whole.arrayBuffer()) };
      },
    };
  }

  async end(): Promise<void> {
    this.zip.end();
    await this.flush();
  }

  private async flush(): Promise<void> {
    const chunks = this.waiting;
    this.waiting = [];
    if (this.failed) throw this.failed;
    for (const chunk of chunks) {
      this.bytes += chunk.length;
      await this.target.write(chunk);
    }
  }
}
