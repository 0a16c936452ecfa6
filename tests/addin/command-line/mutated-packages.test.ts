import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { runAudit } from "../../../core/audit/run-audit";
import { resolveStandard, type Standard } from "../../../core/standards";
import { mutatedPackage } from "../../_support/mutate-package";
import { REWRITINGS, rewrittenPackage } from "../../_support/rewrite-xml";
import { tryPackage } from "../../_support/try-package";
import { seeded } from "../../corpus/seeded";

const folder = fileURLToPath(new URL("../../_support/workbooks/writers/", import.meta.url));
const BOOKS = readdirSync(folder).map((name) => new Uint8Array(readFileSync(folder + name)));
const standard = resolveStandard("BS8666:2005") as Standard;

function findings(bytes: Uint8Array): string[] {
  const workbook = openWorkbook(bytes);
  const sheets = workbook.sheets.map(({ name }) => workbook.read(name));
  return runAudit({ sheets, standard }).findings.map(
    ({ code, cell, message }) => `${code} ${cell} ${message}`,
  );
}

describe("3,000 packages with spoiled parts or bytes", () => {
  it("are checked or refused in words, each within 2 s", () => {
    const random = seeded(11);
    const slow: number[] = [];
    const ends = { refused: 0, copied: 0 };
    for (let at = 0; at < 3_000; at += 1) {
      const bytes = mutatedPackage(random.pick(BOOKS), random);
      // the work, not the wait: other work may share the machine
      const begun = process.cpuUsage();
      ends[tryPackage(bytes) === "refused" ? "refused" : "copied"] += 1;
      if (process.cpuUsage(begun).user > 2_000_000) slow.push(at);
    }
    expect(slow).toEqual([]);
    expect(Math.min(ends.refused, ends.copied)).toBeGreaterThan(300);
  }, 300_000);
});

describe("the same XML in other words", () => {
  it("should be read alike, and its copy opened again", () => {
    const expected = BOOKS.map(findings);
    const cases = fc.tuple(
      fc.nat(BOOKS.length - 1),
      fc.subarray([...REWRITINGS], { minLength: 1 }),
      fc.nat(2 ** 31),
    );
    fc.assert(
      fc.property(cases, ([book, ways, seed]) => {
        const bytes = rewrittenPackage(BOOKS[book]!, ways, seeded(seed));
        expect(findings(bytes)).toEqual(expected[book]);
        expect(tryPackage(bytes)).not.toBe("refused");
      }),
      { numRuns: 200 },
    );
  }, 300_000);
});
