import { describe, expect, it } from "vitest";
import { BarFacts } from "../../../core/bar/bar-facts";
import { bendsOf, pathKindOf, signsOfPath } from "../../../core/bar/known-of-bars";
import { SheetFacts } from "../../../core/bar/sheet-facts";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { heldStandard } from "../../_support/held-standard";
import { CORPUS } from "../../corpus/corpus";
import { sheetOf } from "../../corpus/corpus-schedule";

describe("signsOfPath", () => {
  it("should keep the kind of the path beside its bends", () => {
    for (const kind of [null, "planar", "arc", "circle", "helix"] as const) {
      for (const bends of [null, 0, 1, 13]) {
        const signs = signsOfPath(kind, bends);
        expect([pathKindOf(signs), bendsOf(signs)]).toEqual([kind, bends]);
      }
    }
  });

  it("should leave more bends than it has room for open", () => {
    expect(bendsOf(signsOfPath("planar", 14))).toBeUndefined();
    expect(bendsOf(signsOfPath("planar", 400))).toBeUndefined();
  });
});

describe("KnownOfBars", () => {
  it("should say of every bar of the corpus what is worked out with the bar in hand", () => {
    const said = ({
      pathKind,
      bendCount,
      computedLength,
      brokenLimits,
      isShapeRefused,
      lengthJudgement,
      hasExactLength,
    }: BarFacts) => ({
      ...{
        pathKind,
        bendCount,
        computedLength,
        brokenLimits,
        isShapeRefused,
        hasExactLength,
        lengthJudgement,
      },
    });
    for (const schedule of CORPUS) {
      const standard = heldStandard(schedule.standard);
      const sheet = sheetOf(schedule);
      const reading = readSchedule(sheet, standard);
      const kept = new SheetFacts(sheet, reading);
      const bars = reading.bars.map((row, place) => new BarFacts(row, kept, standard, place));
      // asked again when all others were in hand since
      for (const bar of bars) said(bar);
      const apart = new SheetFacts(sheet, reading);
      for (const [place, row] of reading.bars.entries())
        expect(said(bars[place] as BarFacts)).toEqual(said(new BarFacts(row, apart, standard)));
    }
  });
});
