import { findHeader } from "../../../core/bending/read-trials";
import { addressAt } from "../../../core/schedule/cell-address";
import type { Cell, Sheet } from "../../../core/schedule/sheet";
import { Workshop } from "../../../core/shop";
import { findSections, type ShopColumn, sectionKind } from "../../../core/shop/find-sections";
import { SHOP_TRIAL_COLUMNS, SHOP_TRIALS_TITLE } from "../../../core/shop/shop-words.data";
import type { CellEdit } from "../../workbook/workbook-port";
import type { MissingFact, ShopEdits, TrialEntry } from "./bench-view";
import type { KeptCheck } from "./kept-check";

const NO_SHOP = "the workbook has no Shop sheet, on which trials and machines stand: add one first";

/** The row of the trial log that a trial is, in the log's own columns. Throws where there is nowhere to write it. */
export function trialEdits({ shop, audit: { report } }: KeptCheck, trial: TrialEntry): ShopEdits {
  if (shop === null) throw new Error(NO_SHOP);
  if (!(trial.bentTo > 0 && trial.released > 0)) throw new Error("give both angles in degrees above 0");
  if (trial.released > trial.bentTo)
    throw new Error(
      `a bar comes back: it cannot come to ${trial.released} when it was bent to ${trial.bentTo}. Look whether the two are changed over`,
    );
  const { trials } = new Workshop(shop, report.standard).shop;
  const at = (row: number, column: number): string => addressAt(shop.top + row, shop.left + column);
  const header = trials === null ? null : findHeader(trials.block);
  if (trials === null || header === null) return { shop: shop.name, edits: newLog(shop, trial, at) };
  const row = trials.top + trials.block.length;
  const like = lastAlike(trials.block, header, trial);
  const edits = [...header.columns].flatMap(([column, place]): CellEdit[] => {
    const kept = column === "grade" || column === "form" ? like?.[place] : undefined;
    const to = typeof kept === "string" || typeof kept === "number" ? kept : VALUES[column](trial);
    return to === null ? [] : [{ cell: at(row, trials.left + place), to }];
  });
  return { shop: shop.name, edits };
}

type LogHeader = NonNullable<ReturnType<typeof findHeader>>;

/** The log's last row of the same size, former and machine: the same steel is written in the same words. */
function lastAlike(
  block: readonly (readonly Cell[])[],
  { row, columns }: LogHeader,
  { size, former, machine }: TrialEntry,
): readonly Cell[] | undefined {
  const says = (line: readonly Cell[], column: TrialColumn, words: string): boolean => {
    const place = columns.get(column);
    return (
      place === undefined ||
      String(line[place] ?? "")
        .trim()
        .toLowerCase() === words.toLowerCase()
    );
  };
  return block
    .slice(row + 1)
    .filter(
      (line) => says(line, "size", size) && says(line, "former", former) && says(line, "machine", machine),
    )
    .at(-1);
}

const VALUES: Readonly<Record<TrialColumn, (trial: TrialEntry) => string | number | null>> = {
  date: ({ date }) => date,
  machine: ({ machine }) => machine,
  size: ({ size }) => size,
  former: ({ former }) => numberOr(former),
  grade: ({ grade }) => grade,
  form: () => null,
  heat: ({ heat }) => (heat === "" ? null : heat),
  bentTo: ({ bentTo }) => bentTo,
  released: ({ released }) => released,
};

type TrialColumn = Parameters<NonNullable<ReturnType<typeof findHeader>>["columns"]["get"]>[0];

/** A title, the heads and the first row, under what the sheet holds already. */
function newLog(shop: Sheet, trial: TrialEntry, at: (row: number, column: number) => string): CellEdit[] {
  const top = shop.rowCount + 1;
  const order: readonly TrialColumn[] = [
    "date",
    "machine",
    "size",
    "former",
    "grade",
    "form",
    "heat",
    "bentTo",
    "released",
  ];
  return [
    { cell: at(top, 0), to: SHOP_TRIALS_TITLE },
    ...SHOP_TRIAL_COLUMNS.map((head, column) => ({ cell: at(top + 1, column), to: head })),
    ...order.flatMap((column, place): CellEdit[] => {
      const to = VALUES[column](trial);
      return to === null ? [] : [{ cell: at(top + 2, place), to }];
    }),
  ];
}

function numberOr(text: string): string | number {
  const number = Number(text);
  return Number.isFinite(number) ? number : text;
}

/** What a machine's row may leave open, in the order in which it is asked for; words for more than one construction. */
const FACTS: readonly {
  readonly column: ShopColumn;
  readonly question: string;
  readonly hint: string;
  readonly isList?: true;
}[] = [
  {
    column: "formers",
    question: "Which formers (mandrels, rolls) are in its rack?",
    hint: "diameters with commas between, such as 32, 40, 64",
    isList: true,
  },
  {
    column: "largestAngle",
    question: "How far does it bend at most?",
    hint: "degrees, 0 is straight: from its plate or manual",
  },
  {
    column: "guardRadius",
    question: "How far from the former's centre is the guard, a wall or a neighbour?",
    hint: "what the swinging bar must stay within",
  },
  {
    column: "orbitRadius",
    question: "How far is it from the former's centre to the centre of what pushes the bar?",
    hint: "a pin on a turntable: the circle it runs on; a sliding pin or a roll: its place when the bend begins",
  },
  {
    column: "backRestDistance",
    question: "How far along the bar is its back-rest from the former?",
    hint: "the stop, rest or second roll that holds the leg behind the bend",
  },
  {
    column: "pins",
    question: "Which pins or rolls push the bar?",
    hint: "diameters with commas between",
    isList: true,
  },
];

/** What is not written down of a machine, one question a fact. */
export function missingFacts({ shop }: KeptCheck, machine: string): readonly MissingFact[] {
  if (shop === null) return [];
  for (const section of findSections(shop)) {
    if (sectionKind(section) !== "benders") continue;
    const named = section.columns.get("machine");
    const row = section.rows.find((each) => named !== undefined && isNamed(shop.cell(each, named), machine));
    if (row === undefined) continue;
    return FACTS.flatMap(({ column, question, hint, isList }) => {
      const place = section.columns.get(column);
      if (place === undefined || !isBlank(shop.cell(row, place))) return [];
      const cell = addressAt(shop.top + row, shop.left + place);
      return [{ machine, question, hint, cell, isList: isList === true }];
    });
  }
  return [];
}

const isBlank = (cell: unknown): boolean => cell === null || (typeof cell === "string" && cell.trim() === "");
const isNamed = (cell: unknown, name: string): boolean =>
  typeof cell === "string" && cell.trim().toLowerCase() === name.trim().toLowerCase();
