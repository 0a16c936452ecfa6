/** What a workbook may inflate to. Sizes that a file declares are not believed: bytes are counted as well. */
export interface ZipLimits {
  readonly entries: number;
  /** bytes of one part */
  readonly part: number;
  /** bytes of all parts together */
  readonly total: number;
  /** inflated bytes for each compressed byte, asked only of parts above `ratioFrom` */
  readonly ratio: number;
  readonly ratioFrom: number;
}

const MIB = 1024 * 1024;

/**
 * A million rows of twenty columns inflate to about 800 MiB at a ratio of 8 to 20; the densest that
 * deflate can pack is about 1,030.
 */
export const ZIP_LIMITS: ZipLimits = {
  entries: 10_000,
  part: 1024 * MIB,
  total: 1280 * MIB,
  ratio: 250,
  ratioFrom: 16 * MIB,
};
