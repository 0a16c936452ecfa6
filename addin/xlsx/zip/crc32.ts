/** Eight tables: eight bytes a step instead of one. */
const CRC_TABLES = (() => {
  const tables = Array.from({ length: 8 }, () => new Int32Array(256));
  for (let n = 0; n < 256; n += 1) {
    let value = n;
    for (let bit = 0; bit < 8; bit += 1) value = (value & 1) !== 0 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
    tables[0]![n] = value;
  }
  for (let n = 0; n < 256; n += 1) {
    for (let k = 1; k < 8; k += 1) {
      const before = tables[k - 1]![n]!;
      tables[k]![n] = (before >>> 8) ^ tables[0]![before & 255]!;
    }
  }
  return tables as [
    Int32Array,
    Int32Array,
    Int32Array,
    Int32Array,
    Int32Array,
    Int32Array,
    Int32Array,
    Int32Array,
  ];
})();

/** The check sum of a zip entry (CRC-32 of ISO 3309), continued from that of the bytes before; 0 begins. */
export function crc32(bytes: Uint8Array, before: number): number {
  const [t0, t1, t2, t3, t4, t5, t6, t7] = CRC_TABLES;
  let crc = ~before;
  let at = 0;
  for (const end = bytes.length - 8; at <= end; at += 8) {
    const low = crc ^ (bytes[at]! | (bytes[at + 1]! << 8) | (bytes[at + 2]! << 16) | (bytes[at + 3]! << 24));
    crc =
      t7[low & 255]! ^
      t6[(low >>> 8) & 255]! ^
      t5[(low >>> 16) & 255]! ^
      t4[low >>> 24]! ^
      t3[bytes[at + 4]!]! ^
      t2[bytes[at + 5]!]! ^
      t1[bytes[at + 6]!]! ^
      t0[bytes[at + 7]!]!;
  }
  for (; at < bytes.length; at += 1) crc = (crc >>> 8) ^ t0[(crc ^ bytes[at]!) & 255]!;
  return ~crc >>> 0;
}
