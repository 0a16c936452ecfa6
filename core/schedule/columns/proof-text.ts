import type { SheetGuess, TableReading } from "../bar-row";
import { columnLetters } from "../cell-address";
import type { Agreement, ColumnDecision, IdentityName, Share, Weighed } from "../evidence/index";
import { columnWords } from "./column-words";
import type { HeaderByArithmetic } from "./headers-by-arithmetic";

const PRODUCTS: Readonly<Record<IdentityName, string>> = {
  mass: "the mass column",
  totalLength: "the total lengths",
  bySize: "the columns by size",
  members: "members times number in each",
  legs: "the dimensions",
  run: "run and spacing",
  unitMass: "the mass per length",
  pieceMass: "the mass of one bar",
};

/** What arithmetic settled of one column, with the rows that agree either way. */
export function decisionText(decision: ColumnDecision, table: TableReading): string {
  const { column, about, byWords, byArithmetic, words, arithmetic } = decision;
  const name = headerOf(table, column);
  if (byArithmetic.role === "ofMember") {
    const all = words === null ? "" : `, and ${words.kept} of ${words.tested} with those of all members`;
    const kept =
      arithmetic === null ? "its figures agree" : `${arithmetic.kept} of ${arithmetic.tested} rows agree`;
    return `column ${name} was taken as that of one member: ${kept} with the bars in each${all}; members times number in each are counted`;
  }
  const was =
    byWords === null || byWords.role === "other"
      ? ""
      : ` and not as ${taken(byWords.role, byWords.unit, about)}`;
  const is = taken(byArithmetic.role, byArithmetic.unit, about);
  const otherwise = byWords === null || words === null ? "" : ` (${words.kept} of ${words.tested} otherwise)`;
  return `column ${name} was taken as ${is}${was}: ${shareText(arithmetic)}${otherwise}`;
}

/** Why totals are held back, and what to do. */
export function heldText(
  held: NonNullable<Weighed["held"]>,
  agreement: readonly Agreement[],
  decisions: readonly ColumnDecision[],
  table: TableReading,
): string {
  const remedy = "totals are held back until the columns are said or this reading is confirmed";
  if (held.why === "units-disagree") {
    const asked = decisions.find(({ verdict }) => verdict === "ask");
    if (asked === undefined) return remedy;
    const { byWords, byArithmetic, column, words, arithmetic } = asked;
    const own = words === null ? "" : `, ${words.kept} of ${words.tested} as ${byWords?.unit ?? "written"}`;
    return `column ${headerOf(table, column)} may be in ${byArithmetic.unit} and not in ${byWords?.unit}: ${shareText(arithmetic)}${own}; ${remedy}`;
  }
  if (held.why === "exchangeable") {
    const names = held.columns.map((column) => headerOf(table, column)).join(" and ");
    return `columns ${names}: which holds lengths and which counts, nothing on the sheet tells; ${remedy}`;
  }
  if (held.why === "members-unsaid") {
    const names = held.columns.map((column) => headerOf(table, column)).join(", ");
    return `what stands under ${names} is some members' times what count and length make, and nothing on the sheet says how many members there are; ${remedy}`;
  }
  const tested = agreement.filter(({ columns }) => columns.some((column) => held.columns.includes(column)));
  const shares = tested
    .filter(({ kept, tested: of }) => kept < of)
    .map(
      ({ identity, kept, tested: of }) => `${of - kept} of ${of} rows disagree with ${PRODUCTS[identity]}`,
    );
  return `${shares.join(", ") || "the rows disagree with this reading"}, and no other reading agrees; ${remedy}`;
}

/** A table of which no header word is known, told by its own products. */
export function headerGuess(
  { header, firstBar, kept, tested }: HeaderByArithmetic,
  left: number,
): SheetGuess {
  const told = header.blocks
    .flatMap(({ columns }) => columns)
    .map(
      ({ kind, column, unit }) =>
        `${columnWords(kind)} in column ${columnLetters(left + column)}${unit === null ? "" : ` (${unit})`}`,
    )
    .join(", ");
  const how =
    tested > 0
      ? `the arithmetic of the rows tells ${told}; ${kept} of ${tested} rows agree`
      : `the looks of the columns tell ${told}; no product of the rows confirms it`;
  const reason = `no header of known words was found: ${how}`;
  return { guess: "column-by-arithmetic", reason, asks: false, row: firstBar, column: null };
}

/** Columns by which unit and count could be tested are named, where there are any. */
export function nothingConfirms({ columns }: TableReading): string {
  const looked = [...columns.values()]
    .filter(({ kind }) => TESTS.has(kind) || /^[A-K]$/.test(kind))
    .map(({ header }) => `"${header}"`);
  if (looked.length > 0)
    return `nothing on this sheet confirms its unit and its count for sure: too few rows have figures in ${looked.join(", ")} that can be tested, or they do not agree`;
  return "nothing on this sheet confirms its unit and its count: no mass, total length or dimensions to test them by";
}

const TESTS: ReadonlySet<string> = new Set(["mass", "totalLength", "unitMass", "pieceMass"]);

function taken(role: string, unit: string | null, about: "role" | "unit"): string {
  if (about === "unit") return unit ?? "without unit";
  const kind =
    role === "bySize" ? "amounts by size" : role === "other" ? "something else" : wordsOfRole(role);
  return unit === null ? kind : `${kind} in ${unit}`;
}

function wordsOfRole(role: string): string {
  if (role === "leg") return "a dimension";
  if (role === "run") return "a run of bars";
  if (role === "serial") return "row numbers";
  return columnWords(role as Parameters<typeof columnWords>[0]);
}

function shareText(share: Share | null): string {
  if (share === null) return "the rows fit only so";
  return `${share.kept} of ${share.tested} rows then agree with ${PRODUCTS[share.identity]}`;
}

function headerOf(table: TableReading, column: number): string {
  const own = [...table.columns.values()].find((one) => one.column === column)?.header;
  const header = own ?? table.unknownHeaders?.find((one) => one.column === column)?.header ?? "";
  return header === "" ? `${column + 1}` : `"${header}"`;
}
