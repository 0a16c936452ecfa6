import { describe, expect, it } from "vitest";
import { type SheetReading, sheetOfPacked } from "../../../addin/xlsx/read/read-sheet";
import { type RowsHelper, rowsOfApart } from "../../../core/audit/rows-apart";
import { runAudit } from "../../../core/audit/run-audit";
import type { Sheet } from "../../../core/schedule/sheet";
import { CORPUS } from "../../corpus/corpus";
import { sheetOfBytes } from "../../corpus/corpus-bytes";
import { standardOf } from "../../corpus/corpus-findings";

/** The sheet as another thread makes it of what it is given, where it came out of a workbook. */
function copyOf(sheet: Sheet): Sheet {
  const packed = (sheet as Partial<SheetReading>).packed?.() ?? null;
  return packed === null ? sheet : sheetOfPacked(structuredClone(packed));
}

/** Every second row is judged by what another thread would be given, a copy of it: as long as it stands in `helped`. */
function helperOf(helped: number[]): RowsHelper {
  return {
    begin: (rows, sheet) => {
      const apart = rowsOfApart(structuredClone(rows), copyOf(sheet));
      if (apart === null) return null;
      const { length } = rows.bars.places;
      for (let place = 0; place < length; place += 3) apart.settle(place);
      return {
        judge: (habits) => {
          const judge = apart.judgeBy(structuredClone(habits));
          return {
            finish: (judgeHere, take) => {
              helped.push(length >> 1);
              for (let place = length - 1; place >= 0; place -= 1) {
                if (place % 2 === 0) judgeHere(place);
                else take(place, structuredClone(judge(place)) ?? []);
              }
            },
          };
        },
        leave: () => undefined,
      };
    },
  };
}

describe("rowsApart", () => {
  it("should have rows judged apart as they are beside all others, on every schedule of the corpus", () => {
    const helped: number[] = [];
    for (const schedule of CORPUS) {
      const asked = { sheets: [sheetOfBytes(schedule)], standard: standardOf(schedule.standard) };
      const alone = runAudit({ ...asked, isOnce: true });
      const together = runAudit({ ...asked, isOnce: true, helper: helperOf(helped) });
      expect(together.findings, schedule.name).toEqual(alone.findings);
      expect(together.byRow, schedule.name).toEqual(alone.byRow);
      expect(together.waivers, schedule.name).toEqual(alone.waivers);
    }
    // few schedules ask for more than can be handed over
    expect(helped.length).toBeGreaterThan(CORPUS.length * 0.8);
    expect(helped.reduce((sum, rows) => sum + rows, 0)).toBeGreaterThan(600);
  });
});
