import type { Cell, Sheet } from "../schedule/sheet";
import { formula } from "../shapes/formula";
import { pathTemplate } from "../shapes/path-template";
import { compileLimits } from "../shapes/shape-limit-text";
import type { Citation } from "../standards/citation";
import { courseOfText, type Figure, figuresOf } from "../standards/figures";
import type { LookedUp, OwnFigure, OwnLap, OwnShape, OwnStandard } from "../standards/own-standard";
import { REGISTRY } from "../standards/registry";
import { resolveStandard } from "../standards/resolve-standard";
import { parseLength } from "../units/parse-length";
import { isRefusal, refusalText } from "../units/refusal";
import { type OwnColumn, type OwnSection, ownSections } from "./own-sections";
import { ownShape } from "./own-shape";
import type { OwnProblem, OwnSheet } from "./own-sheet";
import { AGREES, LIKELY_FACTOR, OWN_COLUMNS } from "./own-words.data";

/**
 * What a sheet `Standard` says: figures that its owner looked up, own shape codes, laps of the project. A
 * cell that cannot be taken is told as a problem, and what it should say stays as it was. Equal sheets give
 * the same `own`, so that what is kept by it is kept.
 */
export function readOwn(sheet: Sheet): OwnSheet {
  const reader = new OwnReader(sheet);
  for (const section of ownSections(sheet)) reader.read(section);
  return { own: interned(reader.own()), problems: reader.problems };
}

/** What is not in a workbook's own sheet is taken from a sheet that was kept in a file; the first sheet holds. */
export function joinOwn(first: OwnStandard, second: OwnStandard): OwnStandard {
  const isNew = ({ standard, figure }: OwnFigure): boolean =>
    first.figures.every((one) => one.standard !== standard || one.figure !== figure);
  const codes = new Set(first.shapes.map(({ shape }) => shape.code));
  return interned({
    figures: [...first.figures, ...second.figures.filter(isNew)],
    shapes: [...first.shapes, ...second.shapes.filter(({ shape }) => !codes.has(shape.code))],
    laps: first.laps.length > 0 ? first.laps : second.laps,
  });
}

const KEPT = 16;
const kept = new Map<string, OwnStandard>();

function interned(own: OwnStandard): OwnStandard {
  const key = JSON.stringify(own);
  const known = kept.get(key);
  if (known !== undefined) return known;
  if (kept.size >= KEPT) kept.delete(kept.keys().next().value as string);
  kept.set(key, own);
  return own;
}

const figuresByDocument = new Map<string, ReadonlyMap<string, Figure>>();

function figuresNamed(id: string): ReadonlyMap<string, Figure> {
  const known = figuresByDocument.get(id);
  if (known !== undefined) return known;
  const tables = REGISTRY.find((one) => one.id === id);
  const named = new Map(tables === undefined ? [] : figuresOf(tables).map((one) => [one.name, one] as const));
  figuresByDocument.set(id, named);
  return named;
}

class OwnReader {
  readonly problems: OwnProblem[] = [];
  private readonly figures: OwnFigure[] = [];
  private readonly shapes: OwnShape[] = [];
  private readonly laps: OwnLap[] = [];

  constructor(private readonly sheet: Sheet) {}

  own(): OwnStandard {
    return { figures: this.figures, shapes: this.shapes, laps: this.laps };
  }

  read(section: OwnSection): void {
    for (const row of section.rows) {
      if (section.table === "figures") this.readFigure(section, row);
      else if (section.table === "shapes") this.readShape(section, row);
      else this.readLap(section, row);
    }
  }

  private readFigure(section: OwnSection, row: number): void {
    const copy = this.cell(section, "copy", row);
    if (copy === null) return;
    const standard = this.documentOf(section, row);
    if (standard === null) return;
    const name = this.text(section, "figure", row);
    const figure = figuresNamed(standard).get(name);
    if (figure === undefined) {
      this.problem(
        section,
        "figure",
        row,
        `no figure of ${standard} has this name: write the sheet anew and copy the line`,
      );
      return;
    }
    const value = this.valueOf(section, row, figure, copy);
    const looked = this.lookedUp(section, row);
    if (value === null || looked === null) return;
    if (this.figures.some((one) => one.standard === standard && one.figure === name)) {
      this.problem(section, "figure", row, "it stands in a line above already, which is in force");
      return;
    }
    this.figures.push({ standard, figure: name, value, ...looked });
  }

  /** As the copy has it: the figure held where it says that they agree. */
  private valueOf(section: OwnSection, row: number, figure: Figure, copy: Cell): number | string | null {
    const said = typeof copy === "string" ? copy.trim() : copy;
    // "agrees" is with what the sheet printed, which an older version may have held
    const agreed = this.cell(section, "held", row) ?? figure.value;
    const wanted = typeof said === "string" && AGREES.includes(said.toLowerCase()) ? agreed : said;
    return typeof figure.value === "number"
      ? this.numberOf(section, row, figure.value, wanted)
      : this.textOf(section, row, figure, wanted);
  }

  private numberOf(section: OwnSection, row: number, held: number, wanted: Cell): number | null {
    const number = typeof wanted === "string" ? Number(wanted.replace(",", ".")) : wanted;
    if (typeof number !== "number" || !Number.isFinite(number)) {
      return this.problem(
        section,
        "copy",
        row,
        `no number: ${held} is held, write what your copy says in the same unit`,
      );
    }
    const isLikely =
      held <= 0 || (number > 0 && number < held * LIKELY_FACTOR && number * LIKELY_FACTOR > held);
    if (isLikely) return number;
    return this.problem(
      section,
      "copy",
      row,
      `${number} where ${held} is held: look at the unit, which is that of the line`,
    );
  }

  private textOf(section: OwnSection, row: number, figure: Figure, wanted: Cell): string | null {
    const text = typeof wanted === "string" ? wanted.trim() : String(wanted ?? "");
    if (plain(text) === plain(String(figure.value))) return String(figure.value);
    const fault = faultOf(figure.column, figure, text);
    return fault === null ? text : this.problem(section, "copy", row, fault);
  }

  private readShape(section: OwnSection, row: number): void {
    const code = this.text(section, "code", row);
    if (code === "") return;
    const looked = this.lookedUp(section, row);
    const standard = this.text(section, "standard", row) === "" ? null : this.documentOf(section, row);
    if (looked === null || (standard === null && this.text(section, "standard", row) !== "")) return;
    const taken = this.shapes.find(({ shape }) => shape.code === code.toUpperCase());
    const holder = REGISTRY.find(
      ({ id, shapes }) =>
        (standard === null ? false : id === standard) &&
        shapes.some((one) => one.code === code.toUpperCase()),
    );
    if (taken !== undefined || holder !== undefined) {
      const whose = holder === undefined ? "a line above has it" : `${holder.id} has a shape of this code`;
      this.problem(section, "code", row, `${whose}: give the own shape a code of its own`);
      return;
    }
    const texts = {
      code,
      words: this.text(section, "words", row),
      course: this.text(section, "course", row),
      formula: this.text(section, "formula", row),
      limits: this.text(section, "limits", row),
      use: this.text(section, "use", row),
    };
    const cite: Citation = {
      document: "sheet Standard",
      clause: `own shape ${code.toUpperCase()}`,
      provenance: "own",
      ...looked,
    };
    const shape = ownShape(texts, cite);
    if ("reason" in shape) this.problem(section, shape.of, row, shape.reason);
    else this.shapes.push({ standard, shape });
  }

  private readLap(section: OwnSection, row: number): void {
    const size = this.text(section, "size", row);
    const typed = this.cell(section, "lap", row);
    if (size === "" || typed === null) return;
    const lap = typeof typed === "number" || typeof typed === "string" ? typed : "";
    const length = lap === "" ? 0 : parseLength(lap, "mm");
    if (isRefusal(length) || !(length > 0)) {
      this.problem(
        section,
        "lap",
        row,
        "no length over 0: write a number in the unit of the standard, or a text with its unit",
      );
      return;
    }
    const [grade, situation] = [this.text(section, "grade", row), this.text(section, "case", row)];
    this.laps.push({ size, grade, case: situation, lap });
  }

  /** A value that nobody signed is not confirmed. */
  private lookedUp(section: OwnSection, row: number): LookedUp | null {
    const by = this.text(section, "by", row);
    if (by === "")
      return this.problem(section, "by", row, "write who looked: a figure that nobody signs is not taken");
    const on = dateText(this.cell(section, "on", row), this.sheet.datesFrom1904 === true);
    return on === null
      ? this.problem(section, "on", row, "write the day on which it was looked up")
      : { by, on };
  }

  private documentOf(section: OwnSection, row: number): string | null {
    const resolved = resolveStandard(this.text(section, "standard", row));
    if (!isRefusal(resolved) && this.text(section, "standard", row) !== "") return resolved.id;
    const reason = isRefusal(resolved) ? refusalText(resolved) : "write the document, such as BS8666:2020";
    return this.problem(section, "standard", row, reason);
  }

  private cell(section: OwnSection, column: OwnColumn, row: number): Cell {
    const place = section.columns.get(column);
    const cell = place === undefined ? null : this.sheet.cell(row, place);
    return typeof cell === "string" && cell.trim() === "" ? null : cell;
  }

  private text(section: OwnSection, column: OwnColumn, row: number): string {
    const cell = this.cell(section, column, row);
    return cell === null || typeof cell === "object" ? "" : String(cell).trim();
  }

  private problem(section: OwnSection, column: OwnColumn, row: number, reason: string): null {
    const place = section.columns.get(column);
    const typed = this.cell(section, column, row);
    const head = place === undefined ? ` (the sheet has no column "${OWN_COLUMNS[column][0]}")` : "";
    this.problems.push({ row, column: place ?? 0, typed, reason: `${reason}${head}` });
    return null;
  }
}

/** What is wrong with a text of the owner's; null where it can stand for the one held. */
function faultOf(column: string, { value }: Figure, text: string): string | null {
  try {
    if (column === "formula" || column === "minimisedFormula") formula(text);
    else if (column === "limit") compileLimits(text);
    else if (column === "course") {
      const course = courseOfText(text);
      if (course === null) return "write an angle after the course as t: D = B sin t";
      pathTemplate(course.path, "planar");
    } else if (text === "") return `"${value}" is held: write what your copy says, or agrees`;
    return null;
  } catch (fault) {
    return fault instanceof Error ? fault.message : String(fault);
  }
}

const DAY = 86_400_000;

/** "2026-11-29" of a spreadsheet's date; any other text as it was typed. */
function dateText(cell: Cell, from1904: boolean): string | null {
  if (typeof cell === "string") return cell.trim();
  if (typeof cell !== "number" || !(cell > 0)) return null;
  const start = from1904 ? Date.UTC(1904, 0, 1) : Date.UTC(1899, 11, 30);
  return new Date(start + Math.floor(cell) * DAY).toISOString().slice(0, 10);
}

function plain(text: string): string {
  return text.toLowerCase().replace(/\s/g, "");
}
