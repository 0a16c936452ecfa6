import { mkdtempSync, readdirSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, it } from "vitest";
import { annotatedCopy } from "../../../addin/command-line/annotated-copy";
import { copyThread } from "../../../addin/command-line/copy-thread";
import { nativeDeflater } from "../../../addin/command-line/native-deflater";
import { nativeZip } from "../../../addin/command-line/native-zip";
import type { RowsTask } from "../../../addin/xlsx/patch/rows-apart";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import { runAudit } from "../../../core/audit/run-audit";
import { barwrightBundle } from "../../_support/command-line";
import { copyFaults } from "../../_support/copy-faults";
import { heldStandard } from "../../_support/held-standard";

const HEADS = ["Member", "Mark", "Size", "Shape", "A", "B", "Total no.", "Length mm", "Former"];
// every seventh former is below what BS 8666 Table 2 asks of 16 mm; some rows end before it, others are styled
const ROWS = Array.from({ length: 200 }, (_, at) => [
  ...[`B${at >> 5}`, `${at + 1}`, "H16", "11", 600 + (at % 40) * 5],
  ...[500, 10, 1050 + (at % 40) * 5],
  ...(at % 7 === 0 ? [50] : at % 3 === 0 ? [] : [64]),
]);

/** A book of one list that lies in a folder of its own. */
function bookThere() {
  const folder = mkdtempSync(join(tmpdir(), "barwright-copy-thread-"));
  const bytes = writeNewWorkbook({ sheets: [{ name: "List", rows: [HEADS, ...ROWS] }] });
  const path = join(folder, "book.xlsx");
  writeFileSync(path, bytes);
  return { folder, bytes, file: { path, length: bytes.length }, out: join(folder, "copy.xlsx") };
}

/** The marked copy of a book, whose rows `beginRows` has rewritten where it is given. */
function copied(bytes: Uint8Array, beginRows?: ReturnType<typeof copyThread>): Buffer {
  const workbook = openWorkbook(bytes, undefined, nativeZip);
  const sheets = [workbook.read("List")];
  const report = runAudit({ sheets, standard: heldStandard("BS8666:2005") });
  const host = { newDeflater: nativeDeflater };
  const asked = beginRows === undefined ? { host } : { host, beginRows };
  return Buffer.concat([...annotatedCopy(workbook, report, sheets, asked).pieces]);
}

describe("copyThread", () => {
  it("should have another thread write a sheet as this one does, and leave nothing beside the copy", async () => {
    const { folder, bytes, file, out } = bookThere();
    const script = pathToFileURL(barwrightBundle());
    const finished: boolean[] = [];
    const begin = (task: RowsTask) => {
      const apart = copyThread(file, out, script, 0)(task);
      return {
        finish: (tail: string) => {
          const done = apart?.finish(tail) ?? null;
          finished.push(done !== null);
          return done;
        },
      };
    };
    const copy = copied(bytes, begin);
    expect(finished).toEqual([true]);
    expect(copy.equals(copied(bytes))).toBe(true);
    expect(await copyFaults(bytes, copy)).toEqual([]);
    expect(readdirSync(folder)).toEqual(["book.xlsx"]);
  });

  it.each([
    ["it cannot run", (file: { path: string; length: number }) => ({ file, script: "/no/such/program.mjs" })],
    [
      "its file is another one now",
      ({ path, length }: { path: string; length: number }) => ({
        file: { path, length: length + 1 },
        script: barwrightBundle(),
      }),
    ],
  ])("should write the sheet here where %s", (_, with_) => {
    const { bytes, file, out } = bookThere();
    const { file: given, script } = with_(file);
    expect(copied(bytes, copyThread(given, out, pathToFileURL(script), 0, 1000)).equals(copied(bytes))).toBe(
      true,
    );
  });

  it("should write the sheet here where the styles that it made are others", () => {
    const { bytes, file, out } = bookThere();
    const begin = copyThread(file, out, pathToFileURL(barwrightBundle()), 0);
    const other = (task: RowsTask) => {
      const apart = begin(task)!;
      return { finish: (tail: string) => ({ ...apart.finish(tail)!, styles: "<styleSheet/>" }) };
    };
    expect(copied(bytes, other).equals(copied(bytes))).toBe(true);
  });

  it("should leave small sheets to this thread", () => {
    const { bytes, file, out } = bookThere();
    const begun: unknown[] = [];
    const begin = copyThread(file, out);
    copied(bytes, (task) => {
      const apart = begin(task);
      begun.push(apart);
      return apart;
    });
    expect(begun).toEqual([null]);
  });
});
