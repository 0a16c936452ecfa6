import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { constantText, textConstant } from "../../../../addin/workbook/defined-name";
import { readDefinedNames, withDefinedNames } from "../../../../addin/xlsx/read/defined-names";

const WORKBOOK = '<workbook><sheets><sheet name="S"/></sheets><calcPr calcId="1"/></workbook>';

describe("defined names", () => {
  it("should keep any text as a constant, in literals that a formula can hold", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 900 }), (text) => {
        const formula = textConstant(text);
        expect(constantText(formula)).toBe(text);
        for (const literal of formula.match(/"(?:[^"]|"")*"/g) ?? []) {
          expect(literal.slice(1, -1).replaceAll('""', '"').length).toBeLessThanOrEqual(255);
        }
      }),
    );
  });

  it("takes what is no constant text for none", () => {
    for (const formula of ["Sheet1!$A$1", "0.03", '"a"&A1', '"a', ""])
      expect(constantText(formula)).toBeNull();
  });

  it("stands before the calculation settings, where the format wants it", () => {
    const xml = withDefinedNames(WORKBOOK, new Map([["A.B", '"x & <y>"']]));
    expect(xml).toContain("</sheets><definedNames>");
    expect(xml).toContain("</definedNames><calcPr");
    expect(readDefinedNames(xml)).toEqual([{ name: "A.B", refersTo: '"x & <y>"', sheetIndex: null }]);
  });

  it("leaves a sheet's own name of the same spelling alone", () => {
    const local = '<definedName name="a.b" localSheetId="0">1</definedName>';
    const xml = WORKBOOK.replace("</sheets>", `</sheets><definedNames>${local}</definedNames>`);
    const names = readDefinedNames(withDefinedNames(xml, new Map([["A.B", "2"]])));
    expect(names.map(({ sheetIndex, refersTo }) => [sheetIndex, refersTo])).toEqual([
      [0, "1"],
      [null, "2"],
    ]);
    expect(withDefinedNames(WORKBOOK, new Map([["A.B", null]]))).toBe(WORKBOOK);
  });
});
