import { MessageChannel, receiveMessageOnPort, Worker } from "node:worker_threads";
import type { Unpacked, ZipEntry } from "../xlsx/zip/zip-archive";

/** A file whose parts another thread can read by itself. */
export interface FileThere {
  readonly path: string;
  readonly length: number;
}

/** Bytes of a piece, and pieces that stand in memory at once. */
const STEP = 512 * 1024;
const PLACES = 6;

/** A piece on its way: its memory is handed over, for bytes that two threads share are searched many times slower. */
interface Sent extends Omit<Unpacked, "bytes"> {
  readonly room: ArrayBuffer;
}
/** ms without a piece, after which the other thread is given up. */
const PATIENCE = 20_000;

/** Places of what both threads look at. */
enum Turn {
  /** counts what the unpacking thread did, to be woken by */
  Steps = 0,
  Filled = 1,
  Taken = 2,
  End = 3,
}

enum End {
  Open = 0,
  Whole = 1,
  Failed = 2,
}

/**
 * The pieces of a part that another thread unpacks while this one reads them. Where that thread cannot go on, for whatever reason, `here` unpacks the part once more, and says what is wrong.
 */
export function* unpackedApart(
  file: FileThere,
  entry: ZipEntry,
  here: () => Iterable<Unpacked>,
  patience = PATIENCE,
): Generator<Unpacked> {
  const turns = new Int32Array(new SharedArrayBuffer(4 * Int32Array.BYTES_PER_ELEMENT));
  const { port1, port2 } = new MessageChannel();
  const { start, compressedSize } = entry;
  const part = { ...file, start, end: start + compressedSize - 1 };
  const worker = new Worker(PROGRAM, {
    eval: true,
    workerData: { part, turns, port: port2, Turn, End, STEP, PLACES },
    transferList: [port2],
  });
  // one that cannot be had is no fault of the file
  worker.on("error", () => undefined);
  worker.unref();
  let size = 0;
  try {
    for (let taken = 0; isFilled(turns, taken, patience); taken += 1) {
      const sent = receiveMessageOnPort(port1)?.message as Sent | undefined;
      if (sent === undefined) break;
      const { room, packed, checkSum } = sent;
      yield { bytes: Buffer.from(room), packed, checkSum };
      size += room.byteLength;
      Atomics.store(turns, Turn.Taken, taken + 1);
      Atomics.notify(turns, Turn.Taken);
    }
  } finally {
    port1.close();
    void worker.terminate();
  }
  if (Atomics.load(turns, Turn.End) !== End.Whole) yield* behind(here(), size);
}

/** Waits for the piece behind those that were taken; false where none comes any more. */
function isFilled(turns: Int32Array, taken: number, patience: number): boolean {
  for (;;) {
    const seen = Atomics.load(turns, Turn.Steps);
    if (Atomics.load(turns, Turn.Filled) > taken) return true;
    if (Atomics.load(turns, Turn.End) !== End.Open) return false;
    if (Atomics.wait(turns, Turn.Steps, seen, patience) === "timed-out") return false;
  }
}

/** What follows the first `size` bytes, which were given already. */
function* behind(pieces: Iterable<Unpacked>, size: number): Generator<Unpacked> {
  let left = size;
  for (const { bytes, packed, checkSum } of pieces) {
    const over = Math.min(left, bytes.length);
    left -= over;
    if (over < bytes.length) yield { bytes: bytes.subarray(over), packed, checkSum };
  }
}

/** It stands here as text, for a bundle is one file. */
const PROGRAM = `
const { workerData } = require("node:worker_threads");
const { createReadStream, statSync } = require("node:fs");
const { pipeline } = require("node:stream/promises");
const { createInflateRaw, crc32 } = require("node:zlib");
const { part, turns, port, Turn, End, STEP, PLACES } = workerData;
let sum = 0;
let filled = 0;
const step = () => {
  Atomics.add(turns, Turn.Steps, 1);
  Atomics.notify(turns, Turn.Steps);
};
const waitForRoom = () => {
  for (let taken = Atomics.load(turns, Turn.Taken); filled - taken >= PLACES; taken = Atomics.load(turns, Turn.Taken))
    Atomics.wait(turns, Turn.Taken, taken);
};
const unpack = async () => {
  if (statSync(part.path).size !== part.length) throw new Error("another file");
  const source = createReadStream(part.path, { start: part.start, end: part.end, highWaterMark: 64 * 1024 });
  const inflate = createInflateRaw({ chunkSize: STEP });
  await pipeline(source, inflate, async (pieces) => {
    for await (const piece of pieces) {
      waitForRoom();
      // memory of its own: the stream's may hold the next piece too
      const room = new Uint8Array(piece).buffer;
      sum = crc32 === undefined ? null : crc32(piece, sum);
      port.postMessage({ room, packed: inflate.bytesWritten, checkSum: sum }, [room]);
      filled += 1;
      Atomics.store(turns, Turn.Filled, filled);
      step();
    }
  });
};
unpack().then(
  () => Atomics.store(turns, Turn.End, End.Whole),
  () => Atomics.store(turns, Turn.End, End.Failed),
).then(step);
`;
