import { describe, expect, it } from "vitest";
import type { ColumnKind, ColumnReading, TableReading } from "../../../../core/schedule/bar-row";
import {
  type EvidenceRole,
  type EvidenceUnit,
  findTables,
  type WordReading,
  weighTable,
} from "../../../../core/schedule/evidence/index";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import type { Cell } from "../../../../core/schedule/sheet";
import { resolveStandard } from "../../../../core/standards/index";
import type { Standard } from "../../../../core/standards/port";
import { type Random, seededRandom } from "../../../_support/random-schedule";
import { CORPUS } from "../../../corpus/corpus";
import { cellsOf, sheetOf } from "../../../corpus/corpus-schedule";

const UNITS: ReadonlySet<unknown> = new Set(["mm", "cm", "m", "in", "ft", "kg", "t", "lb"]);
const NAMED: ReadonlySet<ColumnKind> = new Set<ColumnKind>([
  "size",
  "members",
  "each",
  "total",
  "length",
  "totalLength",
  "mass",
  "unitMass",
  "mark",
  "shape",
  "spacing",
]);
const AMOUNTS: ReadonlySet<EvidenceRole> = new Set<EvidenceRole>([
  "size",
  "members",
  "each",
  "total",
  "length",
  "totalLength",
  "mass",
]);

interface Case {
  readonly name: string;
  readonly standard: Standard;
  readonly header: readonly (readonly Cell[])[];
  readonly rows: readonly (readonly Cell[])[];
  readonly words: ReadonlyMap<number, WordReading>;
  readonly width: number;
}

function roleOf(kind: ColumnKind): EvidenceRole {
  if (/^[A-K]$/.test(kind)) return "leg";
  return NAMED.has(kind) ? (kind as EvidenceRole) : "other";
}

function wordOf({ column, kind, unit, guess, inches }: ColumnReading): WordReading {
  const beside = inches === undefined ? {} : { inches };
  const named = UNITS.has(unit) ? (unit as EvidenceUnit) : null;
  return { column, role: roleOf(kind), unit: named, by: guess === null ? "written" : "guessed", ...beside };
}

function wordsOf({ columns, bySize, left = 0, right = 0, unknownHeaders = [] }: TableReading) {
  const words = new Map<number, WordReading>();
  for (let column = left; column <= right; column += 1) {
    if (unknownHeaders.some((one) => one.column === column)) continue;
    words.set(column, { column, role: "other", unit: null, by: "written" });
  }
  for (const column of columns.values()) words.set(column.column, wordOf(column));
  for (const { column } of bySize ?? [])
    words.set(column, { column, role: "bySize", unit: null, by: "written" });
  return words;
}

const CASES: readonly Case[] = CORPUS.map((schedule) => {
  const standard = resolveStandard(schedule.standard) as Standard;
  const cells = cellsOf(schedule);
  const [table] = readSchedule(sheetOf(schedule), standard).tables;
  if (table === undefined) throw new Error(`${schedule.name} has no table`);
  const rows = cells.slice(table.headerBottom + 1);
  const width = Math.max(...cells.map((row) => row.length));
  const header = cells.slice(0, table.headerBottom + 1);
  return { name: schedule.name, standard, header, rows, words: wordsOf(table), width };
});

function weighed({ rows, words, width, standard }: Case) {
  const source = {
    cells: (row: number) => rows[row] ?? [],
    from: 0,
    to: rows.length,
    left: 0,
    right: width - 1,
  };
  const table = weighTable(source, standard, words);
  if (table === null) throw new Error("nothing was read");
  return table;
}

/** What is said or asked, and what is held back, in words for a failing test. */
function contradictions(one: Case): string[] {
  const { decisions, held } = weighed(one);
  const said = decisions
    .filter(({ how }) => how !== "refines")
    .map(
      ({ column, byWords, byArithmetic }) =>
        `${column}: ${byWords?.role} is ${byArithmetic.role} ${byArithmetic.unit}`,
    );
  return held === null ? said : [...said, `held: ${held.why}`];
}

const BY_NAME = CASES.map((one) => [one.name, one] as const);

describe("the schedules of the corpus", () => {
  it.each(BY_NAME)("%s: should be contradicted nowhere", (_, one) => {
    expect(contradictions(one)).toEqual([]);
  });

  it("should be confirmed by their own arithmetic but for two that hold one identity too few", () => {
    const open = CASES.filter((one) => !weighed(one).isConfirmed).map(({ name }) => name);
    expect(open).toEqual(["za-bases", "za-plinths-untidy"]);
  });

  it.each(BY_NAME)("%s: should be read right without one word of its header", (_, one) => {
    const { header, rows, standard, words } = one;
    // a header stays a row of texts, but says nothing
    const blind = header.map((row) =>
      row.map((cell) => (typeof cell === "string" && cell !== "" ? "x" : cell)),
    );
    const [table] = [...findTables([...blind, ...rows], standard).tables].sort(
      (first, second) => second.rows.length - first.rows.length,
    );
    const wrong = [...words.values()].filter(({ column, role, unit, inches }) => {
      if (!AMOUNTS.has(role)) return false;
      const read = table?.evidence.roles.get(column);
      const isInFeet = inches !== undefined || unit === "ft" || unit === "in";
      const isUnit =
        unit === null || read?.unit === unit || (isInFeet && (read?.unit === "in" || read?.unit === "ft"));
      return read?.role !== role || !isUnit;
    });
    expect(wrong).toEqual([]);
  });
});

/** The same sheet changed as offices change them, its words changed along. */
const CHANGES: Readonly<Record<string, (one: Case, random: Random) => Case>> = {
  "columns in another order": (one, { whole }) => {
    const order = Array.from({ length: one.width }, (_, column) => column);
    for (let index = order.length - 1; index > 0; index -= 1) {
      const other = whole(0, index);
      [order[index], order[other]] = [order[other] as number, order[index] as number];
    }
    const rows = one.rows.map((row) => order.map((column) => row[column] ?? null));
    const words = new Map<number, WordReading>();
    order.forEach((from, column) => {
      const word = one.words.get(from);
      if (word === undefined) return;
      const inches = word.inches === undefined ? {} : { inches: order.indexOf(word.inches) };
      words.set(column, { ...word, column, ...inches });
    });
    return { ...one, rows, words };
  },
  "a column of amounts left out": (one, { pick }) => {
    const open = [...one.words.values()].filter(
      ({ role }) => role === "mass" || role === "totalLength" || role === "total",
    );
    if (open.length === 0) return one;
    const { column } = pick(open);
    const rows = one.rows.map((row) => row.map((cell, at) => (at === column ? null : cell)));
    return { ...one, rows, words: new Map([...one.words].filter(([at]) => at !== column)) };
  },
  "mistakes in a further quarter of the rows": (one, { next, pick }) => {
    const open = [...one.words.values()].filter(({ role }) => AMOUNTS.has(role) && role !== "size");
    const rows = one.rows.map((row) => {
      const { column } = pick(open);
      const value = row[column];
      if (next() >= 1 / 4 || typeof value !== "number") return row;
      return row.map((cell, at) => (at === column ? value * 2 + 1 : cell));
    });
    return { ...one, rows };
  },
  "lengths in cm": (one) => inUnit(one, "cm", 10),
  "lengths in m": (one) => inUnit(one, "m", 1000),
};

/** Lengths that stand in mm written in another unit, as the header then says. */
function inUnit(one: Case, unit: EvidenceUnit, millimetres: number): Case {
  const length = [...one.words.values()].find(({ role }) => role === "length");
  if (length === undefined || length.unit !== "mm") return one;
  // texts carry units of their own
  if (one.rows.some((row) => typeof row[length.column] === "string")) return one;
  const rows = one.rows.map((row) =>
    row.map((cell, at) => (at === length.column && typeof cell === "number" ? cell / millimetres : cell)),
  );
  return { ...one, rows, words: new Map(one.words).set(length.column, { ...length, unit }) };
}

describe("the same schedules changed as offices change them", () => {
  it.each(Object.keys(CHANGES))("%s: should be contradicted nowhere", (change) => {
    const random = seededRandom(7);
    const said = CASES.flatMap((one) => {
      const changed = CHANGES[change]?.(one, random) ?? one;
      return contradictions(changed).map((what) => `${one.name} ${what}`);
    });
    expect(said).toEqual([]);
  });
});

describe("the same schedules with a word withheld or wrong", () => {
  const tonnes = (one: Case) => [...one.words.values()].find(({ role }) => role === "mass");

  it("should have every unit of a length with a mass beside it right again", () => {
    const wrong = CASES.filter((one) => tonnes(one) !== undefined).flatMap((one) => {
      const length = [...one.words.values()].find(({ role }) => role === "length");
      if (length === undefined || length.inches !== undefined) return [];
      return (["mm", "cm", "m"] as const)
        .filter((unit) => unit !== length.unit && length.unit !== "in" && length.unit !== "ft")
        .filter((unit) => {
          const words = new Map(one.words).set(length.column, { ...length, unit, by: "guessed" });
          return weighed({ ...one, words }).columns.get(length.column)?.unit !== length.unit;
        })
        .map((unit) => `${one.name}: ${length.unit} taken as ${unit}`);
    });
    expect(wrong).toEqual([]);
  });

  it("should have every mass that is called by another unit right again", () => {
    const wrong = CASES.flatMap((one) => {
      const mass = tonnes(one);
      if (mass === undefined) return [];
      const words = new Map(one.words).set(mass.column, { ...mass, unit: mass.unit === "t" ? "kg" : "t" });
      return weighed({ ...one, words }).columns.get(mass.column)?.unit === mass.unit ? [] : [one.name];
    });
    expect(wrong).toEqual([]);
  });
});
