import { excelWorkbook } from "../../addin/excel/excel-workbook";
import { readDefaultStandardBy } from "../../addin/functions/default-standard";
import { runAudit } from "../../core/audit/run-audit";
import { resolveStandard } from "../../core/standards/index";
import { isRefusal } from "../../core/units/refusal";
import { type OpenExcel, openInJsdom } from "../_support/office-host/open-in-jsdom";
import type { Bench } from "./bench";
import { seededSchedule } from "./seeded-schedule";

const ROWS = 10_000;
const FLAGGED = ROWS / 20;

const bench: Bench = {
  name: "Excel: the real Office.js with the fake host behind it, in Node",
  async run() {
    const open = await openInJsdom();
    await import("../../addin/functions/associate-functions");
    readDefaultStandardBy(async () => null);
    const figures = { ...(await checkFigures(open)), ...(await functionFigures(open)) };
    open.close();
    return { figures };
  },
};

export default bench;

async function checkFigures({ excel }: OpenExcel): Promise<Record<string, number>> {
  const standard = resolveStandard("BS8666:2005");
  if (isRefusal(standard)) throw new Error("no standard");
  const { matrix } = seededSchedule(ROWS);
  const columns = matrix[0]?.length ?? 0;
  for (const [row, cells] of matrix.entries()) {
    for (const [column, value] of cells.entries()) {
      if (typeof value === "string" || typeof value === "number") {
        excel.workbook.active.cells.change(row, column, { value });
      }
    }
  }
  const port = excelWorkbook();
  const before = excel.requests.length;
  const began = performance.now();
  const sheet = await port.read("Sheet1");
  const read = performance.now();
  await port.setting("Barwright.Audit");
  runAudit({ sheets: [sheet], standard });
  const audited = performance.now();
  const flags = Array.from({ length: FLAGGED }, (_, index) => ({
    row: index * 20 + 1,
    firstColumn: 0,
    lastColumn: columns - 1,
    colour: index % 2 === 0 ? ("unsafe" as const) : ("note" as const),
    note: "",
  }));
  await port.showFlags("Sheet1", flags);
  const flagged = performance.now();
  const sent = excel.requests.slice(before);
  return {
    "rows checked": ROWS,
    "reading, ms": Math.round(read - began),
    "audit, ms": Math.round(audited - read),
    "colouring 500 rows, ms": Math.round(flagged - audited),
    "requests of a check": sent.length,
    "largest request, KB": Math.round(Math.max(...sent.map(({ bytesOut }) => bytesOut)) / 1024),
    "largest answer, KB": Math.round(Math.max(...sent.map(({ bytesBack }) => bytesBack)) / 1024),
  };
}

async function functionFigures({ excel }: OpenExcel): Promise<Record<string, number>> {
  const one = (value: unknown) => [[value]];
  const developed = (shape: unknown[][], size: unknown[][]) =>
    excel.functions.call("DEVELOPED", shape, size, null, one("BS8666:2005"), one(64), null);
  const timed = async (work: () => Promise<unknown>): Promise<number> => {
    const began = performance.now();
    await work();
    return Math.round(performance.now() - began);
  };
  const shapes = Array.from({ length: ROWS }, (_, row) => [`${500 + row} +90 1200`]);
  return {
    "10,000 lengths from one call, ms": await timed(() => developed(shapes, one("H16"))),
    "the same again, from memory, ms": await timed(() => developed(shapes, one("H16"))),
  };
}
