/** Words a camera would write into a photograph about where and by whom it was taken. */
export const SECRET = 'Quay Lane 7, by Ines';

/**
 * The Exif part of a JPEG (CIPA DC-008): how it was held (1 to 8; 6 is turned a quarter to the right, as a camera held upright writes
 * it), and an artist's name.
 */
function exif(orientation: number): Buffer {
  const artist = Buffer.from(`${SECRET}\0`, 'latin1');
  const directory = Buffer.alloc(2 + 2 * 12 + 4);
  directory.writeUInt16LE(2, 0);
  const entry = (at: number, tag: number, type: number, count: number, value: number) => {
    directory.writeUInt16LE(tag, at);
    directory.writeUInt16LE(type, at + 2);
    directory.writeUInt32LE(count, at + 4);
    directory.writeUInt32LE(value, at + 8);
  };
  entry(2, 0x0112, 3, 1, orientation);
  entry(14, 0x013b, 2, artist.length, 8 + directory.length);
  const tiff = Buffer.concat([Buffer.from('II*\0\x08\0\0\0', 'latin1'), directory, artist]);
  const body = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), tiff]);
  const head = Buffer.from([0xff, 0xe1, 0, 0]);
  head.writeUInt16BE(body.length + 2, 2);
  return Buffer.concat([head, body]);
}

/** A JPEG as a camera writes it: what it knows about the picture comes right after the start. */
export function asPhotographed(jpeg: Buffer, orientation = 6): Buffer {
  return Buffer.concat([jpeg.subarray(0, 2), exif(orientation), jpeg.subarray(2)]);
}
