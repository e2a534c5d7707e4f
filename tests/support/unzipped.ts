import { crc32, inflateRawSync } from 'node:zlib';

/** The files of a zip by another reading of the format than the app's: by its directory, unpacked and checked by zlib. */
export function unzipped(zip: Uint8Array): Map<string, Buffer> {
  const bytes = Buffer.from(zip);
  const end = bytes.lastIndexOf(Buffer.from('PK\x05\x06', 'latin1'));
  const files = new Map<string, Buffer>();
  let at = bytes.readUInt32LE(end + 16);
  for (let left = bytes.readUInt16LE(end + 10); left > 0; left--) {
    const [method, crc, packed] = [bytes.readUInt16LE(at + 10), bytes.readUInt32LE(at + 16), bytes.readUInt32LE(at + 20)];
    const [name, extra, comment] = [bytes.readUInt16LE(at + 28), bytes.readUInt16LE(at + 30), bytes.readUInt16LE(at + 32)];
    const local = bytes.readUInt32LE(at + 42);
    const from = local + 30 + bytes.readUInt16LE(local + 26) + bytes.readUInt16LE(local + 28);
    const data = bytes.subarray(from, from + packed);
    const whole = method === 8 ? inflateRawSync(data) : data;
    if (whole.length !== bytes.readUInt32LE(at + 24) || crc32(whole) !== crc) throw new Error('zlib finds another size or CRC');
    files.set(bytes.toString('utf8', at + 46, at + 46 + name), whole);
    at += 46 + name + extra + comment;
  }
  return files;
}
