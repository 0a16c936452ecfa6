import { Inflate } from "fflate";
import { UnreadableWorkbook } from "../unreadable-workbook";
import { crc32 } from "./crc32";
import { ZIP_LIMITS, type ZipLimits } from "./zip-limits";

/** One entry as the central directory describes it; the bytes stay compressed until asked for. */
export interface ZipEntry {
  readonly name: string;
  readonly method: number;
  readonly crc: number;
  readonly time: number;
  readonly date: number;
  readonly flags: number;
  readonly declaredSize: number;
  readonly compressedSize: number;
  /** where in the file its compressed bytes begin */
  readonly start: number;
  /** asked of the file each time */
  readonly compressed: Uint8Array;
}

/** A file whose bytes are held, or are read when they are asked for. */
export interface FileBytes {
  readonly bytes: Uint8Array;
  /** some of them, where they need not all be held for it */
  part?(start: number, end: number): Uint8Array;
}

/** Unpacks one stream step by step; throws where it is damaged. */
export interface Inflater {
  push(compressed: Uint8Array, isLast: boolean): readonly Uint8Array[];
}

/** A piece of an unpacked entry. */
export interface Unpacked {
  readonly bytes: Uint8Array;
  /** compressed bytes of the entry that were taken for all pieces up to this one */
  readonly packed: number;
  /** of all pieces up to this one, where it is known already */
  readonly checkSum: number | null;
}

/** What a host does faster than we can. */
export interface NativeZip {
  newInflater(): Inflater;
  crc32(bytes: Uint8Array, before: number): number;
  /** The pieces of a large entry as another thread unpacks them, or as `here` does; null where it is not worth one. */
  unpackedApart?(entry: ZipEntry, here: () => Iterable<Unpacked>): Iterable<Unpacked> | null;
}

export interface ZipArchive {
  readonly native: NativeZip | undefined;
  readonly entries: ReadonlyMap<string, ZipEntry>;
  readonly limits: ZipLimits;
}

const END_OF_DIRECTORY = 0x06054b50;
const DIRECTORY_ENTRY = 0x02014b50;
const LOCAL_ENTRY = 0x04034b50;
const ZIP64_END = 0x06064b50;
const ZIP64_LOCATOR = 0x07064b50;
const STORED = 0;
const DEFLATED = 8;
const INPUT_STEP = 32 * 1024;

/** The directory of a zip file, its declared sizes held against the limits. Throws `UnreadableWorkbook`. */
export function readZip(file: FileBytes, limits: ZipLimits = ZIP_LIMITS, native?: NativeZip): ZipArchive {
  const { bytes } = file;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const directory = findDirectory(bytes, view);
  if (directory.count > limits.entries) {
    throw new UnreadableWorkbook(
      `the file lists ${directory.count} parts; at most ${limits.entries} are read`,
    );
  }
  const entries = new Map<string, ZipEntry>();
  let at = directory.offset;
  let total = 0;
  for (let index = 0; index < directory.count; index += 1) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== DIRECTORY_ENTRY) throw damaged();
    const { entry, next } = readEntry(file, bytes, view, at);
    at = next;
    if (entry.name.endsWith("/")) continue;
    if (entries.has(entry.name))
      throw new UnreadableWorkbook(`the part ${entry.name} stands in the file twice`);
    total += entry.declaredSize;
    holdAgainstLimits(entry, entry.declaredSize, limits);
    if (total > limits.total) {
      throw new UnreadableWorkbook(`the file would inflate to over ${mebibytes(limits.total)}: not opened`);
    }
    entries.set(entry.name, entry);
  }
  return { entries, limits, native };
}

/** The inflated bytes of one entry, piece by piece, counted as they come. */
export function* inflateEntry(archive: ZipArchive, entry: ZipEntry): Generator<Uint8Array> {
  const checkSum = archive.native?.crc32 ?? crc32;
  if (entry.method === STORED) {
    const { compressed } = entry;
    if (checkSum(compressed, 0) !== entry.crc) throw changed(entry);
    yield compressed;
    return;
  }
  const here = (): Iterable<Unpacked> => unpackedHere(archive, entry);
  let size = 0;
  let crc = 0;
  for (const piece of archive.native?.unpackedApart?.(entry, here) ?? here()) {
    size += piece.bytes.length;
    crc = piece.checkSum ?? checkSum(piece.bytes, crc);
    holdAgainstLimits(entry, size, archive.limits, piece.packed);
    if (piece.bytes.length > 0) yield piece.bytes;
  }
  if (size !== entry.declaredSize) throw wrongSize(entry, size);
  if (crc !== entry.crc) throw changed(entry);
}

function* unpackedHere(archive: ZipArchive, entry: ZipEntry): Generator<Unpacked> {
  const { compressed } = entry;
  const inflater = (archive.native?.newInflater ?? plainInflater)();
  for (let at = 0; at < compressed.length; at += INPUT_STEP) {
    const end = Math.min(at + INPUT_STEP, compressed.length);
    for (const bytes of inflated(inflater, entry, compressed.subarray(at, end), end === compressed.length))
      yield { bytes, packed: end, checkSum: null };
  }
}

function inflated(
  inflater: Inflater,
  entry: ZipEntry,
  compressed: Uint8Array,
  isLast: boolean,
): readonly Uint8Array[] {
  try {
    return inflater.push(compressed, isLast);
  } catch {
    throw new UnreadableWorkbook(`the part ${entry.name} is damaged: it does not inflate`);
  }
}

/** Works in every host. */
function plainInflater(): Inflater {
  let pieces: Uint8Array[] = [];
  const inflate = new Inflate((piece) => {
    pieces.push(piece);
  });
  return {
    push: (compressed, isLast) => {
      pieces = [];
      inflate.push(compressed, isLast);
      return pieces;
    },
  };
}

function longer({ name }: ZipEntry): UnreadableWorkbook {
  return new UnreadableWorkbook(`the part ${name} is longer than the file says: not opened`);
}

function wrongSize({ name, declaredSize }: ZipEntry, size: number): UnreadableWorkbook {
  return new UnreadableWorkbook(
    `the part ${name} inflates to ${size} bytes, the file says ${declaredSize}: it is damaged`,
  );
}

function changed({ name }: ZipEntry): UnreadableWorkbook {
  return new UnreadableWorkbook(
    `the part ${name} is damaged: its check sum is another; fetch the file again`,
  );
}

/** All inflated bytes of one entry. */
export function inflateWhole(archive: ZipArchive, entry: ZipEntry): Uint8Array {
  const whole = new Uint8Array(entry.declaredSize);
  let at = 0;
  for (const piece of inflateEntry(archive, entry)) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

function holdAgainstLimits(
  entry: ZipEntry,
  size: number,
  limits: ZipLimits,
  packed = entry.compressedSize,
): void {
  if (size > entry.declaredSize) {
    throw longer(entry);
  }
  if (size > limits.part) {
    throw new UnreadableWorkbook(
      `the part ${entry.name} would inflate to over ${mebibytes(limits.part)}: not opened`,
    );
  }
  if (size > limits.ratioFrom && size > limits.ratio * packed) {
    throw new UnreadableWorkbook(
      `the part ${entry.name} is packed more than ${limits.ratio} times over, as no schedule is: not opened`,
    );
  }
}

function readEntry(
  file: FileBytes,
  bytes: Uint8Array,
  view: DataView,
  at: number,
): { entry: ZipEntry; next: number } {
  const flags = view.getUint16(at + 8, true);
  const method = view.getUint16(at + 10, true);
  const nameLength = view.getUint16(at + 28, true);
  const extraLength = view.getUint16(at + 30, true);
  const commentLength = view.getUint16(at + 32, true);
  const nameEnd = at + 46 + nameLength;
  if (nameEnd + extraLength > bytes.length) throw damaged();
  const name = partName(bytes.subarray(at + 46, nameEnd));
  if ((flags & 1) !== 0) {
    throw new UnreadableWorkbook("the file is locked with a zip password: save it without one");
  }
  if (method !== STORED && method !== DEFLATED) {
    throw new UnreadableWorkbook(
      `the part ${name} is packed by a method (${method}) that workbooks do not use`,
    );
  }
  const sizes = readSizes(view, at, nameEnd, extraLength);
  const local = sizes.offset;
  if (local + 30 > bytes.length || view.getUint32(local, true) !== LOCAL_ENTRY) throw damaged();
  const start = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
  if (start + sizes.compressed > bytes.length) throw damaged();
  if (method === STORED && sizes.compressed !== sizes.inflated) throw damaged();
  return {
    entry: {
      name,
      method,
      flags,
      time: view.getUint16(at + 12, true),
      date: view.getUint16(at + 14, true),
      crc: view.getUint32(at + 16, true),
      declaredSize: sizes.inflated,
      compressedSize: sizes.compressed,
      start,
      get compressed() {
        const end = start + sizes.compressed;
        return file.part?.(start, end) ?? file.bytes.subarray(start, end);
      },
    },
    next: nameEnd + extraLength + commentLength,
  };
}

/** Sizes and offset, from the zip64 extra where the short fields are full. */
function readSizes(view: DataView, at: number, extraStart: number, extraLength: number) {
  const sizes = {
    compressed: view.getUint32(at + 20, true),
    inflated: view.getUint32(at + 24, true),
    offset: view.getUint32(at + 42, true),
  };
  for (let extra = extraStart; extra + 4 <= extraStart + extraLength; ) {
    const id = view.getUint16(extra, true);
    const length = view.getUint16(extra + 2, true);
    if (id === 1) {
      let field = extra + 4;
      const end = Math.min(field + length, extraStart + extraLength);
      const long = (short: number): number => {
        if (short !== 0xffffffff) return short;
        if (field + 8 > end) throw damaged();
        const value = Number(view.getBigUint64(field, true));
        field += 8;
        return value;
      };
      sizes.inflated = long(sizes.inflated);
      sizes.compressed = long(sizes.compressed);
      sizes.offset = long(sizes.offset);
    }
    extra += 4 + length;
  }
  return sizes;
}

function findDirectory(bytes: Uint8Array, view: DataView): { count: number; offset: number } {
  const oldest = Math.max(0, bytes.length - 22 - 0xffff);
  for (let at = bytes.length - 22; at >= oldest; at -= 1) {
    if (view.getUint32(at, true) !== END_OF_DIRECTORY) continue;
    const count = view.getUint16(at + 10, true);
    const offset = view.getUint32(at + 16, true);
    if (count !== 0xffff && offset !== 0xffffffff) return { count, offset };
    const locator = at - 20;
    if (locator < 0 || view.getUint32(locator, true) !== ZIP64_LOCATOR) return { count, offset };
    const end = Number(view.getBigUint64(locator + 8, true));
    if (end + 56 > bytes.length || view.getUint32(end, true) !== ZIP64_END) throw damaged();
    return {
      count: Number(view.getBigUint64(end + 32, true)),
      offset: Number(view.getBigUint64(end + 48, true)),
    };
  }
  throw damaged();
}

function partName(bytes: Uint8Array): string {
  return new TextDecoder().decode(bytes).replaceAll("\\", "/").replace(/^\//, "");
}

function damaged(): UnreadableWorkbook {
  return new UnreadableWorkbook("the zip file is cut short or damaged: fetch it again");
}

function mebibytes(bytes: number): string {
  return `${Math.round(bytes / (1024 * 1024)).toLocaleString("en")} MiB`;
}
