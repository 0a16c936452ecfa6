import {
  type NotInTotal,
  namedGroups,
  type ReckonedTonnage,
  reckonTonnage,
  type Tonnage,
  tonnageNotes,
} from "../../core/totals";
import type { Command } from "./command";
import { InputRefused } from "./input-refused";
import { openBook } from "./open-book";
import { type ReadSheet, readSchedules, readSheets, sayPassedOver } from "./read-schedules";
import { standardFor } from "./standard-for";
import type { Streams } from "./streams";

/** `tonnage BOOK`: tonnes by pour and size over every schedule of a file. */
export const tonnage: Command = {
  name: "tonnage",
  usage: "tonnage BOOK [--sheet NAME] [--standard ID] [--json]",
  summary: "tonnes by pour and size",
  options: { sheet: { type: "string" }, standard: { type: "string" }, json: { type: "boolean" } },
  async run(given, streams) {
    const [path, more] = given.positionals;
    if (path === undefined || more !== undefined) throw new InputRefused("name one .xlsx or .csv file");
    const book = openBook(path);
    const standard = standardFor(given.text("standard"), book.setting("Barwright.Standard"));
    const read = readSchedules(book, readSheets(book, given.text("sheet")), standard, streams);
    sayPassedOver(read, streams);
    const reckoned = reckonTonnage(read, standard);
    for (const note of tonnageNotes(reckoned)) streams.note(note);
    const held = heldBack(read);
    if (given.flag("json")) streams.result(JSON.stringify(jsonTonnage(reckoned, held)));
    else if (held !== null) streams.result(`no totals: ${held}`);
    else printTonnage(namedGroups(reckoned), reckoned.groupedBy, streams);
    return 0;
  },
};

/** Why no total is given, where a sheet may not be read right. */
function heldBack(read: readonly ReadSheet[]): string | null {
  const held = read.flatMap(({ sheet, reading }) =>
    reading.held === null ? [] : [`sheet "${sheet.name}": ${reading.held.reason}`],
  );
  return held.length === 0 ? null : held.join("; ");
}

function jsonTonnage({ tonnage, groupedBy, notInTotal }: ReckonedTonnage, held: string | null) {
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
