import { closeSync, writeSync } from "node:fs";
import { dirname, resolve } from "node:path";
import {
  MessageChannel,
  type MessagePort,
  receiveMessageOnPort,
  Worker,
  workerData,
} from "node:worker_threads";
import { type RowsApart, type RowsDone, type RowsTask, rowsDone } from "../xlsx/patch/rows-apart";
import type { PieceStore } from "../xlsx/zip/write-zip";
import { ZIP_LIMITS } from "../xlsx/zip/zip-limits";
import { nativeDeflater } from "./native-deflater";
import { nativeZipOf } from "./native-zip";
import { openNameless, readBack } from "./piece-spool";
import { readPart } from "./read-part";
import type { FileThere } from "./unpacking-thread";

/** Packed bytes of a sheet from which a thread is worth its start and its memory. */
const LEAST = 16 * 1024 * 1024;
/** ms without a piece written, after which the other thread is given up. */
const PATIENCE = 20_000;
/** MB of what the thread has made and may forget: rows that were rewritten. */
const YOUNG = 12;

/** Places of what both threads look at. */
enum Shared {
  /** the text after the rows is known */
  Tail = 0,
  /** pieces that were written */
  Pieces = 1,
  End = 2,
}

enum End {
  Open = 0,
  Told = 1,
  Failed = 2,
}

type Done = ReturnType<typeof rowsDone>;

interface CopyStart {
  readonly kind: "copy";
  readonly task: RowsTask;
  readonly file: FileThere;
  /** where the packed bytes go, opened by the other thread */
  readonly spool: number;
  readonly shared: Int32Array;
  readonly port: MessagePort;
}

/**
 * Starts threads that rewrite a large sheet of `file` for its copy `out`. What they pack lies in a file beside it
 * that has no name.
 */
export function copyThread(
  file: FileThere,
  out: string,
  script = new URL(import.meta.url),
  least = LEAST,
  patience = PATIENCE,
): (task: RowsTask) => RowsApart | null {
  return (task) => {
    if (task.entry.compressedSize < least) return null;
    const spool = openNameless(dirname(resolve(out)));
    return spool === null ? null : begin({ task, file, spool }, script, patience);
  };
}

function begin(start: Pick<CopyStart, "task" | "file" | "spool">, script: URL, patience: number): RowsApart {
  const shared = new Int32Array(new SharedArrayBuffer(3 * Int32Array.BYTES_PER_ELEMENT));
  const { port1, port2 } = new MessageChannel();
  const data: CopyStart = { kind: "copy", ...start, shared, port: port2 };
  const worker = new Worker(script, {
    workerData: data,
    transferList: [port2],
    resourceLimits: { maxYoungGenerationSizeMb: YOUNG },
  });
  // one that cannot be had is no fault of the copy
  worker.on("error", () => undefined);
  worker.unref();
  return {
    finish: (tail) => {
      port1.postMessage(tail);
      Atomics.store(shared, Shared.Tail, 1);
      Atomics.notify(shared, Shared.Tail);
      const done = waitedFor(shared, port1, patience);
      port1.close();
      void worker.terminate();
      return done === null ? null : takenBack(done, start.spool);
    },
  };
}

function takenBack({ packed, styles }: Done, spool: number): RowsDone {
  const compressed = (function* () {
    try {
      yield* readBack(spool, packed.compressedSize);
    } finally {
      closeSync(spool);
    }
  })();
  return { styles, packed: { ...packed, compressed } };
}

/** What the other thread made, once it is through; null where it failed or does nothing any more. */
function waitedFor(shared: Int32Array, port: MessagePort, patience: number): Done | null {
  for (let pieces = 0; Atomics.wait(shared, Shared.End, End.Open, patience) === "timed-out"; ) {
    const now = Atomics.load(shared, Shared.Pieces);
    if (now === pieces) return null;
    pieces = now;
  }
  if (Atomics.load(shared, Shared.End) !== End.Told) return null;
  return (receiveMessageOnPort(port)?.message as Done | undefined) ?? null;
}

/** True in a thread that was started to rewrite a sheet. */
export function isCopyThread(): boolean {
  return (workerData as { kind?: string } | null)?.kind === "copy";
}

/** What the other thread does. */
export function serveCopy(): void {
  const { task, file, spool, shared, port } = workerData as CopyStart;
  let end = End.Failed;
  try {
    const { path, length } = file;
    const { start, compressedSize } = task.entry;
    const compressed = (): Uint8Array => {
      const part = readPart(path, start, start + compressedSize);
      if (part.length !== length) throw new Error("another file");
      return part.bytes;
    };
    const tail = (): string => {
      Atomics.wait(shared, Shared.Tail, 0);
      return receiveMessageOnPort(port)?.message as string;
    };
    const native = nativeZipOf(file);
    const archive = { native, entries: new Map(), limits: ZIP_LIMITS };
    const done = rowsDone(
      task,
      { archive, compressed, tail },
      { newDeflater: nativeDeflater, checkSum: native.crc32, newStore: () => storeIn(spool, shared) },
    );
    port.postMessage(done);
    end = End.Told;
  } finally {
    Atomics.store(shared, Shared.End, end);
    Atomics.notify(shared, Shared.End);
  }
}

function storeIn(spool: number, shared: Int32Array): PieceStore {
  return {
    add: (piece) => {
      for (let at = 0; at < piece.length; ) at += writeSync(spool, piece, at);
      Atomics.add(shared, Shared.Pieces, 1);
    },
    pieces: () => [],
  };
}
