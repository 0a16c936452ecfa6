import { type CuttingPlan, cutList, planCutting, type Stock } from "../../core/cutting";
import type { ScheduleReading } from "../../core/schedule";
import { isShopSheet, type Shop } from "../../core/shop";
import type { Standard } from "../../core/standards";
import { scheduleHead } from "../../core/tickets";
import { fromMillimetres } from "../../core/units/convert-length";
import { isRefusal, type Refusal, refusalText } from "../../core/units/refusal";
import { cutListPage } from "../print/cut-list-page";
import type { ScheduleHead } from "../print/print-page";
import type { Command } from "./command";
import { InputRefused } from "./input-refused";
import { openBook } from "./open-book";
import { type ReadPiece, readPieceList } from "./read-piece-list";
import { type ReadSheet, readSchedules, readSheets, sayPassedOver } from "./read-schedules";
import { readShopSheet } from "./read-shop-sheet";
import { rowMasses } from "./row-mass";
import { standardFor } from "./standard-for";
import { stockSupply } from "./stock-supply";
import type { Streams } from "./streams";
import { refuseTarget } from "./write-copy";
import { writePage } from "./write-page";

/** ms for all sizes together */
const TIME = 2_000;

/** `cutplan BOOK`: which stock bars to buy and how to cut them, size by size, with the bound. */
export const cutplan: Command = {
  name: "cutplan",
  usage: "cutplan BOOK [--stock 12000,9000] [--out FILE.html] [--sheet NAME] [--json]",
  summary: "cutting plan from stock lengths, and the bound no plan can beat",
  options: {
    stock: { type: "string" },
    out: { type: "string" },
    sheet: { type: "string" },
    standard: { type: "string" },
    json: { type: "boolean" },
  },
  async run(given, streams) {
    const [path, more] = given.positionals;
    if (path === undefined || more !== undefined) throw new InputRefused("name one .xlsx or .csv file");
    const target = given.text("out");
    if (target !== null) refuseTarget(path, target);
    const book = openBook(path);
    const standard = standardFor(given.text("standard"), book.setting("Barwright.Standard"));
    const { shop } = readShopSheet(book, standard, streams);
    const only = given.text("sheet");
    const sheets = readSheets(book, only).filter((sheet) => only !== null || !isShopSheet(sheet.name));
    const read = readSchedules(book, sheets, standard, streams);
    const groups = groupBySize(readPieces(read, standard, streams));
    if (groups.size === 0) throw new InputRefused("no piece to cut was found: lengths and counts are blank");
    const supply = stockSupply(given.text("stock"), shop, standard, streams);
    const plans = [...groups].map(([size, pieces]): PlannedGroup => {
      const stock = supply.stockOf(size);
      const { endCrop, kerf } = supply;
      const plan = planCutting({ pieces, stock, endCrop, kerf, timeLimit: TIME / groups.size });
      if (isRefusal(plan)) throw new InputRefused(refusedPlan(size, pieces, plan));
      return { size, pieces, stock, plan };
    });
    const out = (mm: number): number => Number(fromMillimetres(mm, standard.unit).toPrecision(12));
    if (target !== null) {
      writePage(path, target, cutListPage(plans.map(listOf(shop)), headOf(read[0]?.reading, standard)));
      streams.note(`written: ${target}`);
    }
    if (given.flag("json")) {
      streams.result(JSON.stringify({ groups: plans.map((group) => jsonGroup(group, out)) }));
    } else for (const { size, plan } of plans) printPlan(size, plan, out, streams);
    return 0;
  },
};

interface PlannedGroup {
  readonly size: string;
  readonly pieces: readonly ReadPiece[];
  readonly stock: readonly Stock[];
  readonly plan: CuttingPlan;
}

/** mm from which a rest goes back to the rack where the Shop sheet names no length: common practice */
const LEAST_REMNANT = 1000;

function listOf(shop: Shop | null) {
  return ({ size, pieces, plan }: PlannedGroup) => ({
    size: size === "" ? "not said" : size,
    plan,
    rows: cutList(
      plan,
      pieces.map(({ mark, length, count }) => ({ mark: mark === "" ? "no mark" : mark, length, count })),
      shop?.limits.leastRemnant ?? LEAST_REMNANT,
    ),
  });
}

function headOf(reading: ScheduleReading | undefined, standard: Standard): ScheduleHead {
  const head = reading === undefined ? null : scheduleHead(reading);
  return {
    job: head?.job ?? null,
    schedule: head?.schedule ?? null,
    revision: head?.revision ?? null,
    standard: standard.id,
  };
}

/** The reason with the size, and the marks that are too long. */
function refusedPlan(size: string, pieces: readonly ReadPiece[], refusal: Refusal): string {
  const { length } = refusal.values;
  const marks = pieces
    .filter((piece) => piece.length === length && piece.mark !== "")
    .map(({ mark }) => mark);
  const of = marks.length === 0 ? "" : ` (mark ${[...new Set(marks)].join(", ")})`;
  return `${size === "" ? "" : `${size}: `}${refusalText(refusal)}${of}`;
}

function readPieces(sheets: readonly ReadSheet[], standard: Standard, streams: Streams): ReadPiece[] {
  const lists = sheets.map((read) => ({
    read,
    // whoever corrected a column had it read as a schedule
    pieces: isCorrected(read.reading) ? null : readPieceList(read.sheet, standard.unit),
  }));
  const listed = lists.flatMap(({ pieces }) => pieces ?? []);
  const schedules = lists.filter(({ pieces }) => pieces === null).map(({ read }) => read);
  if (listed.length > 0 && schedules.length === 0) return listed;
  if (listed.length === 0) sayPassedOver(schedules, streams);
  let unknown = 0;
  for (const { sheet, reading } of schedules) {
    rowMasses(sheet, reading, standard).forEach((row, index) => {
      const bar = reading.bars[index]!;
      // what the schedule says is cut, where it says a length
      const length = bar.length ?? row?.cutLength ?? null;
      if (row === null || length === null || row.count === null) unknown += 1;
      else listed.push({ size: row.size, mark: bar.mark ?? "", length, count: row.count });
    });
  }
  if (unknown > 0)
    streams.note(`${unknown} bar rows without a cut length or a count: they are not in the plan`);
  return listed;
}

function isCorrected({ tables }: ScheduleReading): boolean {
  return tables.some(({ columns }) => [...columns.values()].some(({ corrected }) => corrected === true));
}

function groupBySize(pieces: readonly ReadPiece[]): Map<string, ReadPiece[]> {
  const groups = new Map<string, ReadPiece[]>();
  for (const piece of pieces) {
    if (piece.count === 0) continue;
    const group = groups.get(piece.size);
    if (group === undefined) groups.set(piece.size, [piece]);
    else group.push(piece);
  }
  return groups;
}

function jsonGroup({ size, stock, plan }: PlannedGroup, out: (mm: number) => number) {
  return {
    size,
    stock: [...new Set(stock.map(({ length }) => out(length)))],
    bars: plan.bars,
    stockLength: out(plan.stockLength),
    lowerBound: plan.boundIn === "bars" ? plan.lowerBound : out(plan.lowerBound),
    pieces: plan.pieces,
    wasteRatio: plan.wasteRatio,
    patterns: plan.patterns.map((pattern) => ({
      stock: out(pattern.stock),
      cuts: pattern.cuts.map(({ length, count }) => ({ length: out(length), count })),
      times: pattern.times,
    })),
  };
}

function printPlan(size: string, plan: CuttingPlan, out: (mm: number) => number, streams: Streams): void {
  const got = plan.boundIn === "bars" ? plan.bars : out(plan.stockLength);
  const bound = plan.boundIn === "bars" ? plan.lowerBound : out(plan.lowerBound);
  const proof = plan.provenLeast ? "proven least" : `no plan needs less than ${bound}`;
  const waste = (plan.wasteRatio * 100).toFixed(1);
  const name = size === "" ? "all pieces" : size;
  streams.result(
    `${name}: ${plan.bars} bars for ${plan.pieces} pieces, ${waste} % left over; ${got}, ${proof}`,
  );
  for (const { stock, cuts, times, offcut } of plan.patterns) {
    const words = cuts.map(({ length, count }) => `${count} x ${out(length)}`).join(" + ");
    streams.result(`  ${times} x ${out(stock)}: ${words}, rest ${out(offcut)}`);
  }
}
