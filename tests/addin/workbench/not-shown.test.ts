import { expect, test } from "vitest";
import { notesOf, notShown } from "../../../addin/workbench/book/not-shown";

const NONE = () => 0;
const sheet = (name: string, tail: string) => ({ name, layout: { head: "", tail } });

test("should name the sheets whose colours by condition, charts and pictures are not drawn", () => {
  const condition =
    '<conditionalFormatting sqref="A1:A9"><cfRule type="expression"/></conditionalFormatting>';
  const newer = `<extLst><ext><x14:conditionalFormattings><x14:${condition.slice(1).replace("</", "</x14:")}</x14:conditionalFormattings></ext></extLst>`;
  expect(
    notShown(
      [
        sheet("Schedule", `</sheetData>${condition}<legacyDrawing r:id="rId1"/></worksheet>`),
        sheet("Summary", '</sheetData><drawing r:id="rId2"/></worksheet>'),
        sheet("Costs", `</sheetData>${newer}</worksheet>`),
        sheet("Rest", "</sheetData></worksheet>"),
      ],
      NONE,
    ),
  ).toBe(
    "Kept in the file and not shown here: colours by condition on Schedule, Costs; charts or pictures on Summary",
  );
  expect(notShown([sheet("Rest", '</sheetData><legacyDrawing r:id="rId1"/></worksheet>')], NONE)).toBe("");
});

test("should count the notes of others by sheet, and leave those of the checks out", () => {
  const comment = (ref: string, author: number) =>
    `<comment ref="${ref}" authorId="${author}"><text/></comment>`;
  const texts: Record<string, string> = {
    notes: `<comments><authors><author>A. Detailer</author><author>Barwright</author></authors><commentList>${comment("B2", 0)}${comment("C5", 0)}${comment("D9", 1)}</commentList></comments>`,
  };
  const workbook = {
    sheet: (name: string) => ({ name, part: name }),
    parts: {
      relationships: (part: string) => (part === "Schedule" ? [{ type: "comments", target: "notes" }] : []),
      has: (part: string) => part in texts,
      text: (part: string) => texts[part],
    },
  };
  const notes = notesOf(workbook as never);
  expect(notShown([sheet("Schedule", ""), sheet("Rest", "")], notes)).toBe(
    "Kept in the file and not shown here: notes and comments in cells (2 notes on Schedule)",
  );
});
