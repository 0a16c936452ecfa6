import type { SheetFacts } from "../../bar/sheet-facts";
import { contradicts, type DocumentNamed, documentsNamed } from "../../standards/index";
import { defineRule } from "../rule";

/** rows of words that are looked through */
const MOST_ROWS = 200;

export default defineRule({
  code: "STANDARD103",
  name: "another-document-named",
  severity: "doubtful",
  docs: {
    summary: "A title or note names another document or edition than the one that the check goes by.",
    why: "Formulas, formers, steps and masses differ between documents and editions. Until it is said which is meant, no change of the steel is offered.",
    failing: [
      {
        rows: [{ size: "H16", shape: "00", A: 1000, length: 1000 }],
        foot: [{ remark: "scheduled to BS 8666:2020" }],
      },
    ],
    passing: [
      {
        rows: [{ size: "H16", shape: "00", A: 1000, length: 1000 }],
        foot: [{ remark: "scheduled to BS 8666:2005" }],
      },
    ],
  },
  messages: {
    named:
      'the sheet names {meant} ("{typed}"), and the check goes by {standard}: choose {meant} and check again, or waive this if {standard} is right; until then no change of the steel is offered',
    words:
      'the sheet calls itself "{typed}", as lists by {meant} do, and nobody chose {standard}, which the check goes by: choose {meant} and check again, or choose {standard} if it is right; until then no change of the steel is offered',
    chosen: 'the sheet names {meant} ("{typed}"), and {standard} was chosen for the check',
  },
  checkSheet(sheet, { standard, isStandardAssumed }, report) {
    const said = namedOn(sheet, standard.id);
    if (said === null) return;
    const { id, typed, isNamed, row, column } = said;
    if (!isNamed && !isStandardAssumed) return;
    report({
      messageId: isNamed ? (isStandardAssumed ? "named" : "chosen") : "words",
      outcome: "unsure",
      // asked once, of the first sheet that names it; what a list calls itself is a hint and names nothing
      ...(isStandardAssumed && isNamed && !isNamedBefore(sheet, standard.id, id)
        ? {}
        : { severity: "note" as const }),
      place: { row, column },
      values: { meant: id, typed, standard: standard.id },
    });
  },
});

function isNamedBefore(sheet: SheetFacts, inForce: string, id: string): boolean {
  const { sheets } = sheet.book;
  return sheets.slice(0, Math.max(0, sheets.indexOf(sheet))).some((before) => {
    const said = namedOn(before, inForce);
    return said?.isNamed === true && said.id === id;
  });
}

/** The first document named that contradicts the one in force; null where none does, or that one is named too. */
function namedOn(
  { sheet, reading }: SheetFacts,
  inForce: string,
): (DocumentNamed & { readonly row: number; readonly column: number }) | null {
  let first: (DocumentNamed & { readonly row: number; readonly column: number }) | null = null;
  let looked = 0;
  for (const [row, rowClass] of reading.rowClasses.entries()) {
    if (rowClass !== "note" && rowClass !== "heading") continue;
    looked += 1;
    if (looked > MOST_ROWS) break;
    for (let column = 0; column < sheet.columnCount; column += 1) {
      const cell = sheet.cell(row, column);
      if (typeof cell !== "string") continue;
      for (const named of documentsNamed(cell)) {
        if (named.isNamed && !contradicts(named.id, inForce)) return null;
        const isBetter = first === null || (named.isNamed && !first.isNamed);
        if (isBetter && contradicts(named.id, inForce)) first = { ...named, row, column };
      }
    }
  }
  return first;
}
