import { expect, test } from "vitest";
import { notShown } from "../../../addin/workbench/book/not-shown";

const sheet = (name: string, tail: string) => ({ name, layout: { head: "", tail } });

test("should name the sheets whose colours by condition, charts and pictures are not drawn", () => {
  const condition =
    '<conditionalFormatting sqref="A1:A9"><cfRule type="expression"/></conditionalFormatting>';
  const newer = `<extLst><ext><x14:conditionalFormattings><x14:${condition.slice(1).replace("</", "</x14:")}</x14:conditionalFormattings></ext></extLst>`;
  expect(
    notShown([
      sheet("Schedule", `</sheetData>${condition}<legacyDrawing r:id="rId1"/></worksheet>`),
      sheet("Summary", '</sheetData><drawing r:id="rId2"/></worksheet>'),
      sheet("Costs", `</sheetData>${newer}</worksheet>`),
      sheet("Rest", "</sheetData></worksheet>"),
    ]),
  ).toBe(
    "Kept in the file and not shown here: colours by condition on Schedule, Costs; charts or pictures on Summary",
  );
  expect(notShown([sheet("Rest", '</sheetData><legacyDrawing r:id="rId1"/></worksheet>')])).toBe("");
});
