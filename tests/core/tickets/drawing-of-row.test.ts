import { describe, expect, it } from "vitest";
import { BarFacts } from "../../../core/bar/bar-facts";
import { SheetFacts } from "../../../core/bar/sheet-facts";
import { type Cell, sheetFromRows } from "../../../core/schedule";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { Workshop } from "../../../core/shop";
import { scheduleHead } from "../../../core/tickets";
import { makeTicket } from "../../../core/tickets/make-ticket";
import { BS8666 } from "./ticket-sheets";

// an invented list in which each row names its drawing; the heading's words are common practice
const listUnder = (heading: string): readonly (readonly Cell[])[] => [
  ["Job", "Otter Weir"],
  ["Drawing no.", "S-200"],
  ["Bar mark", "Size", "No.", "Length mm", "Shape code", "A", "B", heading],
  ["01", "H16", 20, 975, "11", 600, 400, "S-201"],
  ["02", "H16", 12, 3000, "00", null, null, "S-204"],
  ["03", "H12", 8, 2500, "00", null, null, null],
];

const drawingsUnder = (heading: string) => {
  const sheet = sheetFromRows("List", listUnder(heading));
  const reading = readSchedule(sheet, BS8666);
  const facts = new SheetFacts(sheet, reading);
  const workshop = new Workshop(null, BS8666);
  return reading.bars.map(
    (row) =>
      makeTicket({
        facts: new BarFacts(row, facts, BS8666),
        workshop,
        head: scheduleHead(reading),
        findings: [],
      }).head.drawing,
  );
};

describe("makeTicket: the drawing of a bar", () => {
  it.each(["Drawing", "DRG No.", "Dwg", "Plan-Nr.", "Чертеж", "图号"])(
    "should be the one that its row names under %s, else the title's",
    (heading) => expect(drawingsUnder(heading)).toEqual(["S-201", "S-204", "S-200"]),
  );
});
