import * as zlib from "node:zlib";
import { crc32 as plainCrc32 } from "../xlsx/zip/crc32";
import type { NativeZip } from "../xlsx/zip/zip-archive";

/** Node's own inflate, and its check sum where it has one (from 20.15 and 22.2 on). */
export const nativeZip: NativeZip = {
  inflate(compressed, most) {
    try {
      // an empty part may not be held to no bytes at all
      return zlib.inflateRawSync(compressed, { maxOutputLength: Math.max(1, most) });
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === "ERR_BUFFER_TOO_LARGE") return "longer";
      throw error;
    }
  },
  crc32: (zlib as { crc32?: NativeZip["crc32"] }).crc32 ?? plainCrc32,
};
