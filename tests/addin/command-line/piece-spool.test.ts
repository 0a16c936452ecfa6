import { mkdtempSync, readdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { pieceSpool } from "../../../addin/command-line/piece-spool";

const PIECES = Array.from({ length: 40 }, (_, index) => new Uint8Array(index * 997).fill(index));
const WHOLE = Buffer.concat(PIECES);

describe("pieceSpool", () => {
  it.each([
    ["in memory", Number.POSITIVE_INFINITY],
    ["on the disk from the first on", 0],
    ["on the disk from the middle on", WHOLE.length / 2],
  ])("should give the pieces back as they were added: %s", (_, inMemory) => {
    const folder = mkdtempSync(join(tmpdir(), "barwright-spool-"));
    const spool = pieceSpool(join(folder, "copy.xlsx"), inMemory);
    for (const piece of PIECES) spool.add(piece);
    // whatever ends the program, nothing lies about
    expect(readdirSync(folder)).toEqual([]);
    const back = Array.from(spool.pieces(), (piece) => Buffer.from(piece));
    expect(Buffer.concat(back).equals(WHOLE)).toBe(true);
  });

  it("should keep the pieces in memory where no file can be had", () => {
    const spool = pieceSpool(join(tmpdir(), "barwright-no-such-folder", "copy.xlsx"), 0);
    for (const piece of PIECES) spool.add(piece);
    expect(Buffer.concat([...spool.pieces()]).equals(WHOLE)).toBe(true);
  });
});
