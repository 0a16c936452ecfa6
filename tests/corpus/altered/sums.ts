import type { BarRow } from "../../../core/schedule/bar-row";
import type { Cell } from "../../../core/schedule/sheet";
import type { Alter, Alteration, AlteredBook } from "./altered-books";
import {
  type Amount,
  bySize,
  putBelow,
  putBeside,
  type Summable,
  summable,
  summed,
  written,
} from "./true-sums";

/** What a summary states of each size. */
type Figure = "bars" | "length" | "perLength" | "mass" | "tonnes";

const SETS: readonly (readonly Figure[])[] = [
  ["mass"],
  ["length", "mass"],
  ["length", "perLength", "mass"],
  ["bars", "length", "perLength", "mass"],
  ["bars", "mass"],
  ["bars", "length", "mass"],
  ["perLength", "length", "mass"],
  ["length"],
  ["tonnes"],
  ["length", "tonnes"],
  ["mass", "length"],
];
const KG_PER_TONNE = 1000;
const SIZES = 2;

function figure(list: Summable, of: Amount, kind: Figure, places: number): Cell {
  if (kind === "bars") return of.bars;
  if (kind === "tonnes") return written(list, of.mass / KG_PER_TONNE, 3);
  return written(list, of[kind], kind === "perLength" ? 3 : places);
}

function headOf({ words, isImperial }: Summable, kind: Figure, look: string): string {
  const [words1, unit] = {
    bars: [words.count, ""],
    length: [words.length, isImperial ? "ft" : "m"],
    perLength: [isImperial ? "lb/ft" : "kg/m", ""],
    mass: [words.mass, isImperial ? "lb" : "kg"],
    tonnes: [words.mass, "t"],
  }[kind] as [string, string];
  if (unit === "") return words1;
  return look === "()" ? `${words1} (${unit})` : look === "[]" ? `${words1} [${unit}]` : `${words1} ${unit}`;
}

const unitOf = ({ isImperial }: Summable, kind: Figure): string =>
  ({
    bars: "",
    length: isImperial ? "ft" : "m",
    perLength: isImperial ? "lb/ft" : "kg/m",
    mass: isImperial ? "lb" : "kg",
    tonnes: "t",
  })[kind];

/** How this summary writes its sizes: as its list does, or otherwise. */
function sizeWriter({ draw }: Alteration, list: Summable, isNumberClear: boolean): (of: Amount) => Cell {
  const keyOf = ({ size }: BarRow): string => size?.bar?.size ?? String(size?.diameter);
  const typed = new Map(list.reading.bars.map((bar) => [keyOf(bar), bar.sizeTyped ?? ""]));
  const isMetric = (size: string): boolean => /^\d+$|^\p{L}+\d+$/u.test(size) && !/^#|M$/.test(size);
  const areMetric = list.amounts.every(({ size, diameter }) => isMetric(size) && Number.isInteger(diameter));
  const isAsTyped =
    [...typed.values()].every((text) => /^[^\d]{0,3}\d{1,2}(?:\s?mm|M)?$/.test(text)) &&
    list.reading.bars.every((bar) => typed.get(keyOf(bar)) === (bar.sizeTyped ?? ""));
  const ways: string[] = [];
  if (isAsTyped) ways.push("list", "list");
  if (areMetric) ways.push("Ø", "mm", ...(isNumberClear ? ["number"] : []));
  const way = ways.length === 0 ? "plain" : draw.pick(ways);
  return ({ size, diameter }) => {
    if (way === "Ø") return `Ø${diameter}`;
    if (way === "mm") return `${diameter} mm`;
    if (way === "number") return diameter;
    if (way === "plain") return size;
    const text = typed.get(size) as string;
    return isNumberClear || /\D/.test(text) ? (/^\d+$/.test(text) ? Number(text) : text) : `Ø${text}`;
  };
}

const sumOf = (amounts: readonly Amount[]): Amount => summed(amounts, () => "")[0] as Amount;

/** Total, waste and grand total under figures that begin at `at`. */
function feet(
  given: Alteration,
  list: Summable,
  amounts: readonly Amount[],
  figures: readonly Figure[],
  places: number,
  isWasteAsked = false,
): Cell[][] {
  const { draw } = given;
  const { words } = list;
  const sum = sumOf(amounts);
  const line = (label: string, share: number, kinds: readonly Figure[]): Cell[] => [
    label,
    ...figures.map((kind) =>
      kinds.includes(kind)
        ? figure(list, { ...sum, length: sum.length * share, mass: sum.mass * share }, kind, places)
        : null,
    ),
  ];
  const masses: readonly Figure[] = ["mass", "tonnes"];
  const summedKinds: readonly Figure[] = draw.chance(0.5) ? masses : ["bars", "length", "mass", "tonnes"];
  const isTotalled = figures.some((kind) => summedKinds.includes(kind));
  const rows = isTotalled && (isWasteAsked || draw.chance(0.7)) ? [line(words.total, 1, summedKinds)] : [];
  if (isWasteAsked && figures.some((kind) => masses.includes(kind)))
    rows.push(line(words.waste, 0.03, masses), line(words.withWaste, 1.03, masses));
  return rows;
}

/** Sizes one below another, with heads. */
function down(given: Alteration, list: Summable, isWasteAsked = false): Cell[][] {
  const { draw } = given;
  const figures = draw.pick(SETS);
  const look = draw.pick(["()", "[]", ""]);
  const places = draw.pick([0, 1, 2]);
  const size = sizeWriter(given, list, true);
  const own = list.table.columns.get("size")?.header.split("\n")[0] ?? "";
  const sizeHead = own !== "" && own.length < 14 && draw.chance(0.6) ? own : list.words.size;
  return [
    [sizeHead, ...figures.map((kind) => headOf(list, kind, look))],
    ...bySize(list.amounts).map((of) => [size(of), ...figures.map((kind) => figure(list, of, kind, places))]),
    ...feet(given, list, list.amounts, figures, places, isWasteAsked),
  ];
}

/** Sizes one beside another. */
function across(given: Alteration, list: Summable): Cell[][] {
  const { draw } = given;
  const figures = draw.pick(SETS.filter((set) => !set.includes("bars")));
  const look = draw.pick(["()", "[]", ""]);
  const places = draw.pick([0, 1, 2]);
  const size = sizeWriter(given, list, true);
  const sums = bySize(list.amounts);
  const hasSum = draw.chance(0.6);
  const sum = sumOf(list.amounts);
  const words = draw.pick(["first", "first", "last", "unit"]);
  const labelled = (label: string, cells: Cell[]): Cell[] =>
    words === "last" ? [...cells, label] : [label, ...cells];
  return [
    labelled(list.words.size, [...sums.map(size), ...(hasSum ? [list.words.total] : [])]),
    ...figures.map((kind) =>
      labelled(words === "unit" ? unitOf(list, kind) : headOf(list, kind, look), [
        ...sums.map((of) => figure(list, of, kind, places)),
        ...(hasSum && kind !== "perLength" ? [figure(list, sum, kind, places)] : []),
      ]),
    ),
  ];
}

/** Members one below another, with what each weighs. */
function ofMembers(given: Alteration, list: Summable): Cell[][] {
  const { draw } = given;
  const figures = draw.pick([["mass"], ["bars", "mass"], ["tonnes"]] as const);
  const own = list.table.columns.get("member")?.header.split("\n")[0] ?? "";
  const look = draw.pick(["()", "[]", ""]);
  return [
    [
      own !== "" && draw.chance(0.6) ? own : list.words.member,
      ...figures.map((kind) => headOf(list, kind, look)),
    ],
    ...summed(list.amounts, ({ member }) => member).map((of) => [
      of.member,
      ...figures.map((kind) => figure(list, of, kind, 1)),
    ]),
    ...feet(given, list, list.amounts, figures, 1),
  ];
}

/** Members down, sizes across, kg. */
function ofBoth(given: Alteration, list: Summable): Cell[][] {
  const sizes = bySize(list.amounts);
  const size = sizeWriter(given, list, true);
  const kind = given.draw.pick(["mass", "length"] as const);
  const line = (label: string, amounts: readonly Amount[]): Cell[] => [
    label,
    ...sizes.map((one) => {
      const of = amounts.filter((another) => another.size === one.size);
      return of.length === 0 ? null : figure(list, sumOf(of), kind, 1);
    }),
    figure(list, sumOf(amounts), kind, 1),
  ];
  return [
    [list.words.member, ...sizes.map(size), list.words.total],
    ...summed(list.amounts, ({ member }) => member).map(({ member }) =>
      line(
        member,
        list.amounts.filter((one) => one.member === member),
      ),
    ),
    line(list.words.total, list.amounts),
  ];
}

const titled = ({ draw }: Alteration, { words }: Summable, rows: Cell[][]): Cell[][] =>
  draw.chance(0.5) ? [[words.title], ...(draw.chance(0.3) ? [[]] : []), ...rows] : rows;

function at({ draw }: Alteration, list: Summable, rows: readonly (readonly Cell[])[]): Cell[][] {
  const widest = Math.max(...rows.map((cells) => cells.length));
  const room = Math.max(0, list.lastColumn - widest + 1);
  const left = draw.pick([0, list.firstColumn, Math.min(1, room), Math.floor(room / 2), room]);
  return rows.map((cells) => (cells.length === 0 ? [] : [...Array(left).fill(null), ...cells]));
}

type Make = (given: Alteration, list: Summable) => Cell[][] | null;

/** A summary of the list below it, at a column and after blank rows by the draw. */
const below =
  (make: Make, blanks: readonly number[] = [0, 1, 1, 2]): Alter =>
  (given) => {
    const list = summable(given);
    if (list === null || bySize(list.amounts).length < SIZES) return null;
    const rows = make(given, list);
    if (rows === null) return null;
    putBelow(list, given.book, at(given, list, rows), given.draw.pick(blanks));
    return given.book;
  };

const membersOf = (list: Summable): number => new Set(list.amounts.map(({ member }) => member)).size;
const haveMembers = (list: Summable): boolean =>
  membersOf(list) > 1 && membersOf(list) < 9 && list.amounts.every(({ member }) => member !== "");

/** Sums of the list by size, in the ways in which offices write them. */
export const SUMS: Readonly<Record<string, Alter>> = {
  "sizes down": below((given, list) => titled(given, list, down(given, list))),
  "sizes down, no head": below((given, list) => {
    const { draw } = given;
    const size = sizeWriter(given, list, false);
    const figures = draw.pick([["mass"], ["length", "mass"]] as const);
    const hasUnits = draw.chance(0.6);
    const places = draw.pick([0, 1, 2]);
    const units = figures.map((kind) => unitOf(list, kind)).join(", ");
    const rows = bySize(list.amounts).map((of) => [
      size(of),
      ...figures.flatMap((kind) => [
        figure(list, of, kind, places),
        ...(hasUnits ? [unitOf(list, kind)] : []),
      ]),
    ]);
    return [[hasUnits ? list.words.title : `${list.words.title} (${units})`], ...rows];
  }),
  "sizes across": below((given, list) => titled(given, list, across(given, list))),
  "beside, down": besideThe((given, list) => titled(given, list, down(given, list))),
  "beside, across": besideThe((given, list) => titled(given, list, across(given, list))),
  "under its columns": below(
    (given, list) => {
      const { columns } = list.table;
      const places = given.draw.pick([0, 1, 2]);
      const inTonnes = columns.get("mass")?.unit === "t";
      const of: readonly (readonly [Figure, number | undefined])[] = [
        ["bars", given.draw.chance(0.5) ? columns.get("total")?.column : undefined],
        ["length", columns.get("totalLength")?.column],
        [inTonnes ? "tonnes" : "mass", columns.get("mass")?.column],
      ];
      const at = columns.get("size")?.column;
      const figures = of.filter((one): one is readonly [Figure, number] => one[1] !== undefined);
      if (at === undefined || !figures.some(([kind]) => kind !== "bars")) return null;
      const isInList = (kind: Figure) =>
        kind !== "length" || ["m", "ft"].includes(String(columns.get("totalLength")?.unit));
      if (!figures.every(([kind]) => isInList(kind))) return null;
      const size = sizeWriter(given, list, true);
      const widest = Math.max(at, ...figures.map(([, column]) => column));
      const label = Math.min(list.firstColumn, at);
      const line = (first: Cell, amount: Amount, where: number): Cell[] => {
        const cells: Cell[] = Array(widest + 1).fill(null);
        cells[where] = first;
        for (const [kind, column] of figures) cells[column] = figure(list, amount, kind, places);
        return cells;
      };
      const rows = bySize(list.amounts).map((one) => line(size(one), one, at));
      const isTitled = label !== at;
      if (isTitled && given.draw.chance(0.5)) (rows[0] as Cell[])[label] = list.words.title;
      else rows.unshift([list.words.title]);
      if (given.draw.chance(0.6)) rows.push(line(list.words.total, sumOf(list.amounts), label));
      return rows;
    },
    [0, 1],
  ),
  "total lines by size": below(
    (given, list) => {
      const at = list.table.columns.get(given.draw.chance(0.5) ? "mass" : "totalLength");
      const isLength = at?.kind === "totalLength";
      if (at === undefined || (isLength && !["m", "ft"].includes(String(at.unit)))) return null;
      const size = sizeWriter(given, list, false);
      const where = Math.min(list.firstColumn, at.column);
      if (where === at.column) return null;
      const kind = isLength ? "length" : at.unit === "t" ? "tonnes" : "mass";
      return bySize(list.amounts).map((of) => {
        const cells: Cell[] = Array(at.column + 1).fill(null);
        cells[where] = `${list.words.total} ${size(of)}`;
        cells[at.column] = figure(list, of, kind, 1);
        return cells;
      });
    },
    [0, 1],
  ),
  "two blocks": below((given, list) => {
    const size = sizeWriter(given, list, true);
    const block = (kind: Figure): Cell[][] => [
      [list.words.size, headOf(list, kind, "()")],
      ...bySize(list.amounts).map((of) => [size(of), figure(list, of, kind, 1)]),
      [list.words.total, figure(list, sumOf(list.amounts), kind, 1)],
    ];
    return [...titled(given, list, block("length")), [], ...block("mass")];
  }),
  "by grade": below((given, list) => {
    if (list.amounts.some(({ grade }) => grade === "")) return null;
    const size = sizeWriter(given, list, true);
    const sums = summed(list.amounts, (one) => `${one.grade} ${one.size}`).sort(
      (one, other) => one.grade.localeCompare(other.grade) || one.diameter - other.diameter,
    );
    const own = list.table.columns.get("grade")?.header ?? "Grade";
    const isInOne = given.draw.chance(0.3);
    const first = (of: Amount): Cell[] =>
      isInOne
        ? [`${of.grade} ${typeof size(of) === "number" ? `Ø${size(of)}` : size(of)}`]
        : [of.grade, size(of)];
    return titled(given, list, [
      [...(isInOne ? [] : [own]), list.words.size, headOf(list, "length", "()"), headOf(list, "mass", "()")],
      ...sums.map((of) => [...first(of), figure(list, of, "length", 1), figure(list, of, "mass", 1)]),
      [
        ...(isInOne ? [] : [list.words.total]),
        isInOne ? list.words.total : null,
        null,
        figure(list, sumOf(list.amounts), "mass", 1),
      ],
    ]);
  }),
  "with waste": below((given, list) => titled(given, list, down(given, list, true))),
  "with notes": below((given, list) => {
    const rows = titled(given, list, down(given, list));
    rows.splice(given.draw.pick([0, rows.length]), 0, [list.words.note]);
    return rows;
  }),
  "merged title": (given) => {
    const list = summable(given);
    if (list === null || bySize(list.amounts).length < SIZES) return null;
    const rows = given.draw.chance(0.6) ? down(given, list) : across(given, list);
    const widest = Math.max(...rows.map((cells) => cells.length));
    const letter = String.fromCharCode(64 + widest);
    putBelow(list, given.book, [[list.words.title], ...rows], given.draw.pick([1, 2]), [`A1:${letter}1`]);
    return given.book;
  },
  "by member": below((given, list) =>
    haveMembers(list) ? titled(given, list, ofMembers(given, list)) : null,
  ),
  "by member and size": below((given, list) =>
    haveMembers(list) ? titled(given, list, ofBoth(given, list)) : null,
  ),
  "on a second sheet": (given) => {
    const list = summable(given);
    if (list === null || given.readings.length > 1 || bySize(list.amounts).length < SIZES) return null;
    const make = given.draw.pick([down, across, ...(haveMembers(list) ? [ofMembers, ofBoth] : [])]);
    const rows = [[list.words.title], [], ...make(given, list)];
    given.book.sheets.push({ name: list.words.title.slice(0, 28), rows });
    return given.book;
  },
};

/** A summary at the right of the list, one column or two away, from its head on or lower. */
function besideThe(make: (given: Alteration, list: Summable) => Cell[][]): Alter {
  return (given): AlteredBook | null => {
    const list = summable(given);
    if (list === null || bySize(list.amounts).length < SIZES) return null;
    const { draw, book } = given;
    const rows = make(given, list);
    const top = draw.pick([list.table.headerTop, list.table.headerTop, list.table.headerBottom + 1]);
    putBeside(list.sheet, top, list.lastColumn + 1 + draw.pick([1, 1, 2]), rows);
    return book;
  };
}
