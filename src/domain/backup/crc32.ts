/** CRC-32 of ISO 3309 as zip files carry it: reflected polynomial 0xEDB88320. */
const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let crc = byte;
  for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  return crc;
});

/** Takes further bytes into a CRC-32; begin with 0. */
export function crc32(bytes: Uint8Array, before = 0): number {
  let crc = ~before;
  for (let i = 0; i < bytes.length; i++) crc = (crc >>> 8) ^ (TABLE[(crc ^ (bytes[i] as number)) & 0xff] as number);
  return ~crc >>> 0;
}
