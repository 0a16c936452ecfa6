import { Worker } from "node:worker_threads";

/** What becomes of one piece: it is filled, then packed by whoever takes it first, then taken away. */
export enum Turn {
  Free = 0,
  Filled = 1,
  Taken = 2,
  Packed = 3,
}

/** Pieces that stand in memory at once. */
export const PLACES = 4;
/** a piece that cannot be made smaller grows by a few bytes in 16 KB */
const ROOM_TO_GROW = 1024;

/** Memory in which two threads pack pieces: one fills them and takes them away, in order. */
export interface PackingPlaces {
  /** a turn each, and last how many pieces were filled in all */
  readonly turns: Int32Array;
  readonly lengths: Int32Array;
  readonly packedLengths: Int32Array;
  readonly room: Uint8Array;
  readonly packed: Uint8Array;
  readonly size: number;
  readonly packedSize: number;
}

export function packingPlaces(size: number): PackingPlaces {
  const packedSize = size + ROOM_TO_GROW;
  const numbers = (count: number) => new Int32Array(new SharedArrayBuffer(count * 4));
  return {
    turns: numbers(PLACES + 1),
    lengths: numbers(PLACES),
    packedLengths: numbers(PLACES),
    room: new Uint8Array(new SharedArrayBuffer(size * PLACES)),
    packed: new Uint8Array(new SharedArrayBuffer(packedSize * PLACES)),
    size,
    packedSize,
  };
}

/**
 * A thread that packs what is filled. Its program stands here as text, for a bundle is one file. It looks for
 * work by itself and is never waited for before it took a piece: where it cannot run, all goes on without it.
 */
export function startPackingThread(places: PackingPlaces, options: object): Worker {
  const worker = new Worker(PROGRAM, { eval: true, workerData: { ...places, options, Turn, PLACES } });
  // one that cannot be had is no fault of the copy
  worker.on("error", () => undefined);
  worker.unref();
  return worker;
}

const PROGRAM = `
const { workerData } = require("node:worker_threads");
const { deflateRawSync } = require("node:zlib");
const { turns, lengths, packedLengths, room, packed, size, packedSize, options, Turn, PLACES } = workerData;
for (;;) {
  const seen = Atomics.load(turns, PLACES);
  let isIdle = true;
  for (let place = 0; place < PLACES; place += 1) {
    if (Atomics.compareExchange(turns, place, Turn.Filled, Turn.Taken) !== Turn.Filled) continue;
    isIdle = false;
    try {
      pack(place);
    } catch {
      // the other thread does it, and says what is wrong
      Atomics.store(turns, place, Turn.Filled);
      Atomics.notify(turns, place);
      process.exit();
    }
  }
  if (isIdle) Atomics.wait(turns, PLACES, seen);
}
function pack(place) {
  const bytes = deflateRawSync(Buffer.from(room.subarray(place * size, place * size + lengths[place])), options);
  packed.set(bytes, place * packedSize);
  packedLengths[place] = bytes.length;
  Atomics.store(turns, place, Turn.Packed);
  Atomics.notify(turns, place);
}
`;
