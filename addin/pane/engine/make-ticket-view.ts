import type { BarRow } from "../../../core/schedule/bar-row";
import { cellAddress } from "../../../core/schedule/cell-address";
import { lineWords } from "../../../core/schedule/line-words";
import type { Sheet } from "../../../core/schedule/sheet";
import { unreadRows } from "../../../core/schedule/unread-rows";
import { barDrawing } from "../../../core/shapes/bar-drawing";
import { barSvg } from "../../../core/shapes/bar-svg";
import { Workshop } from "../../../core/shop";
import { type Ticket, type TicketBend, ticketsOfAudit } from "../../../core/tickets";
import { printMass } from "../../../core/units/print-mass";
import { heatWords } from "../../print/heat-words";
import { setLength } from "../../print/set-length";
import { tooTightWords } from "../../print/too-tight-words";
import { trialWords } from "../../print/trial-words";
import type { BendView, MarkView, TicketView, TrialOfBar } from "./bench-view";
import { heatsOf } from "./heats-of";
import { barsRead, type KeptCheck } from "./kept-check";

/** The marks of a checked sheet in its order, those that are not to be made with the reason. */
export function markViews(kept: KeptCheck): readonly MarkView[] {
  const { sheet, audit } = kept;
  const reading = barsRead(kept);
  const { unit } = audit.report.standard;
  const bars = reading.bars.map((bar): MarkView => {
    const { row, mark, member, pour, size, sizeTyped, length } = bar;
    const parts = [size?.typed ?? sizeTyped, length === null ? null : setLength(length, unit)];
    return {
      ...placed(sheet, row),
      mark: mark ?? lineWords(sheet, row),
      member,
      pour,
      what: parts.filter((part) => part !== null).join(", "),
      gone: goneWords(bar, lineWords(sheet, row)),
    };
  });
  const column = reading.tables[0]?.columns.get("mark")?.column;
  const unread = column === undefined ? [] : unreadRows(reading);
  return [
    ...bars,
    ...unread.map(({ row, reason }): MarkView => {
      const gone = `${lineWords(sheet, row)} is left out: ${reason}`;
      const mark = String(sheet.cell(row, column as number) ?? "").trim();
      return { ...placed(sheet, row), mark, member: null, pour: null, what: "", gone };
    }),
  ];
}

const placed = (sheet: Sheet, row: number): Pick<MarkView, "row" | "cell"> => ({
  row: sheet.top + row + 1,
  cell: cellAddress(sheet, row, -sheet.left),
});

function goneWords({ struckThrough, superseded, supersededBy }: BarRow, place: string): string | null {
  if (struckThrough) return `${place} is struck through`;
  if (superseded !== true) return null;
  return supersededBy == null
    ? `${place} says itself that it is void`
    : `${place} is superseded by revision ${supersededBy.revision}`;
}

/** The ticket of one row, the sheet's own from 1; null where it is no bar, or one that is not to be made. */
export function ticketView(kept: KeptCheck, row: number): TicketView | null {
  const {
    audit: { report },
    sheet,
    shop,
  } = kept;
  const [audited, ...others] = report.sheets;
  const bar = barsRead(kept).bars.find((each) => sheet.top + each.row + 1 === row);
  if (audited === undefined || bar === undefined) return null;
  const reading = { ...audited.reading, bars: [bar] };
  const workshop = new Workshop(shop, report.standard);
  const of = { ...report, sheets: [{ ...audited, reading }, ...others] };
  const [ticket] = ticketsOfAudit(of, [sheet], workshop, heatsOf(kept)).tickets;
  return ticket === undefined ? null : viewOf(ticket, workshop);
}

const FRAME = { width: 330, height: 190 };
const HOLDS: ReadonlySet<string> = new Set(["unsafe", "unbendable"]);

function viewOf(ticket: Ticket, workshop: Workshop): TicketView {
  const { mark, count, size, grade, cut, unit, bends, warnings, drawing } = ticket;
  const steel = grade.name ?? `grade not said, ${grade.yield} MPa taken`;
  const place = [ticket.member, ticket.pour === null ? null : `pour ${ticket.pour}`, shapeWords(ticket)];
  const drawn =
    drawing === null
      ? null
      : barDrawing({
          ...drawing,
          frame: FRAME,
          ...(unit === "in" ? { write: (mm: number) => setLength(mm, unit) } : {}),
        });
  return {
    row: ticket.row,
    mark: mark ?? "no mark",
    what: `${count ?? "?"} \u00d7 ${size}, ${steel}`,
    place: place.filter((part) => part !== null).join(", "),
    remark: ticket.remark,
    cut: cut === null ? "?" : setLength(cut.length, unit),
    svg:
      drawn === null
        ? null
        : barSvg(drawn, { width: drawn.width, height: drawn.height, title: `mark ${mark ?? ""}` }),
    facts: facts(ticket),
    bends: bends.map((bend, index) => bendView(bend, index, unit)),
    words: words(ticket),
    holds: warnings.filter(({ severity }) => HOLDS.has(severity)).map(warningWords),
    warnings: warnings.filter(({ severity }) => !HOLDS.has(severity)).map(warningWords),
    cautions: ticket.cautions.map(({ text }) => text),
    trial: trialOf(ticket, workshop),
  };
}

const warningWords = ({ severity, unsure, text }: Ticket["warnings"][number]): string =>
  `${unsure ? "perhaps " : ""}${severity}: ${text}`;

function shapeWords({ shape, shapeWords: said }: Ticket): string | null {
  if (shape === null) return null;
  return said === null ? `shape ${shape}` : `shape ${shape}, ${said}`;
}

function facts(ticket: Ticket): TicketView["facts"] {
  const { unit, formers, heats, machine, massEach, massTotal, swingRadius, bendsAtOnce } = ticket;
  const length = (mm: number): string => setLength(mm, unit);
  const formerWords = ({ diameter, below }: Ticket["formers"][number]): string =>
    length(diameter) + (below === null ? "" : `, ${tooTightWords(below, unit)}`);
  const lines: { name: string; value: string }[] = [];
  if (formers.length > 0) {
    lines.push({ name: "Former", value: formers.map(formerWords).join(", ") });
    lines.push({ name: "Machine", value: machine.name ?? `none sure: ${machine.reasons.join("; ")}` });
    if (bendsAtOnce?.bars != null) lines.push({ name: "At once", value: String(bendsAtOnce.bars) });
    lines.push({
      name: "Keep clear",
      value: swingRadius === null ? "swing not known" : `${length(Math.ceil(swingRadius))} about the former`,
    });
  }
  if (heats.length > 0)
    lines.push({ name: "Heat", value: heatWords(heats.map(({ heat, pieces }) => ({ heat, bars: pieces }))) });
  if (massEach !== null) lines.push({ name: "Mass", value: massWords(massEach, massTotal, unit) });
  return lines;
}

function massWords(each: number, total: number | null, unit: Ticket["unit"]): string {
  const all = total === null ? "" : `, ${printMass(total, unit)} in all`;
  return `${printMass(each, unit)} each${all}`;
}

function bendView(bend: TicketBend, index: number, unit: Ticket["unit"]): BendView {
  const before = [
    bend.turnedOver ? "turn the bar over" : null,
    bend.endForEnd ? "turn it end for end" : null,
    ...bend.notes.map((note) => `careful: ${note}`),
  ];
  const { angle, low, high } = bend.compensated;
  const { distance, fromBend, face } = bend.fromHeld;
  const from = fromBend === null ? bend.held : `the ${face ? "face" : "corner"} of bend ${fromBend}`;
  return {
    step: String(index + 1),
    before: before.filter((part) => part !== null).join(", "),
    stop: `${setLength(distance, unit)} from ${from}`,
    wanted: degrees(Math.abs(bend.turn)),
    bendTo: angle === null ? null : degrees(angle),
    released: angle === null || low === null || high === null ? null : `${degrees(low)} to ${degrees(high)}`,
  };
}

const degrees = (value: number): string => `${Number.isInteger(value) ? value : value.toFixed(1)}\u00b0`;

function words({ bends, order, machine }: Ticket): readonly string[] {
  const said = new Set<string>();
  if (order.kind === "unsure") said.add(`Order not found: ${order.reason}`);
  if (order.kind === "blocked")
    for (const reason of order.reasons) said.add(`Not on ${order.machine}: ${reason}`);
  if (order.kind === "found" && !order.confirmed)
    said.add("Not confirmed: try one bar, and stop where it meets tools or itself");
  for (const { compensated } of bends) {
    said.add(
      compensated.refusal === null ? `The angles rest on ${trialWords(compensated)}` : compensated.refusal,
    );
  }
  for (const reason of machine.name === null ? machine.reasons : []) said.add(reason);
  return [...said];
}

function trialOf(ticket: Ticket, { shop }: Workshop): TrialOfBar | null {
  if (ticket.formers.length === 0) return null;
  const { unit } = ticket;
  return {
    machine: ticket.machine.name,
    machines: shop.benders.map(({ name }) => name),
    size: ticket.size,
    // a size's letter says it again in the log, where a name of several grades could not be read
    grade: /,| or /.test(ticket.grade.name ?? "") ? null : ticket.grade.name,
    formers: [...new Set(ticket.formers.map(({ diameter }) => setLength(diameter, unit)))],
  };
}
