import { type PricedBars, type PricedPour, priceBars } from "../estimating/price-bars";
import { readRates } from "../estimating/read-rates";
import { type Cell, type CellError, isCellError } from "../schedule/sheet";
import { resolveStandard } from "../standards";
import type { Standard } from "../standards/port";
import { defineRefusal, isRefusal } from "../units/refusal";
import { errorCell, isBlankCell } from "./lift";
import { cellInRow, headerRows, lastRow, tableRefusal } from "./table-arguments";
import type { Block, WorksheetFunction } from "./worksheet-function";

const noRates = defineRefusal(
  "rates-missing",
  "not-held",
  "no rates are known: write a table of rates on the Shop sheet (size, supply per tonne, cut per tonne, bend per tonne, fix per tonne, hours per tonne, waste %), or give its range with the header row",
);
const ratesUnread = defineRefusal(
  "rates-header-unread",
  "value",
  "rates has no header that can be read: its first row names size and at least one of supply, cut, bend or fix per tonne, or hours per 100 bends",
);
const rateCellUnread = defineRefusal(
  "rate-unread",
  "value",
  `rates, row {row}, column {column}: "{typed}" cannot be read: give {wanted}`,
);
const massUnread = defineRefusal(
  "cost-mass-unread",
  "value",
  `row {row}: mass "{typed}" is no number of kg, 0 or more: what it costs is not known until it is mended`,
);
const noRateFits = defineRefusal(
  "rate-none-fits",
  "not-held",
  "{mass} kg in it has no rate for its size: add a row to the rates, or one with a blank size",
);
const bendsUnknown = defineRefusal(
  "cost-bends-unknown",
  "not-held",
  "hours for 100 bends need the bends of each row, which masses do not tell: `tonnage` counts them",
);

const NO_POUR = "no pour";
const HEADER = ["pour", "net t", "waste t", "hours", "cost"] as const;
const GRAMS = 1000;

/**
 * BAR.COST: header, one row a pour and a total: net tonnes, the waste that is ordered beside them, hours and
 * cost by the workbook's own rates. Masses are kg. Supply is paid on net and waste, work on the net tonnes
 * (common practice). Money is in the workbook's currency; no price is ours. A size that no rate fits, or a
 * mass that cannot be read, stands as an error in the sums it belongs to.
 */
export const COST: WorksheetFunction = {
  name: "COST",
  description: "Net tonnes, waste, hours and cost by pour, by the workbook's own rates",
  args: [
    { name: "sizes", description: "Column of bar sizes", optional: false, lifts: "table" },
    {
      name: "masses",
      description: "Column of row masses in kg, as many rows",
      optional: false,
      lifts: "table",
    },
    { name: "pours", description: "Column of pours, as many rows", optional: true, lifts: "table" },
    {
      name: "rates",
      description: "Table of rates with its header row; the Shop sheet's where it is left out",
      optional: true,
      lifts: "table",
    },
  ],
  call([sizes = [], masses = [], pours, rates], environment) {
    const columns = { sizes, masses, ...(isGiven(pours) ? { pours } : {}) };
    const refusal = tableRefusal(columns);
    if (refusal !== null) return [[errorCell(refusal)]];
    const block = isGiven(rates) ? rates : environment.rates;
    if (block === undefined) return [[errorCell(noRates({}))]];
    const standard = resolveStandard(environment.defaultStandard, environment.own);
    if (isRefusal(standard)) return [[errorCell(standard)]];
    const read = readRates(block, standard);
    if (read === null) return [[errorCell(ratesUnread({}))]];
    const [problem] = read.problems;
    if (problem !== undefined) {
      const { row, column, typed, wanted } = problem;
      return [[errorCell(rateCellUnread({ row: row + 1, column: column + 1, typed, wanted }))]];
    }
    const { bars, errors } = readBars(columns, standard);
    if (bars.length === 0 && errors.size === 0) return [[null]];
    const priced = priceBars(bars, read);
    const lines = new Map(priced.pours.map((line) => [line.pour, line]));
    const named = new Set([...lines.keys(), ...errors.keys()]);
    const firstError = [...errors.values()][0] ?? null;
    return [
      HEADER,
      ...[...named].map((pour) => rowOf(pour, lines.get(pour) ?? null, errors.get(pour) ?? null)),
      rowOf("total", priced.total, firstError),
    ];
  },
};

const isGiven = (block: Block | undefined): block is Block =>
  block?.some((row) => row.some((cell) => !isBlankCell(cell))) === true;

function readBars(
  { sizes, masses, pours }: Readonly<{ sizes: Block; masses: Block; pours?: Block }>,
  standard: Standard,
): { bars: PricedBars[]; errors: Map<string, CellError> } {
  const bars: PricedBars[] = [];
  const errors = new Map<string, CellError>();
  const last = lastRow([sizes, masses]);
  for (let row = headerRows(masses); row <= last; row += 1) {
    const [sizeCell, massCell, pourCell] = [sizes, masses, pours].map((block) => cellInRow(block, row)) as [
      Cell,
      Cell,
      Cell,
    ];
    if (isBlankCell(massCell)) continue;
    const pour = isBlankCell(pourCell) || isCellError(pourCell) ? NO_POUR : String(pourCell).trim();
    const error = [sizeCell, massCell].find((cell) => isCellError(cell)) as CellError | undefined;
    const mass = typeof massCell === "string" ? Number(massCell) : massCell;
    if (error !== undefined) errors.set(pour, errors.get(pour) ?? error);
    else if (typeof mass !== "number" || !Number.isFinite(mass) || mass < 0)
      errors.set(pour, errors.get(pour) ?? errorCell(massUnread({ row: row + 1, typed: String(massCell) })));
    else bars.push({ pour, diameter: diameterOf(sizeCell, standard), mass, bends: null });
  }
  return { bars, errors };
}

function diameterOf(cell: Cell, standard: Standard): number | null {
  const reading = typeof cell === "string" || typeof cell === "number" ? standard.readSize(cell) : null;
  return reading === null || isRefusal(reading) ? null : reading.diameter;
}

function rowOf(pour: string, line: PricedPour | null, error: CellError | null): Cell[] {
  if (error !== null || line === null) return [pour, error, error, error, error];
  const missing =
    line.unpriced > 0 ? errorCell(noRateFits({ mass: Math.round(line.unpriced * GRAMS) / GRAMS })) : null;
  const hours = missing ?? (line.lacksBends ? errorCell(bendsUnknown({})) : line.hours);
  return [pour, line.net, missing ?? line.waste, hours, missing ?? line.cost];
}
