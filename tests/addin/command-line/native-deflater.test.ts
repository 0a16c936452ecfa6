import { inflateRawSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { nativeDeflater } from "../../../addin/command-line/native-deflater";

const MIB = 1024 * 1024;

/** Pieces of odd lengths, some of which no packing makes smaller; the same each time. */
function pieces(total: number, isNoise: boolean): Uint8Array[] {
  const made: Uint8Array[] = [];
  let state = 1;
  for (let left = total; left > 0; ) {
    const piece = new Uint8Array(Math.min(left, 70_001 + (made.length % 5) * 300_007));
    for (let at = 0; at < piece.length; at += 1) {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      piece[at] = isNoise ? state >>> 24 : 48 + (state >>> 29);
    }
    made.push(piece);
    left -= piece.length;
  }
  return made;
}

describe("nativeDeflater", () => {
  it.each([
    ["nothing", 0, 8, false],
    ["less than a step", 1000, 8, false],
    ["what one thread packs", 3 * MIB, 8, false],
    ["what two threads pack", 12 * MIB + 17, 2, false],
    ["two threads from the first step on", 5 * MIB, 0, false],
    ["what cannot be made smaller", 9 * MIB + 1, 1, true],
  ])("should unpack to the bytes that were packed: %s", (_, total, alone, isNoise) => {
    const content = pieces(total, isNoise);
    const deflater = nativeDeflater(alone);
    const reused = Buffer.alloc(2 * MIB);
    const packed = content.flatMap((piece) => {
      // the memory of a piece is used again for the next one
      reused.set(piece);
      return [...deflater.push(reused.subarray(0, piece.length))];
    });
    packed.push(...deflater.end());
    const whole = inflateRawSync(Buffer.concat(packed));
    expect(whole.length).toBe(total);
    expect(whole.equals(Buffer.concat(content))).toBe(true);
  });
});
