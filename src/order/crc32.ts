/**
 * CRC-32 as in ISO-HDLC, gzip and PNG (reflected polynomial EDB88320).
 * Check value: the ASCII digits 123456789 give CBF43926.
 */
export function crc32(bytes: Uint8Array): number {
  let crc = 0xffff_ffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit += 1) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb8_8320 : 0);
  }
  return (crc ^ 0xffff_ffff) >>> 0;
}
