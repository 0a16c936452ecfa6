import { type CuttingPlan, planCutting, type Stock } from "../../core/cutting";
import { readSchedule, type Sheet } from "../../core/schedule";
import type { Standard } from "../../core/standards";
import { fromMillimetres } from "../../core/units/convert-length";
import { parseLength } from "../../core/units/parse-length";
import { isRefusal, refusalText } from "../../core/units/refusal";
import type { Command } from "./command";
import { InputRefused } from "./input-refused";
import { openBook } from "./open-book";
import { type ReadPiece, readPieceList } from "./read-piece-list";
import { readSheets, sayPassedOver } from "./read-schedules";
import { rowMasses } from "./row-mass";
import { standardFor } from "./standard-for";
import type { Streams } from "./streams";

/** ms for all sizes together */
const TIME = 2_000;

/** `cutplan BOOK`: which stock bars to buy and how to cut them, size by size, with the bound. */
export const cutplan: Command = {
  name: "cutplan",
  usage: "cutplan BOOK [--stock 12000,9000] [--sheet NAME] [--standard ID] [--json]",
  summary: "cutting plan from stock lengths, and the bound no plan can beat",
  options: {
    stock: { type: "string" },
    sheet: { type: "string" },
    standard: { type: "string" },
    json: { type: "boolean" },
  },
  async run(given, streams) {
    const [path, more] = given.positionals;
    if (path === undefined || more !== undefined) throw new InputRefused("name one .xlsx or .csv file");
    const book = openBook(path);
    const standard = standardFor(given.text("standard"), book.setting("Barwright.Standard"));
    const stock = readStock(given.text("stock"), standard);
    const groups = groupBySize(readPieces(readSheets(book, given.text("sheet")), standard, streams));
    if (groups.size === 0) throw new InputRefused("no piece to cut was found: lengths and counts are blank");
    const plans = [...groups].map(([size, pieces]) => {
      const plan = planCutting({ pieces, stock, endCrop: 0, kerf: 0, timeLimit: TIME / groups.size });
      if (isRefusal(plan)) throw new InputRefused(`${size === "" ? "" : `${size}: `}${refusalText(plan)}`);
      return { size, plan };
    });
    const out = (mm: number): number => Number(fromMillimetres(mm, standard.unit).toPrecision(12));
    if (given.flag("json")) {
      const lengths = stock.map(({ length }) => out(length));
      streams.result(
        JSON.stringify({ groups: plans.map(({ size, plan }) => jsonGroup(size, plan, lengths, out)) }),
      );
    } else for (const { size, plan } of plans) printPlan(size, plan, out, streams);
    return 0;
  },
};

function readStock(option: string | null, standard: Standard): Stock[] {
  const held = standard.supply.stockLength;
  if (option === null) {
    if (held === null)
      throw new InputRefused(`${standard.id} names no stock length: give --stock 12000,9000`);
    return [{ length: held.value, count: null, remnant: false }];
  }
  return option.split(",").map((text) => {
    const length = parseLength(text.trim(), standard.unit);
    if (isRefusal(length)) throw new InputRefused(`--stock: ${refusalText(length)}`);
    return { length, count: null, remnant: false };
  });
}

function readPieces(sheets: readonly Sheet[], standard: Standard, streams: Streams): ReadPiece[] {
  const lists = sheets.map((sheet) => ({ sheet, pieces: readPieceList(sheet, standard.unit) }));
  const listed = lists.flatMap(({ pieces }) => pieces ?? []);
  const schedules = lists.filter(({ pieces }) => pieces === null).map(({ sheet }) => sheet);
  if (listed.length > 0 && schedules.length === 0) return listed;
  const read = schedules.map((sheet) => ({ sheet, reading: readSchedule(sheet, standard) }));
  if (listed.length === 0) sayPassedOver(read, streams);
  let unknown = 0;
  for (const { sheet, reading } of read) {
    rowMasses(sheet, reading, standard).forEach((row) => {
      if (row === null || row.cutLength === null || row.count === null) unknown += 1;
      else listed.push({ size: row.size, length: row.cutLength, count: row.count });
    });
  }
  if (unknown > 0)
    streams.note(`${unknown} bar rows without a cut length or a count: they are not in the plan`);
  return listed;
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

function jsonGroup(size: string, plan: CuttingPlan, stock: readonly number[], out: (mm: number) => number) {
  return {
    size,
    stock,
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
