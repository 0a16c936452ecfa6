import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { crc32, deflateRawSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { unpackedApart } from "../../../addin/command-line/unpacking-thread";
import type { Unpacked, ZipEntry } from "../../../addin/xlsx/zip/zip-archive";

const MIB = 1024 * 1024;
/** before the packed bytes, as in a zip file */
const START = 41;
let folder = "";

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "unpacking-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Bytes that pack to about a third; the same each time. */
function content(size: number): Buffer {
  const bytes = Buffer.alloc(size);
  let state = 1;
  for (let at = 0; at < size; at += 1) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    bytes[at] = 48 + (state >>> 29);
  }
  return bytes;
}

function file(name: string, packed: Buffer) {
  const path = join(folder, name);
  const whole = Buffer.concat([Buffer.alloc(START), packed, Buffer.from("the next part")]);
  writeFileSync(path, whole);
  const entry = { name: "xl/worksheets/sheet1.xml", start: START, compressedSize: packed.length } as ZipEntry;
  return { there: { path, length: whole.length }, entry };
}

/** Each piece is copied, for its memory is used again. */
function taken(pieces: Iterable<Unpacked>) {
  const copies: Buffer[] = [];
  let last: Unpacked | null = null;
  for (const piece of pieces) {
    copies.push(Buffer.from(piece.bytes));
    last = piece;
  }
  return { bytes: Buffer.concat(copies), last };
}

function* pieces(whole: Buffer, step: number): Generator<Unpacked> {
  for (let at = 0; at < whole.length; at += step)
    yield { bytes: whole.subarray(at, at + step), packed: at, checkSum: null };
}

const never = (): never => {
  throw new Error("unpacked here");
};

describe("unpackedApart", () => {
  it.each([
    ["a few bytes", 1000],
    ["more than stands in memory at once", 9 * MIB + 7],
  ])("should give the bytes that were packed, and their sum: %s", (name, size) => {
    const whole = content(size);
    const packed = deflateRawSync(whole);
    const { there, entry } = file(`${name}.bin`, packed);
    const { bytes, last } = taken(unpackedApart(there, entry, never));
    expect(bytes.equals(whole)).toBe(true);
    expect(last?.packed).toBe(packed.length);
    // Node has it from 20.15 on
    expect(last?.checkSum).toBe(typeof crc32 === "function" ? crc32(whole) : null);
  });

  it("should go on where the other thread stops, as the part is cut short", () => {
    const whole = content(4 * MIB);
    const packed = deflateRawSync(whole);
    const { there, entry } = file("short.bin", packed.subarray(0, packed.length >> 1));
    const { bytes, last } = taken(unpackedApart(there, entry, () => pieces(whole, 100_003)));
    expect(bytes.equals(whole)).toBe(true);
    expect(last?.checkSum).toBe(null);
  });

  it.each([
    ["is another one meanwhile", "other.bin", 1],
    ["is gone", "gone.bin", 0],
  ])("should unpack here where the file %s", (_, name, longer) => {
    const whole = content(MIB);
    const { there, entry } = file(name, deflateRawSync(whole));
    if (longer === 0) rmSync(there.path);
    const { bytes } = taken(
      unpackedApart({ ...there, length: there.length + longer }, entry, () => pieces(whole, 65_536)),
    );
    expect(bytes.equals(whole)).toBe(true);
  });

  it("should unpack here what the other thread does not bring", () => {
    const whole = content(3 * MIB);
    const { there, entry } = file("slow.bin", deflateRawSync(whole));
    const { bytes } = taken(unpackedApart(there, entry, () => pieces(whole, 65_536), 0));
    expect(bytes.equals(whole)).toBe(true);
  });

  it("should leave the rest unread where nobody asks for it", () => {
    const whole = content(9 * MIB);
    const { there, entry } = file("left.bin", deflateRawSync(whole));
    for (const { bytes } of unpackedApart(there, entry, never)) {
      expect(bytes[0]).toBe(whole[0]);
      break;
    }
  });
});
