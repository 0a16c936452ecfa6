import type { Worker } from "node:worker_threads";
import { constants, deflateRawSync } from "node:zlib";
import type { Deflater } from "../xlsx/zip/write-zip";
import { PLACES, packingPlaces, startPackingThread, Turn } from "./packing-thread";

/** Bytes packed at a time: enough that starting anew costs little. */
const STEP = 1024 * 1024;
/** Steps of a part before a thread is worth its start and its memory, which is a tenth of a middling copy. */
const STEPS_ALONE = 64;
/** A third of the time of zlib's usual 6, for a copy a fifth larger. */
const OPTIONS = { level: 2, finishFlush: constants.Z_FULL_FLUSH };

/**
 * Node's own deflate, several times faster than any in JavaScript. Each step is a stream of its own that
 * stops at a byte's end without saying that it is the last, so that they join into one. A large part is packed
 * by a second thread while this one makes what is to be packed.
 */
export function nativeDeflater(stepsAlone = STEPS_ALONE): Deflater {
  let room = new Uint8Array(0);
  let size = 0;
  let steps = 0;
  let shared: SharedPacking | null = null;
  const pack = (): Uint8Array => {
    const packed = deflateRawSync(room.subarray(0, size), OPTIONS);
    size = 0;
    steps += 1;
    return packed;
  };
  /** Pieces are copied, for their memory may be used again. */
  const push = (piece: Uint8Array): readonly Uint8Array[] => {
    const ready: Uint8Array[] = [];
    for (let at = 0; at < piece.length; ) {
      if (steps >= stepsAlone) {
        shared ??= new SharedPacking();
        ready.push(...shared.push(piece.subarray(at)));
        break;
      }
      const part = piece.subarray(at, at + STEP - size);
      if (room.length < size + part.length) room = grown(room, size + part.length);
      room.set(part, size);
      size += part.length;
      at += part.length;
      if (size === STEP) ready.push(pack());
    }
    return ready;
  };
  return {
    push,
    end: () => [...(size === 0 ? [] : [pack()]), ...(shared?.end() ?? []), deflateRawSync(NOTHING)],
  };
}

const NOTHING = Buffer.alloc(0);

/** Most parts are small: room is made as they grow. */
function grown(room: Uint8Array, least: number): Uint8Array<ArrayBuffer> {
  const more = new Uint8Array(Math.min(STEP, Math.max(least, room.length * 4)));
  more.set(room);
  return more;
}

/** Steps that this thread and a second one pack, whichever is free. */
class SharedPacking {
  readonly #places = packingPlaces(STEP);
  readonly #thread: Worker = startPackingThread(this.#places, OPTIONS);
  #filled = 0;
  #taken = 0;

  push(piece: Uint8Array): readonly Uint8Array[] {
    const ready: Uint8Array[] = [];
    for (let at = 0; at < piece.length; ) at += this.#fill(piece, at, ready);
    return ready;
  }

  end(): readonly Uint8Array[] {
    const ready: Uint8Array[] = [];
    this.#hand();
    while (this.#taken < this.#filled) ready.push(this.#take());
    void this.#thread.terminate();
    return ready;
  }

  /** Puts what fits into the place that is being filled; gives how much. */
  #fill(piece: Uint8Array, from: number, ready: Uint8Array[]): number {
    const { lengths, room, size } = this.#places;
    if (this.#filled - this.#taken === PLACES) ready.push(this.#take());
    const place = this.#filled % PLACES;
    const length = lengths[place] as number;
    const part = piece.subarray(from, from + size - length);
    room.set(part, place * size + length);
    lengths[place] = length + part.length;
    if (length + part.length === size) this.#hand();
    return part.length;
  }

  /** What was filled may be packed. */
  #hand(): void {
    const { turns, lengths } = this.#places;
    const place = this.#filled % PLACES;
    if (this.#filled - this.#taken === PLACES || lengths[place] === 0) return;
    this.#filled += 1;
    Atomics.store(turns, place, Turn.Filled);
    Atomics.add(turns, PLACES, 1);
    Atomics.notify(turns, PLACES);
  }

  /** The oldest piece, packed; here where the other thread has not begun with it. */
  #take(): Uint8Array {
    const { turns, lengths, packedLengths, packed, packedSize } = this.#places;
    const place = this.#taken % PLACES;
    this.#taken += 1;
    let bytes: Uint8Array;
    if (Atomics.compareExchange(turns, place, Turn.Filled, Turn.Taken) === Turn.Filled) {
      bytes = this.#packed(place);
    } else {
      while (Atomics.load(turns, place) === Turn.Taken) Atomics.wait(turns, place, Turn.Taken);
      const from = place * packedSize;
      // given back where the other thread could not
      const isPacked = Atomics.load(turns, place) === Turn.Packed;
      bytes = isPacked ? packed.slice(from, from + (packedLengths[place] as number)) : this.#packed(place);
    }
    lengths[place] = 0;
    Atomics.store(turns, place, Turn.Free);
    return bytes;
  }

  #packed(place: number): Uint8Array {
    const { lengths, room, size } = this.#places;
    const from = place * size;
    return deflateRawSync(Buffer.from(room.subarray(from, from + (lengths[place] as number))), OPTIONS);
  }
}
