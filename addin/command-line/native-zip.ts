import * as zlib from "node:zlib";
import { InflateRaw, type ZlibOptions } from "minizlib";
import { crc32 as plainCrc32 } from "../xlsx/zip/crc32";
import type { Inflater, NativeZip } from "../xlsx/zip/zip-archive";

/** Bytes of a piece that comes out. */
const OUTPUT_STEP = 256 * 1024;

/** Node's own inflate, and its check sum where it has one (from 20.15 and 22.2 on). */
export const nativeZip: NativeZip = {
  newInflater: nativeInflater,
  crc32: (zlib as { crc32?: NativeZip["crc32"] }).crc32 ?? plainCrc32,
};

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
