import { BarFacts } from "../../../core/bar/bar-facts";
import { SheetFacts } from "../../../core/bar/sheet-facts";
import { type Cell, sheetFromRows } from "../../../core/schedule";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { Workshop } from "../../../core/shop";
import { resolveStandard, type Standard } from "../../../core/standards";
import { scheduleHead, type Ticket } from "../../../core/tickets";
import { makeTicket } from "../../../core/tickets/make-ticket";

export const BS8666 = resolveStandard("BS8666:2005") as Standard;

/** What a Shop sheet heads its benders with. */
export const BENDER_HEADS: readonly Cell[] = [
  "Machine",
  "Largest angle",
  "Guard radius mm",
  "Orbit radius mm",
  "Back-rest distance mm",
  "Pins mm",
  "Formers in the rack mm",
];

/** A yard of our own: one bender that is wholly written down, one of which nothing is. */
export const SHOP: readonly (readonly Cell[])[] = [
  BENDER_HEADS,
  ["Bench 2", 190, 2500, 130, 90, "40", "40, 48, 64, 140"],
  ["Old one", null, null, null, null, null, null],
  [],
  ["Machine", "Work", "Size", "Grade MPa", "Bars at once"],
  ["Bench 2", "bend", "H16", 500, 2],
  ["Bench 2", "bend", "H20", 500, 1],
  ["Shear 1", "cut", "H16", 500, 3],
  [],
  ["Date", "Machine", "Size", "Former", "Grade", "Form", "Heat", "Bent to", "Released"],
  ["2031-02-03", "Bench 2", "H16", 64, "H", "bar", "A7", 90, 84],
  ["2031-02-04", "Bench 2", "H16", 64, "H", "bar", "A7", 96, 89.5],
  ["2031-02-05", "Bench 2", "H16", 64, "H", "bar", "B1", 96, 90],
];
export const EMPTY_LOG = SHOP.slice(0, 9);

export const HEADER: readonly Cell[] = [
  "Member",
  "Bar mark",
  "Type and size",
  "No. of members",
  "No. in each",
  "Total no.",
  "Length mm",
  "Shape code",
  "A",
  "B",
  "C",
  "D",
  "E/r",
  "Rev",
  "Pour",
  "Former mm",
];

/** The tickets of a schedule's rows under the usual header. */
export function ticketsOf(
  rows: readonly (readonly Cell[])[],
  shop: readonly (readonly Cell[])[] | null = SHOP,
  standard = BS8666,
  isHiddenRow: (row: number) => boolean = () => false,
): Ticket[] {
  const cells = sheetFromRows("Schedule", [
    ["Job: Otter Weir", null, "Schedule ref: OW-3", null, "Revision: C"],
    HEADER,
    ...rows,
  ]);
  const sheet = { ...cells, isHiddenRow };
  const reading = readSchedule(sheet, standard);
  const shopSheet =
    shop === null
      ? null
      : sheetFromRows(
          "Shop",
          shop.map((row) => [...row]),
        );
  const workshop = new Workshop(shopSheet, standard);
  const facts = new SheetFacts(sheet, reading);
  return reading.bars.map((bar) =>
    makeTicket({
      facts: new BarFacts(bar, facts, standard),
      workshop,
      head: scheduleHead(reading),
      findings: [],
    }),
  );
}
