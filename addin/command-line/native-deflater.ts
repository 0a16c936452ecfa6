import type { Worker } from "node:worker_threads";
import { constants, deflateRawSync } from "node:zlib";
import type { Deflater } from "../xlsx/zip/write-zip";
import { PLACES, packingPlaces, startPackingThread, Turn } from "./packing-thread";

/** Bytes packed at a time: enough that starting anew costs little. */
const STEP = 1024 * 1024;
/** Steps of a part before a thread is worth its start. */
const STEPS_ALONE = 8;
/** A third of the time of zlib's usual 6, for a copy a fifth larger. */
const OPTIONS = { level: 2, finishFlush: constants.Z_FULL_FLUSH };

/**
 * Node's own deflate, several times faster than any in JavaScript. Each step is a stream of its own that
 * stops at a byte's end without saying that it is the last, so that they join into one. A large part is packed
 * by a second thread while this one makes what is to be packed.
 */
export function nativeDeflater(stepsAlone = STEPS_ALONE): Deflater {
  const alone = Buffer.alloc(0);
  let held: Uint8Array[] = [];
  let size = 0;
  let steps = 0;
  let shared: SharedPacking | null = null;
  const pack = (): readonly Uint8Array[] => {
    if (size === 0) return [];
    const pieces = held;
    held = [];
    size = 0;
    steps += 1;
    if (steps <= stepsAlone) return [deflateRawSync(Buffer.concat(pieces), OPTIONS)];
    shared ??= new SharedPacking();
    return shared.push(pieces);
  };
  return {
    push: (piece) => {
      held.push(piece);
      size += piece.length;
      return size < STEP ? [] : pack();
    },
    end: () => [...pack(), ...(shared?.end() ?? []), deflateRawSync(alone)],
  };
}

/** Steps that this thread and a second one pack, whichever is free. */
class SharedPacking {
  readonly #places = packingPlaces(STEP);
  readonly #thread: Worker = startPackingThread(this.#places, OPTIONS);
  #filled = 0;
  #taken = 0;

  push(pieces: readonly Uint8Array[]): readonly Uint8Array[] {
    const ready: Uint8Array[] = [];
    for (const piece of pieces) {
      for (let at = 0; at < piece.length; ) at += this.#fill(piece, at, ready);
    }
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
