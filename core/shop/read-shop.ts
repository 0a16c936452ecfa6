import type { Machine, RatedBars } from "../bending/machine";
import { steelNamed } from "../bending/steel-named";
import { cellAddress } from "../schedule/cell-address";
import type { Cell, Sheet } from "../schedule/sheet";
import type { Standard } from "../standards/port";
import type { LengthUnit } from "../units/length-unit";
import { kilogramsIn } from "../units/mass-unit";
import { isRefusal } from "../units/refusal";
import { blankMachine } from "./blank-machine";
import {
  filledCells,
  findSections,
  plainWords,
  type SectionKind,
  type ShopColumn,
  type ShopSection,
  type ShopUnit,
  sectionKind,
  wordsAndUnit,
} from "./find-sections";
import { lengthOfCell } from "./length-of-cell";
import { type LimitName, limitNamed, limitWords } from "./limit-named";
import { type LooseRow, looseRows, looseWords, misspeltHeads, NO_TABLE, SECOND_TABLE } from "./loose-rows";
import { readDay } from "./read-day";
import type { Cutter, PourDay, Shop, ShopLimits, ShopProblem, ShopStock, ShopTable } from "./shop";
import { SHOP_COLUMNS, SHOP_REMNANT } from "./shop-words.data";

/**
 * What a `Shop` worksheet says: benders, plates, cutters, stock, limits and the trial log, each under a
 * header row known by its words, in any order. A blank cell is not known and stays null. A cell that
 * cannot be read is told as a problem, and what it should say is not known either. A length goes by the
 * unit written with it, else by that of its head ("orbit radius mm"), else by the standard's.
 */
export function readShop(sheet: Sheet, standard: Standard): Shop {
  const reader = new ShopReader(sheet, standard);
  const sections = findSections(sheet);
  for (const section of sections) reader.read(section);
  for (const row of looseRows(sheet, sections)) reader.readLoose(row);
  return reader.shop();
}

const LENGTHS = ["transportWidth", "leastRemnant", "lorryLength"] as const;
const isLength = (name: LimitName): name is (typeof LENGTHS)[number] =>
  (LENGTHS as readonly LimitName[]).includes(name);

class ShopReader {
  private readonly benders = new Map<string, Machine>();
  private readonly cutters = new Map<string, Cutter>();
  private readonly plates: { machine: string; work: "bend" | "cut"; rated: RatedBars }[] = [];
  private readonly stock: ShopStock[] = [];
  private readonly pours: PourDay[] = [];
  private readonly limits = new Map<LimitName, number>();
  private readonly problems: ShopProblem[] = [];
  private readonly limitCells = new Map<LimitName, string>();
  private trials: Shop["trials"] = null;
  private rates: Shop["rates"] = null;

  constructor(
    private readonly sheet: Sheet,
    private readonly standard: Standard,
  ) {}

  read(section: ShopSection): void {
    const kind = sectionKind(section);
    for (const { column, wanted } of misspeltHeads(this.sheet, section, kind))
      this.unused(section.headerRow, column, wanted);
    const isSecond = (kind === "trials" ? this.trials : kind === "rates" ? this.rates : null) !== null;
    if (isSecond) this.unused(section.headerRow, section.firstColumn, SECOND_TABLE);
    else if (kind === "trials") this.trials = this.tableOf(section);
    else if (kind === "rates") this.rates = this.tableOf(section);
    else if (kind === null) this.unused(section.headerRow, section.firstColumn, NO_TABLE);
    else for (const row of section.rows) this.readRow(kind, section, row);
  }

  /** A row under no header: a limit beside its name is read all the same. */
  readLoose({ row, cells, more }: LooseRow): void {
    const [limit, value] = cells;
    const section = {
      headerRow: row,
      columns: new Map<ShopColumn, number>([
        ["limit", limit!],
        ["value", value ?? limit! + 1],
      ]),
      units: new Map<ShopColumn, ShopUnit>(),
      rows: [row],
      firstColumn: limit!,
      lastColumn: limit!,
    };
    const name = this.sheet.cell(row, limit!);
    if (cells.length <= 2 && limitNamed(name) !== null) this.readLimit(section, row);
    else this.unused(row, limit!, looseWords(name, more));
  }

  shop(): Shop {
    const rated = (machine: string, work: "bend" | "cut"): RatedBars[] =>
      this.plates
        .filter((plate) => plate.work === work && sameName(plate.machine, machine))
        .map((plate) => plate.rated);
    const names = (work: "bend" | "cut"): string[] => [
      ...new Set(this.plates.filter((plate) => plate.work === work).map((plate) => plate.machine)),
    ];
    for (const name of names("bend"))
      if (!hasName(this.benders, name)) this.benders.set(name, blankMachine(name));
    for (const name of names("cut")) {
      if (!hasName(this.cutters, name))
        this.cutters.set(name, { name, rated: [], kerf: null, endCrop: null });
    }
    return {
      benders: [...this.benders.values()].map((machine) => ({
        ...machine,
        rated: rated(machine.name, "bend"),
      })),
      cutters: [...this.cutters.values()].map((cutter) => ({ ...cutter, rated: rated(cutter.name, "cut") })),
      stock: this.stock,
      limits: this.shopLimits(),
      pours: this.pours,
      rates: this.rates,
      trials: this.trials,
      problems: this.problems,
    };
  }

  private readRow(kind: Exclude<SectionKind, "rates" | "trials">, section: ShopSection, row: number): void {
    if (kind === "plates") this.readPlate(section, row);
    else if (kind === "stock") this.readStock(section, row);
    else if (kind === "limits") this.readLimit(section, row);
    else if (kind === "pours") this.readPour(section, row);
    else if (kind === "cutters") this.readCutter(section, row);
    else this.readBender(section, row);
  }

  private readBender(section: ShopSection, row: number): void {
    const name = this.named(section, row, this.benders);
    if (name === null) return;
    this.benders.set(name, {
      name,
      rated: [],
      formers: this.lengths(section, "formers", row),
      pins: this.lengths(section, "pins", row),
      orbitRadius: this.length(section, "orbitRadius", row),
      backRestDistance: this.length(section, "backRestDistance", row),
      largestAngle: this.number(section, "largestAngle", row, "degrees over 0"),
      guardRadius: this.length(section, "guardRadius", row),
    });
  }

  private readCutter(section: ShopSection, row: number): void {
    const name = this.named(section, row, this.cutters);
    if (name === null) return;
    const kerf = this.length(section, "kerf", row, true);
    this.cutters.set(name, { name, rated: [], kerf, endCrop: this.length(section, "endCrop", row, true) });
  }

  private readPlate(section: ShopSection, row: number): void {
    const machine = this.text(section, "machine", row);
    const size = this.cell(section, "size", row);
    const bars = this.number(section, "bars", row, "whole bars, 0 or more", true);
    if (machine === null || size === null || bars === null) {
      const lacks = machine === null ? "machine" : size === null ? "size" : "bars";
      if (this.cell(section, lacks, row) === null) this.lacking(row, lacks);
      return;
    }
    const reading =
      typeof size === "string" || typeof size === "number" ? this.standard.readSize(size) : null;
    if (reading === null || isRefusal(reading)) {
      this.problem(section, "size", row, `a size of ${this.standard.id}`);
      return;
    }
    const work = /^cut/.test(plainWords(this.cell(section, "work", row))) ? "cut" : "bend";
    const grade = this.yieldOf(section, row);
    this.plates.push({
      machine,
      work,
      rated: { diameter: reading.diameter, yield: grade, bars: Math.floor(bars) },
    });
  }

  private readStock(section: ShopSection, row: number): void {
    const length = this.length(section, "stockLength", row);
    if (length === null) {
      if (this.cell(section, "stockLength", row) === null) this.lacking(row, "stockLength");
      return;
    }
    const size = this.cell(section, "size", row);
    const known =
      size === null ||
      ((typeof size === "string" || typeof size === "number") && !isRefusal(this.standard.readSize(size)));
    if (!known) {
      this.problem(section, "size", row, `a size of ${this.standard.id}, or blank for every size`);
      return;
    }
    const remnant = plainWords(this.cell(section, "kind", row)) === SHOP_REMNANT;
    const count = this.number(section, "count", row, "whole bars, 0 or more", true);
    this.stock.push({
      size: size === null ? null : String(size).trim(),
      length,
      count: count ?? (remnant ? 1 : null),
      remnant,
      heat: this.text(section, "heat", row),
      row,
    });
  }

  private readLimit(section: ShopSection, row: number): void {
    const typed = this.cell(section, "limit", row);
    const { unit } = wordsAndUnit(typed);
    const name = limitNamed(typed);
    if (name === null) {
      const filled = filledCells(this.sheet, row)[0];
      if (filled !== undefined) this.unused(row, filled, limitWords(this.sheet.cell(row, filled)));
      return;
    }
    if (isLength(name)) {
      const length = this.length(section, "value", row, false, unit);
      if (length !== null) this.setLimit(name, length, section, row);
      return;
    }
    const value = this.number(section, "value", row, "a number", name === "temperature" ? "any" : false);
    if (value === null) return;
    if (name === "temperature") {
      const kept = unit === "f" ? (value - 32) / 1.8 : value;
      this.setLimit(name, kept, section, row);
    } else {
      const isPounds = (unit ?? (this.standard.unit === "in" ? "lb" : "kg")) === "lb";
      const kilograms = kilogramsIn(isPounds ? "lb" : "kg");
      if (!isRefusal(kilograms)) this.setLimit(name, value * kilograms, section, row);
    }
  }

  /** Of two figures for one limit the lower is in force, and the other cell is told. */
  private setLimit(name: LimitName, value: number, section: ShopSection, row: number): void {
    const before = this.limits.get(name);
    const column = section.columns.get("value")!;
    if (before === undefined) this.limitCells.set(name, cellAddress(this.sheet, row, column));
    else if (before !== value) {
      this.unused(
        row,
        column,
        `${this.limitCells.get(name)} holds another figure of the same limit; the lower is in force until one is taken out`,
      );
    }
    this.limits.set(name, Math.min(before ?? value, value));
  }

  /** The machine of a row; a second row of the same name is told. */
  private named(section: ShopSection, row: number, known: ReadonlyMap<string, unknown>): string | null {
    const name = this.text(section, "machine", row);
    if (name === null) this.lacking(row, "machine");
    else if (known.has(name))
      this.unused(
        row,
        section.columns.get("machine")!,
        "a row above has the same machine, and this one is in force: write one row",
      );
    return name;
  }

  private readPour(section: ShopSection, row: number): void {
    const pour = this.text(section, "pour", row);
    const column = section.columns.get("date");
    if (pour === null) this.lacking(row, "pour");
    if (pour === null || column === undefined || this.cell(section, "date", row) === null) return;
    const day = readDay(this.sheet, row, column);
    if (day === null) this.problem(section, "date", row, "the day as 2030-05-31");
    else this.pours.push({ pour, day });
  }

  private tableOf(section: ShopSection): ShopTable {
    const rows = [section.headerRow, ...section.rows];
    const block = rows.map((row) => {
      const cells: Cell[] = [];
      for (let column = section.firstColumn; column <= section.lastColumn; column += 1) {
        cells.push(this.sheet.cell(row, column));
      }
      return cells;
    });
    return { block, top: section.headerRow, left: section.firstColumn };
  }

  private shopLimits(): ShopLimits {
    const limit = (name: LimitName): number | null => this.limits.get(name) ?? null;
    return {
      hoist: limit("hoist"),
      handLift: limit("handLift"),
      transportWidth: limit("transportWidth"),
      lorryLoad: limit("lorryLoad"),
      lorryLength: limit("lorryLength"),
      leastRemnant: limit("leastRemnant"),
      temperature: limit("temperature"),
    };
  }

  private cell(section: ShopSection, column: ShopColumn, row: number): Cell {
    const place = section.columns.get(column);
    const cell = place === undefined ? null : this.sheet.cell(row, place);
    return typeof cell === "string" && cell.trim() === "" ? null : cell;
  }

  private text(section: ShopSection, column: ShopColumn, row: number): string | null {
    const cell = this.cell(section, column, row);
    return cell === null || typeof cell === "object" ? null : String(cell).trim();
  }

  private length(
    section: ShopSection,
    column: ShopColumn,
    row: number,
    zero = false,
    named: ShopUnit | null = section.units.get(column) ?? null,
  ): number | null {
    const cell = this.cell(section, column, row);
    if (cell === null) return null;
    const unit = this.lengthUnit(named);
    const length = lengthOfCell(cell, zero, unit);
    if (length === null) this.problem(section, column, row, `a length in ${unit}`);
    return length;
  }

  private lengthUnit(named: ShopUnit | null): LengthUnit {
    return named === "mm" || named === "in" ? named : this.standard.unit;
  }

  /** MPa; a number too low for one is a grade that the standard names, such as Grade 60. */
  private yieldOf(section: ShopSection, row: number): number | null {
    const cell = this.cell(section, "yield", row);
    if (typeof cell !== "number" && typeof cell !== "string") return null;
    const value = Number(cell);
    if (value >= LEAST_YIELD) return value;
    const steel = value <= 0 ? null : steelNamed(String(cell), "", this.standard);
    if (steel?.sure === true) return steel.yield;
    this.problem(section, "yield", row, `the yield of the grade in MPa, or a grade of ${this.standard.id}`);
    return null;
  }

  private lengths(section: ShopSection, column: ShopColumn, row: number): number[] | null {
    const cell = this.cell(section, column, row);
    if (cell === null) return null;
    const parts =
      typeof cell === "string"
        ? cell.split(FRACTION.test(cell) ? BETWEEN_FRACTIONS : BETWEEN).filter((part) => part.trim() !== "")
        : [cell];
    const unit = this.lengthUnit(section.units.get(column) ?? null);
    const lengths = parts.map((part) => lengthOfCell(part, false, unit));
    if (lengths.every((length) => length !== null)) return lengths as number[];
    this.problem(section, column, row, `diameters in ${unit} with commas between`);
    return null;
  }

  private number(
    section: ShopSection,
    column: ShopColumn,
    row: number,
    wanted: string,
    least: boolean | "any" = false,
  ): number | null {
    const cell = this.cell(section, column, row);
    if (cell === null) return null;
    const value = typeof cell === "string" ? Number(cell.trim()) : cell;
    const isNumber = typeof value === "number" && Number.isFinite(value);
    if (isNumber && (least === "any" || value > 0 || (least === true && value === 0))) return value;
    this.problem(section, column, row, wanted);
    return null;
  }

  /** A row that nothing goes by, as it lacks what its table is of. */
  private lacking(row: number, column: ShopColumn): void {
    const filled = filledCells(this.sheet, row)[0];
    if (filled !== undefined)
      this.unused(row, filled, `nothing goes by it, as its row holds no ${SHOP_COLUMNS[column][0]}`);
  }

  private unused(row: number, column: number, wanted: string): void {
    const cell = this.sheet.cell(row, column);
    const typed = typeof cell === "object" && cell !== null ? cell.error : String(cell);
    this.problems.push({ row, column, typed, wanted, isUnused: true });
  }

  private problem(section: ShopSection, column: ShopColumn, row: number, wanted: string): void {
    const cell = this.cell(section, column, row);
    const typed = typeof cell === "object" && cell !== null ? cell.error : String(cell);
    this.problems.push({ row, column: section.columns.get(column)!, typed, wanted });
  }
}

const BETWEEN = /[,;/]|\s+and\s+|\s{1,}(?=\d)/;
/** 3 3/4: neither the blank nor the stroke parts two diameters. */
const FRACTION = /\d\/\d/;
const BETWEEN_FRACTIONS = /[,;]|\s+and\s+/;

/** MPa: no reinforcing steel yields below it. */
const LEAST_YIELD = 200;

const sameName = (a: string, b: string): boolean => plainWords(a) === plainWords(b);
const hasName = (map: ReadonlyMap<string, unknown>, name: string): boolean =>
  [...map.keys()].some((key) => sameName(key, name));
