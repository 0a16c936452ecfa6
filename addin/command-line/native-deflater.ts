import { constants, deflateRawSync } from "node:zlib";
import type { Deflater } from "../xlsx/zip/write-zip";

/** Bytes packed at a time: enough that starting anew costs little. */
const STEP = 1024 * 1024;
/** A third of the time of zlib's usual 6, for a copy a fifth larger. */
const LEVEL = 2;

/**
 * Node's own deflate, several times faster than any in JavaScript. Each step is a stream of its own that
 * stops at a byte's end without saying that it is the last, so that they join into one.
 */
export function nativeDeflater(): Deflater {
  let held: Uint8Array[] = [];
  let size = 0;
  const pack = (): Uint8Array[] => {
    if (size === 0) return [];
    const packed = deflateRawSync(Buffer.concat(held, size), {
      level: LEVEL,
      finishFlush: constants.Z_FULL_FLUSH,
    });
    held = [];
    size = 0;
    return [packed];
  };
  return {
    push: (piece) => {
      held.push(piece);
      size += piece.length;
      return size < STEP ? [] : pack();
    },
    end: () => [...pack(), deflateRawSync(Buffer.alloc(0))],
  };
}
