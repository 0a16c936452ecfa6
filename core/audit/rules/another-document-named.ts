import type { BarFacts } from "../../bar/bar-facts";
import { type NamedInCell, namedInCells } from "../../bar/named-in-cells";
import type { SheetFacts } from "../../bar/sheet-facts";
import { contradicts, DEFAULT_STANDARD_ID, resolveStandard } from "../../standards/index";
import { isRefusal } from "../../units/refusal";
import { defineRule } from "../rule";

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
    otherBars:
      'the sheet names {meant} ("{typed}"), which does not hold the sizes of its bars, so that the check goes by {standard}: choose the document that the bars are of; until then no change of the steel is offered',
    words:
      'the sheet calls itself "{typed}", as lists by {meant} do, and nobody chose {standard}, which the check goes by: choose {meant} and check again, or choose {standard} if it is right; until then no change of the steel is offered',
    followed:
      'nobody chose a standard, and the sheet names {standard} ("{typed}"): the check goes by it; functions that are given no standard go by {fallback} until one is chosen',
    chosen: 'the sheet names {meant} ("{typed}"), and {standard} was chosen for the check',
  },
  checkSheet(sheet, { standard, isStandardAssumed, isStandardNamed }, report) {
    if (isStandardNamed) {
      const naming = firstNaming(sheet, standard.id);
      if (naming === null) return;
      const { typed, row, column } = naming;
      report({
        messageId: "followed",
        outcome: "unsure",
        severity: "note",
        place: { row, column },
        values: { standard: standard.id, typed, fallback: DEFAULT_STANDARD_ID },
      });
      return;
    }
    const said = namedOn(sheet, standard.id);
    if (said === null) return;
    const { id, typed, isNamed, row, column } = said;
    if (!isNamed && !isStandardAssumed) return;
    const isOfOtherBars = isNamed && isStandardAssumed && hasOtherBars(sheet, id);
    const named = isOfOtherBars ? "otherBars" : isStandardAssumed ? "named" : "chosen";
    report({
      messageId: isNamed ? named : "words",
      outcome: "unsure",
      // asked once, of the first sheet that names it; what a list calls itself is a hint and names nothing, and a
      // document named for its hooks or laps alone cannot be followed
      ...(isStandardAssumed && isNamed && !isOfOtherBars && !isNamedBefore(sheet, standard.id, id)
        ? {}
        : { severity: "note" as const }),
      place: { row, column },
      values: { meant: id, typed, standard: standard.id },
    });
  },
});

/** Where the first sheet of the book that names the standard in force does so; null on the other sheets. */
function firstNaming(sheet: SheetFacts, inForce: string): NamedInCell | null {
  for (const one of sheet.book.sheets)
    for (const named of namedInCells(one.sheet, one.reading))
      if (named.isNamed && named.id === inForce) return one === sheet ? named : null;
  return null;
}

/** Most sizes are read by the document in force and not by the one named. */
function hasOtherBars({ answers }: SheetFacts, named: string): boolean {
  return answers.those(isAbroad, named).length * 2 > answers.length;
}

function isAbroad({ row, standard }: BarFacts, id: string): true | null {
  const named = resolveStandard(id);
  if (row.sizeTyped === null || isRefusal(named)) return null;
  return isRefusal(named.readSize(row.sizeTyped)) && !isRefusal(standard.readSize(row.sizeTyped))
    ? true
    : null;
}

function isNamedBefore(sheet: SheetFacts, inForce: string, id: string): boolean {
  const { sheets } = sheet.book;
  return sheets.slice(0, Math.max(0, sheets.indexOf(sheet))).some((before) => {
    const said = namedOn(before, inForce);
    return said?.isNamed === true && said.id === id;
  });
}

/** The first document named that contradicts the one in force; null where none does, or that one is named too. */
function namedOn({ sheet, reading }: SheetFacts, inForce: string): NamedInCell | null {
  let first: NamedInCell | null = null;
  for (const named of namedInCells(sheet, reading)) {
    if (!contradicts(named.id, inForce)) {
      if (named.isNamed) return null;
    } else if (first === null || (named.isNamed && !first.isNamed)) first = named;
  }
  return first;
}
