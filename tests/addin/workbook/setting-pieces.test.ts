import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { constantText, textConstant } from "../../../addin/workbook/defined-name";
import { isSparePiece, settingOfPieces, settingPieces } from "../../../addin/workbook/setting-pieces";
import { patchWorkbook } from "../../../addin/xlsx/patch/patch-workbook";
import { openWorkbook } from "../../../addin/xlsx/read/open-workbook";
import { workbookSetting } from "../../../addin/xlsx/read/workbook-setting";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import { auditSettings } from "../../../core/audit/audit-settings";
import { settingsFromText, settingsToText } from "../../../core/audit/settings-text";

const NAME = "Barwright.Audit";
const waivers = Array.from({ length: 600 }, (_, index) => ({
  code: "LEN102",
  sheet: `Sheet "${index % 7}"`,
  key: `B${index} | ${index}`,
  reason: `agreed with the site, "as built" ${"\u{1f6a7} Größe 第三 ".repeat(20)}${index}`,
}));
const SETTINGS = auditSettings.parse({ waivers, rulesOff: ["READ104"] });
const TEXT = settingsToText(SETTINGS) as string;

const formulas = (pieces: ReadonlyMap<string, string>): Map<string, string> =>
  new Map([...pieces].map(([name, text]) => [name, textConstant(text)]));

const readBack = (pieces: ReadonlyMap<string, string>): string | null =>
  settingOfPieces(NAME, (piece) => pieces.get(piece) ?? null);

describe("settingPieces", () => {
  it("should give back any text, in formulas that a workbook can hold", () => {
    const long = fc.string({ unit: "binary", minLength: 0, maxLength: 40 });
    fc.assert(
      fc.property(long, fc.integer({ min: 1, max: 900 }), (part, times) => {
        const text = part.repeat(times);
        const pieces = settingPieces(NAME, text);
        expect(readBack(pieces)).toBe(text);
        for (const formula of formulas(pieces).values()) {
          // Excel's longest formula, its equals sign included
          expect(formula.length + 1).toBeLessThanOrEqual(8_192);
          for (const literal of formula.match(/"(?:[^"]|"")*"/g) ?? []) {
            // half of a character of two units
            expect(literal).not.toMatch(/\p{Cs}/u);
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  it("keeps a short text as it always was", () => {
    expect([...settingPieces(NAME, "EC2:2004")]).toEqual([[NAME, "EC2:2004"]]);
  });

  it("takes only names that go on from its own for spare", () => {
    const pieces = settingPieces(NAME, "x".repeat(9_000));
    expect([...pieces.keys()]).toEqual([NAME, `${NAME}.2`]);
    const spare = ["barwright.audit.3", `${NAME}.2`, NAME, `${NAME}.x`, "Barwright.Auditor.3", `${NAME}.3.4`];
    expect(spare.filter((name) => isSparePiece(NAME, name, pieces))).toEqual(["barwright.audit.3"]);
  });
});

describe("settingOfPieces", () => {
  it("should say which part is missing, and take nothing for read", () => {
    const pieces = settingPieces(NAME, TEXT);
    expect(pieces.size).toBeGreaterThan(20);
    const cases: [gone: string, words: RegExp][] = [
      [`${NAME}.7`, new RegExp(`the name Barwright.Audit.7 is missing, one of ${pieces.size} parts`)],
      [`${NAME}.${pieces.size}`, /is missing, one of/],
      [NAME, /the name Barwright.Audit is missing, while Barwright.Audit.2 is there/],
    ];
    for (const [gone, words] of cases) {
      const left = new Map([...pieces].filter(([name]) => name !== gone));
      const { problem, ...read } = settingsFromText(readBack(left));
      expect(problem).toMatch(words);
      expect(problem).toMatch(/no finding is waived/);
      expect(read).toEqual(auditSettings.parse({}));
    }
  });
});

describe("600 waivers with long reasons", () => {
  const bytes = writeNewWorkbook({
    sheets: [{ name: "S", rows: [["Bar mark"]] }],
    names: formulas(settingPieces(NAME, TEXT)),
  });

  it("should come back from an .xlsx file as they were", () => {
    expect(settingsFromText(workbookSetting(openWorkbook(bytes), NAME))).toEqual(SETTINGS);
  });

  it("should leave no part behind when they become few", () => {
    const book = openWorkbook(bytes);
    const few = settingPieces(NAME, '{"rulesOff":["SUM101"]}');
    const names = new Map<string, string | null>(formulas(few));
    for (const { name } of book.names) if (isSparePiece(NAME, name, few)) names.set(name, null);
    const after = openWorkbook(patchWorkbook(book, { sheets: new Map(), names }));
    expect(after.names.map(({ name, refersTo }) => [name, constantText(refersTo)])).toEqual([
      [NAME, '{"rulesOff":["SUM101"]}'],
    ]);
  });
});
