import { Deflate } from "fflate";
import { joined } from "../xml/plain-bytes";
import { crc32 } from "./crc32";
import type { ZipEntry } from "./zip-archive";

/** Packs one stream: raw deflate of the pieces in turn, ended by an empty last piece. */
export interface Deflater {
  push(piece: Uint8Array): readonly Uint8Array[];
  end(): readonly Uint8Array[];
}

/** Where the packed pieces of one part lie until the file is put together. */
export interface PieceStore {
  add(piece: Uint8Array): void;
  /** those that were added, in order, however they are cut */
  pieces(): Iterable<Uint8Array>;
}

/** What a host does of a zip file's writing in a way of its own. */
export interface ZipHost {
  readonly newDeflater?: (() => Deflater) | undefined;
  readonly checkSum?: typeof crc32 | undefined;
  readonly newStore?: (() => PieceStore) | undefined;
}

/** New bytes of a part: whole, or piece by piece so that a large sheet never stands in memory at once. */
export type PartContent = Uint8Array | Iterable<Uint8Array>;

/** A part that was packed. */
export interface Packed {
  readonly crc: number;
  readonly size: number;
  readonly compressed: Iterable<Uint8Array>;
  readonly compressedSize: number;
}

interface Written extends Packed {
  readonly name: Uint8Array;
  readonly method: number;
  readonly time: number;
  readonly date: number;
  readonly flags: number;
}

const UTF8_NAME = 0x0800;
const LEVEL_BITS = 0x0006;
/** 1 January 1980, the zip format's first day: the same input gives the same bytes. */
const FIRST_DAY = (1 << 5) | 1;

/**
 * Builds a zip file entry by entry. `copy` takes an entry over as it lies, without inflating it; `add`
 * packs new content.
 */
export class ZipWriter {
  private readonly written = new Map<string, Written>();

  constructor(private readonly host: ZipHost = {}) {}

  copy(entry: ZipEntry): void {
    this.written.set(entry.name, {
      name: new TextEncoder().encode(entry.name),
      method: entry.method,
      crc: entry.crc,
      time: entry.time,
      date: entry.date,
      flags: (entry.flags & LEVEL_BITS) | UTF8_NAME,
      size: entry.declaredSize,
      compressed: [entry.compressed],
      compressedSize: entry.compressedSize,
    });
  }

  add(name: string, content: PartContent): void {
    this.addPacked(name, packPieces(content instanceof Uint8Array ? [content] : content, this.host));
  }

  /** Takes over what was packed elsewhere. */
  addPacked(name: string, packed: Packed): void {
    this.written.set(name, {
      name: new TextEncoder().encode(name),
      method: 8,
      time: 0,
      date: FIRST_DAY,
      flags: UTF8_NAME,
      ...packed,
    });
  }

  /** The file's bytes, entries named in `order` first and in that order. */
  finish(order: Iterable<string> = []): Uint8Array {
    const pieces = [...this.finishInPieces(order)];
    return joined(
      pieces,
      pieces.reduce((sum, piece) => sum + piece.length, 0),
    );
  }

  /** The same bytes as they lie, not put together: a large file stands in memory once. */
  *finishInPieces(order: Iterable<string> = []): Generator<Uint8Array> {
    const names = new Set([...order, ...this.written.keys()]);
    const parts = [...names].flatMap((name) => this.written.get(name) ?? []);
    const offsets: number[] = [];
    let bodySize = 0;
    for (const part of parts) {
      offsets.push(bodySize);
      yield localHeader(part);
      yield* part.compressed;
      bodySize += 30 + part.name.length + part.compressedSize;
    }
    yield directory(parts, offsets, bodySize);
  }
}

function localHeader(part: Written): Uint8Array {
  const out = new Uint8Array(30 + part.name.length);
  const view = new DataView(out.buffer);
  view.setUint32(0, 0x04034b50, true);
  out.set(part.name, writeFields(view, 4, part) + 2);
  return out;
}

function directory(parts: readonly Written[], offsets: readonly number[], bodySize: number): Uint8Array {
  const directorySize = parts.reduce((sum, part) => sum + 46 + part.name.length, 0);
  const out = new Uint8Array(directorySize + 22);
  const view = new DataView(out.buffer);
  let at = 0;
  parts.forEach((part, index) => {
    view.setUint32(at, 0x02014b50, true);
    view.setUint16(at + 4, 20, true);
    const end = writeFields(view, at + 6, part);
    view.setUint32(end + 12, offsets[index] ?? 0, true);
    out.set(part.name, end + 16);
    at = end + 16 + part.name.length;
  });
  view.setUint32(at, 0x06054b50, true);
  view.setUint16(at + 8, parts.length, true);
  view.setUint16(at + 10, parts.length, true);
  view.setUint32(at + 12, directorySize, true);
  view.setUint32(at + 16, bodySize, true);
  return out;
}

/** The 24 bytes that local and central headers share; gives where they end. */
function writeFields(view: DataView, at: number, part: Written): number {
  view.setUint16(at, 20, true);
  view.setUint16(at + 2, part.flags, true);
  view.setUint16(at + 4, part.method, true);
  view.setUint16(at + 6, part.time, true);
  view.setUint16(at + 8, part.date, true);
  view.setUint32(at + 10, part.crc, true);
  view.setUint32(at + 14, part.compressedSize, true);
  view.setUint32(at + 18, part.size, true);
  view.setUint16(at + 22, part.name.length, true);
  return at + 24;
}

/** Packs a part's bytes; they are gone through once. */
export function packPieces(content: Iterable<Uint8Array>, host: ZipHost): Packed {
  const { newDeflater = plainDeflater, checkSum = crc32, newStore = inMemory } = host;
  const deflater = newDeflater();
  const store = newStore();
  let crc = 0;
  let size = 0;
  let compressedSize = 0;
  const keep = (packed: Iterable<Uint8Array>): void => {
    for (const piece of packed) {
      compressedSize += piece.length;
      store.add(piece);
    }
  };
  for (const piece of content) {
    crc = checkSum(piece, crc);
    size += piece.length;
    keep(deflater.push(piece));
  }
  keep(deflater.end());
  return { crc, size, compressed: store.pieces(), compressedSize };
}

function inMemory(): PieceStore {
  const kept: Uint8Array[] = [];
  return { add: (piece) => void kept.push(piece), pieces: () => kept };
}

/** Works in every host; a host with a faster one of its own may bring it. */
const plainDeflater = (): Deflater => deflater(6);

/** Takes next to no time, and packs nothing. */
export const looseDeflater = (): Deflater => deflater(0);

function deflater(level: 0 | 6): Deflater {
  let packed: Uint8Array[] = [];
  const deflate = new Deflate({ level }, (piece) => {
    if (piece.length > 0) packed.push(piece);
  });
  const taken = (): Uint8Array[] => {
    const pieces = packed;
    packed = [];
    return pieces;
  };
  return {
    push: (piece) => {
      deflate.push(piece);
      return taken();
    },
    end: () => {
      deflate.push(new Uint8Array(0), true);
      return taken();
    },
  };
}
