import * as zlib from "node:zlib";
import { InflateRaw, type ZlibOptions } from "minizlib";
import { crc32 as plainCrc32 } from "../xlsx/zip/crc32";
import type { Inflater, NativeZip } from "../xlsx/zip/zip-archive";
import { type FileThere, unpackedApart } from "./unpacking-thread";

/** Bytes of a piece that comes out. */
const OUTPUT_STEP = 256 * 1024;

/** Node's own inflate, and its check sum where it has one (from 20.15 and 22.2 on). */
export const nativeZip: NativeZip = {
  newInflater: nativeInflater,
  crc32: (zlib as { crc32?: NativeZip["crc32"] }).crc32 ?? plainCrc32,
};

/** The same, and for the large parts of a file that can be read again a thread that unpacks them. */
export function nativeZipOf(file: FileThere): NativeZip {
  return {
    ...nativeZip,
    unpackedApart: (entry, here) =>
      entry.compressedSize < WORTH_A_THREAD ? null : unpackedApart(file, entry, here),
  };
}

/** Bytes of a packed part from which a second thread is worth its start and its memory. */
const WORTH_A_THREAD = 16 * 1024 * 1024;

/** Node has no stream that works at once; this one does. */
function nativeInflater(): Inflater {
  let pieces: Uint8Array[] = [];
  let failure: Error | null = null;
  const inflate = new InflateRaw({ chunkSize: OUTPUT_STEP } as ZlibOptions);
  inflate.on("data", (piece) => pieces.push(piece));
  inflate.on("error", (error) => {
    failure = error as Error;
  });
  return {
    push: (compressed, isLast) => {
      pieces = [];
      inflate.write(compressed as Buffer);
      if (isLast && failure === null) inflate.end();
      if (failure !== null) throw failure;
      return pieces;
    },
  };
}
