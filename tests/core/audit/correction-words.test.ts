import { describe, expect, it } from "vitest";
import { auditSettings } from "../../../core/audit/audit-settings";
import { correctionWords } from "../../../core/audit/correction-words";

const settings = auditSettings.parse({
  readings: [
    {
      sheet: "B1",
      columns: [
        { column: "Cut", kind: "length", unit: "m" },
        { column: "F", unit: "in" },
        { column: "X", kind: "ignored" },
      ],
      grade: "B500C",
      confirmed: ["F12", "unit-of-column"],
    },
    { sheet: "B2", confirmed: ["F12"] },
    { sheet: "B3" },
  ],
});

describe("correctionWords", () => {
  it("says every column, the grade and how many guesses stand", () => {
    expect(correctionWords(settings, "B1")).toBe(
      'sheet "B1" is read as corrected by hand: column "Cut" taken as cut length in m; column "F" taken in inches; column "X" left out; bars that name no grade taken as B500C; 2 guesses confirmed',
    );
    expect(correctionWords(settings, "B2")).toMatch(/: 1 guess confirmed$/);
  });

  it("is null where the workbook keeps nothing for the sheet", () => {
    expect(correctionWords(settings, "B3")).toBeNull();
    expect(correctionWords(settings, "B4")).toBeNull();
  });
});
