import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { CORPUS } from "./corpus";
import { sheetOfBytes } from "./corpus-bytes";
import { findingsOn, keptFindings } from "./corpus-findings";
import { sheetOf } from "./corpus-schedule";

const PRACTICES = [
  "UK form",
  "Indian",
  "US placing list",
  "Australian",
  "German",
  "South African",
  "French",
  "Canadian",
  "Gulf",
  "Chinese",
  "Other European",
];

describe("the corpus", () => {
  it("should hold 50 schedules of eleven practices, clean and untidy, in both kinds of file", () => {
    expect(CORPUS.length).toBeGreaterThanOrEqual(50);
    expect(new Set(CORPUS.map(({ name }) => name)).size).toBe(CORPUS.length);
    for (const practice of PRACTICES) {
      const own = CORPUS.filter((schedule) => schedule.practice === practice);
      expect(new Set(own.map(({ isClean }) => isClean)), practice).toEqual(new Set([true, false]));
      expect(new Set(own.map(({ format }) => format)), practice).toEqual(new Set(["xlsx", "csv"]));
    }
  });

  it("should hold 1,500 bars, 600 of them in clean schedules, 25 or more in each, and every one is read", () => {
    for (const { name, bars } of CORPUS) expect(bars.length, name).toBeGreaterThanOrEqual(25);
    expect(rowsIn(CORPUS)).toBeGreaterThanOrEqual(1500);
    expect(rowsIn(CORPUS.filter(({ isClean }) => isClean))).toBeGreaterThanOrEqual(600);
  });

  it.each(CORPUS.map((schedule) => [schedule.name, schedule] as const))(
    "%s should be read whole and have the findings that were reviewed",
    (name, schedule) => {
      const kept = keptFindings(schedule);
      expect(kept.bars).toBe(schedule.bars.length);
      // a change here is a deliberate one: npx tsx tests/_support/accept-corpus.ts --accept
      const file = fileURLToPath(new URL(`${name}.json`, import.meta.url));
      expect(kept).toEqual(JSON.parse(readFileSync(file, "utf8")));
    },
  );

  it.each(CORPUS.filter(({ isClean }) => isClean).map((schedule) => [schedule.name, schedule] as const))(
    "%s is clean: nothing above a note is found",
    (_, schedule) => {
      const { findings } = findingsOn(schedule);
      const alarms = findings.filter(({ severity }) => severity !== "note");
      expect(alarms.map(({ code, cell, message }) => `${code} ${cell}: ${message}`)).toEqual([]);
    },
  );

  it("should come out of a file as it was put in", () => {
    const schedule = CORPUS.find(({ name }) => name === "uk-beams");
    if (schedule === undefined) throw new Error("no such schedule");
    const written = sheetOf(schedule);
    const read = sheetOfBytes(schedule);
    for (let row = 0; row < written.rowCount; row += 1) {
      for (let column = 0; column < written.columnCount; column += 1) {
        expect(read.cell(row - read.top, column - read.left)).toEqual(written.cell(row, column));
      }
    }
  });
});

function rowsIn(schedules: typeof CORPUS): number {
  return schedules.reduce((sum, { bars }) => sum + bars.length, 0);
}
