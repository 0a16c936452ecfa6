import { describe, expect, it } from "vitest";
import { checkBooks } from "../../../core/jobs";
import { readSchedule } from "../../../core/schedule/read-schedule";
import { type Cell, type Sheet, sheetFromRows } from "../../../core/schedule/sheet";
import { resolveStandard } from "../../../core/standards/index";
import type { Standard } from "../../../core/standards/port";
import { BARS, HEADS } from "./plain-list";

const standard = resolveStandard("BS8666:2005") as Standard;

interface Given {
  readonly name: string;
  readonly rows: readonly (readonly Cell[])[];
  readonly merges?: Sheet["merges"];
}

/** Tonnes and what is told above a note, of a book of such sheets. */
function check(...sheets: readonly Given[]) {
  const read = new Map(
    sheets.map(({ name, rows, merges = [] }) => [name, { ...sheetFromRows(name, rows), merges }]),
  );
  const book = {
    name: "Invented yard",
    sheets: sheets.map(({ name }) => ({ name, visibility: "visible" as const })),
    read: (name: string) => read.get(name) as Sheet,
    setting: () => null,
  };
  const [checked] = checkBooks([book], { sheet: null, standard: "BS8666:2005" });
  if (checked === undefined || !("tonnage" in checked)) throw new Error("not checked");
  const loud = checked.report.findings.filter(({ severity }) => severity !== "note");
  return {
    kg: Math.round(checked.tonnage.tonnage.total * 1e4) / 10,
    loud: loud.map(({ code, cell }) => `${code} ${cell}`),
  };
}

const list = (...rows: readonly (readonly Cell[])[]) => check({ name: "List", rows });
/** the masses of the list by hand: 17.76 + 53.28 + 63.16 + 63.16 + 44.4 */
const KG = 241.8;

describe("a header that stands again", () => {
  // shape and dimensions of a list with a head of two rows, merged where it stands first
  const top = ["Mark", "Size", "Total no.", "Length mm", "Shape", "Dimensions mm", null, "Mass kg"];
  const under = [null, null, null, null, null, "A", "B"];
  const merges = [0, 1, 2, 3, 4, 7].map((column) => ({ top: 0, bottom: 1, left: column, right: column }));
  const bars = BARS.map(([mark, size, count, length, mass]) => {
    return [mark, size, count, length, "00", length, null, mass] as Cell[];
  });

  it.each([
    ["twice at the beginning", [top, under, top, under, ...bars]],
    ["twice with a blank row between", [top, under, [], top, under, ...bars]],
    ["on the next page", [top, under, ...bars.slice(0, 3), [], top, under, ...bars.slice(3)]],
  ])("should begin no list of its second row: %s", (_, rows) => {
    expect(check({ name: "List", rows, merges })).toEqual({ kg: KG, loud: [] });
  });
});

describe("a list that goes on over pages and sheets", () => {
  it("should sum a group over the page, whatever is carried to it", () => {
    const rows = [
      [HEADS, ...BARS.slice(0, 2), ["Subtotal", "", "", "", 71.04]],
      [BARS[2], ["Carried forward", "", "", "", 134.2], HEADS, ["Brought forward", "", "", "", 134.2]],
      // 63.16 + 63.16 + 44.4
      [...BARS.slice(3), ["Subtotal", "", "", "", 170.72]],
    ].flat() as Cell[][];
    expect(list(...rows)).toEqual({ kg: KG, loud: [] });
  });

  it("should tell a sum over the page that is another", () => {
    const rows = [
      [HEADS, ...BARS.slice(0, 2), ["Subtotal", "", "", "", 71.04]],
      [BARS[2], ["Carried forward", "", "", "", 134.2], HEADS, ["Brought forward", "", "", "", 134.2]],
      [...BARS.slice(3), ["Subtotal", "", "", "", 180.72]],
    ].flat() as Cell[][];
    expect(list(...rows).loud).toHaveLength(1);
  });

  it("should go on where sums with a head of their own stand below its rest", () => {
    const sums: Cell[][] = [
      ["Size", "kg/m", "Length m", "Mass kg"],
      ["H12", 0.888, 130, 115.44],
      ["H16", 1.579, 80, 126.32],
    ];
    const first = { name: "1", rows: [HEADS, ...BARS.slice(0, 3)] };
    const second = { name: "2", rows: [...BARS.slice(3), [], ...sums] };
    expect(check(first, second).kg).toBe(KG);
  });

  it("should leave sums alone that no rest of a list stands over", () => {
    const rows: Cell[][] = [
      ["Size", "kg/m", "Length m", "Mass kg"],
      ["H12", 0.888, 130, 115.44],
      ["H16", 1.579, 80, 126.32],
    ];
    const follows = sheetFromRows("1", [HEADS, ...BARS]);
    const reading = readSchedule({ ...sheetFromRows("2", rows), follows }, standard);
    expect(reading).toMatchObject({ bars: [], tables: [] });
    expect(reading.summaries).toHaveLength(1);
  });
});

describe("rows of words around a list", () => {
  it.each([
    ["a page's title", ["Sheet 2", null, null, "Project: Yard hall"]],
    ["a member and its drawing", ["Foundations", null, null, "Drawing no. S-201"]],
    ["the same in another writing", ["基礎", null, null, "図面番号 S-201"]],
  ])("should be no bars: %s", (_, row) => {
    expect(list(HEADS, ...BARS.slice(0, 2), row, ...BARS.slice(2))).toEqual({ kg: KG, loud: [] });
    expect(list(HEADS, row, ...BARS)).toEqual({ kg: KG, loud: [] });
  });

  it("should be no bars where what is labelled stands under the shape", () => {
    const rows = BARS.map((bar) => [...bar.slice(0, 3), "00", ...bar.slice(3)]);
    const heads = [...HEADS.slice(0, 3), "Shape", ...HEADS.slice(3)];
    const title = ["Sheet 2", null, null, "Project: Yard hall"];
    expect(list(heads, ...rows.slice(0, 2), title, ...rows.slice(2))).toEqual({ kg: KG, loud: [] });
    expect(list(heads, ...rows, ["06", null, null, "bent: ask"]).loud.length).toBeGreaterThan(0);
  });

  it("should be told where the first of them is a mark", () => {
    const row = ["06", "as drawn", null, "to suit site"];
    expect(list(HEADS, ...BARS.slice(0, 2), row, ...BARS.slice(2)).loud).toContain("READ101 B4");
  });

  it.each<[string, Cell[][]]>([
    [
      "signatures",
      [[], ["Erstellt", "Geprüft", null, "Freigegeben"], ["J.K.", "M.L."], ["12.03.2025", "04.04.2025"]],
    ],
    [
      "revisions",
      [[], ["Index", "Datum", "Beschreibung", "Erstellt"], ["A", "12.03.2025", "Erstausgabe", "J.K."]],
    ],
    [
      "numbered notes",
      [
        ["Hinweise"],
        [1, "Gilt zusammen mit Plan S-201."],
        [2, "Alle Maße sind auf der Baustelle zu prüfen."],
      ],
    ],
  ])("should be the foot of the sheet: %s", (_, foot) => {
    expect(list(HEADS, ...BARS, ...foot)).toEqual({ kg: KG, loud: [] });
  });

  it("should tell of a row without figures right below the bars", () => {
    expect(list(HEADS, ...BARS, ["06", "J.K.", "M.L."]).loud.length).toBeGreaterThan(0);
  });
});

describe("a sheet that says how bars are bent", () => {
  it("should list none", () => {
    const rows = [
      ["Shape code", "Description", "A", "B", "C"],
      ["00", "straight", "x", null, null],
      ["21", "both ends bent", "x", "x", "x"],
    ];
    expect(check({ name: "List", rows: [HEADS, ...BARS] }, { name: "Shapes", rows })).toEqual({
      kg: KG,
      loud: [],
    });
  });
});

describe("a bar that is cancelled", () => {
  const heads = [...HEADS, "Remark"];
  const bars = BARS.map((bar) => [...bar, null]);
  const cancelled = ["06", "H12", 10, 1000, 8.88, "cancelled"];
  const sums: Cell[][] = [[], ["H12", null, null, null, 115.44], ["H16", null, null, null, 126.32]];

  it("should stand in no sum by size and in no total", () => {
    expect(list(heads, ...bars, cancelled, ...sums)).toEqual({ kg: KG, loud: [] });
    expect(list(heads, ...bars, cancelled, ["Total", null, null, null, 241.76])).toEqual({
      kg: KG,
      loud: [],
    });
  });

  it.each(["取消", "취소", "HỦY", "باطل", "VOID"])("should be none where its size says %s", (word) => {
    expect(list(heads, ...bars.slice(0, 2), ["06", word], ...bars.slice(2))).toEqual({ kg: KG, loud: [] });
  });
});
