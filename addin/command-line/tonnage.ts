import { openForJob, readSchedules, tonnageOf } from "../../core/jobs";
import { type NotInTotal, namedGroups, type ReckonedTonnage, type Tonnage } from "../../core/totals";
import { answerOf } from "./answer-of";
import { bookAsked } from "./book-asked";
import type { Command } from "./command";
import { STANDARD_OPTIONS } from "./standard-for";
import type { Streams } from "./streams";

/** `tonnage BOOK`: tonnes by pour and size over every schedule of a file. */
export const tonnage: Command = {
  name: "tonnage",
  usage: "tonnage BOOK [--sheet NAME] [--standard ID] [--own FILE] [--json]",
  summary: "tonnes by pour and size",
  options: { sheet: { type: "string" }, ...STANDARD_OPTIONS, json: { type: "boolean" } },
  async run(given, streams) {
    const { book, question } = bookAsked(given, streams);
    const read = answerOf(readSchedules(answerOf(openForJob(book, question))));
    const { reckoned, notes } = tonnageOf([read]);
    for (const note of [...read.notes, ...notes]) streams.note(note);
    if (given.flag("json")) streams.result(JSON.stringify(jsonTonnage(reckoned)));
    else if (reckoned.held !== null) streams.result(`no totals: ${reckoned.held}`);
    else printTonnage(namedGroups(reckoned), reckoned.groupedBy, streams);
    return 0;
  },
};

function jsonTonnage({ tonnage, groupedBy, notInTotal, held }: ReckonedTonnage) {
  const { unit, rows } = tonnage;
  const pours = held === null ? tonnage.pours : [];
  const bySize = held === null ? tonnage.bySize : new Map<string, number>();
  const total = held === null ? tonnage.total : null;
  return {
    unit,
    pours: pours.map((pour) => ({ pour: pour.pour, bySize: plainObject(pour.bySize), total: pour.total })),
    bySize: plainObject(bySize),
    total,
    rows,
    groupedBy,
    held,
    notInTotal: notInTotal.map(({ sheet, row, cell, why }: NotInTotal) => ({ sheet, row, cell, why })),
  };
}

/** Own properties only, whatever a size is called. */
function plainObject(map: ReadonlyMap<string, number>): Record<string, number> {
  return Object.fromEntries(map);
}

function printTonnage(totals: Tonnage, groupedBy: string, streams: Streams): void {
  const sizes = [...totals.bySize.keys()];
  const rows = [
    [groupedBy, ...sizes, "total, t"],
    ...totals.pours.map(({ pour, bySize, total }) => [
      pour,
      ...sizes.map((size) => tonnes(bySize.get(size))),
      tonnes(total),
    ]),
    ["total", ...sizes.map((size) => tonnes(totals.bySize.get(size))), tonnes(totals.total)],
  ];
  const widths = rows[0]!.map((_, column) => Math.max(...rows.map((row) => row[column]!.length)));
  for (const row of rows) {
    const cells = row.map((cell, column) =>
      column === 0 ? cell.padEnd(widths[column]!) : cell.padStart(widths[column]!),
    );
    streams.result(cells.join("  ").trimEnd());
  }
}

function tonnes(value: number | undefined): string {
  return value === undefined ? "" : value.toFixed(3);
}
