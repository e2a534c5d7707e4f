/** Where a backup is written, piece by piece. */
export interface BackupTarget {
  write(chunk: Uint8Array<ArrayBuffer>): Promise<void>;
  /** Ends it, and gives what was written, to be looked at and handed over. */
  finish(): Promise<File>;
  /** Throws away what was written so far. */
  drop(): Promise<void>;
  /** Whether it already lies where the person wanted it. */
  readonly isPlaced: boolean;
}

/** Bytes gathered before they become a Blob, which the browser may then keep on its disk instead of in memory. */
const GATHERED = 4_000_000;
const TYPE = 'application/zip';

function inBlobs(name: string): BackupTarget {
  const blobs: Blob[] = [];
  let chunks: Uint8Array<ArrayBuffer>[] = [];
  let bytes = 0;
  const settle = () => {
    blobs.push(new Blob(chunks));
    chunks = [];
    bytes = 0;
  };
  return {
    isPlaced: false,
    async write(chunk) {
      // Zip streams hand out views of buffers that they use again.
      chunks.push(chunk.slice());
      bytes += chunk.length;
      if (bytes >= GATHERED) settle();
    },
    async finish() {
      settle();
      return new File(blobs, name, { type: TYPE });
    },
    async drop() {
      blobs.length = 0;
      chunks = [];
    },
  };
}

interface Picker {
  showSaveFilePicker?(options: {
    suggestedName: string;
    types: readonly { description: string; accept: Record<string, readonly string[]> }[];
  }): Promise<FileSystemFileHandle>;
}

/**
 * Where the person wants the backup: a file chosen before it is made, where the browser lets one write straight into it, else the browser's
 * own keeping, to be handed over once it is whole. Undefined when the person closed the choice. Has to be asked for right after a tap.
 */
export async function chooseTarget(name: string): Promise<BackupTarget | undefined> {
  const picker = window as unknown as Picker;
  if (!picker.showSaveFilePicker) return inBlobs(name);
  let handle: FileSystemFileHandle;
  try {
    handle = await picker.showSaveFilePicker({
      suggestedName: name,
      types: [{ description: 'Mouldkeep backup', accept: { [TYPE]: ['.zip'] } }],
    });
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return undefined;
    return inBlobs(name);
  }
  const writing = await handle.createWritable();
  return {
    isPlaced: true,
    write: (chunk) => writing.write(chunk),
    async finish() {
      await writing.close();
      return handle.getFile();
    },
    drop: () => writing.abort(),
  };
}
