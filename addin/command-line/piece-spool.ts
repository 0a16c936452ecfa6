import { closeSync, openSync, readSync, rmSync, writeSync } from "node:fs";
import { dirname, resolve } from "node:path";
import type { PieceStore } from "../xlsx/zip/write-zip";
import { InputRefused } from "./input-refused";
import { partName } from "./write-copy";

/** Bytes of a part that are kept in memory. */
const IN_MEMORY = 4 * 1024 * 1024;
/** Bytes read back at a time. */
const STEP = 1024 * 1024;

/**
 * Keeps the packed pieces of a part until the copy `out` is put together: a large part's lie in a file beside it
 * that has no name any more, so that nothing is left of it whatever ends the program.
 */
export function pieceSpool(out: string, inMemory = IN_MEMORY): PieceStore {
  let kept: Uint8Array[] = [];
  let size = 0;
  let file: number | null = null;
  let isTried = false;
  const spill = (): void => {
    isTried = true;
    file = openNameless(dirname(resolve(out)));
    if (file === null) return;
    for (const piece of kept) write(file, piece, out);
    kept = [];
  };
  return {
    add: (piece) => {
      size += piece.length;
      if (file !== null) write(file, piece, out);
      else {
        kept.push(piece);
        if (size > inMemory && !isTried) spill();
      }
    },
    *pieces() {
      if (file === null) {
        yield* kept;
        return;
      }
      try {
        yield* readBack(file, size);
      } finally {
        closeSync(file);
      }
    },
  };
}

/** A file beside the copy that has no name. Null where none can be had: the pieces stay in memory then, and writing the copy says what is wrong. */
export function openNameless(folder: string): number | null {
  const path = partName(folder);
  try {
    const file = openSync(path, "wx+", 0o600);
    rmSync(path, { force: true });
    return file;
  } catch {
    return null;
  }
}

function write(file: number, piece: Uint8Array, out: string): void {
  try {
    for (let at = 0; at < piece.length; ) at += writeSync(file, piece, at);
  } catch (error) {
    throw new InputRefused(
      `${out} cannot be written (${(error as NodeJS.ErrnoException).code}): nothing was changed`,
    );
  }
}

/** The first `size` bytes of a file, piece by piece; each stands until the next. */
export function* readBack(file: number, size: number): Generator<Uint8Array> {
  const room = new Uint8Array(Math.min(STEP, size));
  for (let at = 0; at < size; ) {
    const read = readSync(file, room, 0, Math.min(room.length, size - at), at);
    if (read === 0) throw Object.assign(new Error("a part of the copy is gone"), { code: "EIO" });
    at += read;
    yield room.subarray(0, read);
  }
}
