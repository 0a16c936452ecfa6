import { describe, expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { EXPLAIN } from "../../../core/formulas/explain";
import { FORMER } from "../../../core/formulas/former";
import { MARKS } from "../../../core/formulas/marks";
import { joinOwn, ownTemplate, readOwn, standardOfBook } from "../../../core/own";
import { type Cell, type Sheet, sheetFromRows } from "../../../core/schedule/sheet";
import { courseTrust } from "../../../core/shapes/course";
import { cutLength } from "../../../core/shapes/cut-length";
import { resolveShape } from "../../../core/shapes/resolve-shape";
import { NOTHING_OWN, resolveStandard } from "../../../core/standards";
import { figuresOf, isUnsure } from "../../../core/standards/figures";
import { REGISTRY } from "../../../core/standards/registry";
import { answered, heldStandard } from "../../_support/held-standard";

// names, days and own shapes are invented; what "the copy says" stands for whatever an owner reads there
const WHO = ["R. Ashdown", "2026-11-02"];
const FIGURE_HEADS = ["standard", "figure", "held here", "your copy says", "who looked", "when"];
const SHAPE_HEADS = [
  "own code",
  "standard",
  "in words",
  "course",
  "length formula",
  "limits",
  "use",
  "who looked",
  "when",
];

const figures = (...lines: Cell[][]): Sheet => sheetFromRows("Standard", [FIGURE_HEADS, ...lines]);
const shapes = (...lines: Cell[][]): Sheet =>
  sheetFromRows("Standard", [
    SHAPE_HEADS,
    ...lines.map((line) => [...line, ...Array(7 - line.length).fill(null), ...WHO]),
  ]);
const reasons = (sheet: Sheet) =>
  readOwn(sheet).problems.map(({ row, column, reason }) => `${row},${column}: ${reason}`);

/** The sheet as it is written for a document, every figure looked up and found as `said` has it. */
function lookedUp(id: string, said: (name: string) => Cell = () => "agrees"): Sheet {
  const rows = ownTemplate([id]).map(({ kind, cells }) =>
    kind === "line" ? [...cells, said(String(cells[1])), ...WHO] : [...cells],
  );
  return sheetFromRows("Standard", rows);
}

describe("a sheet Standard in which every figure was looked up", () => {
  const book = standardOfBook(heldStandard("BS8666:2020"), [lookedUp("BS8666:2020")]);

  it("confirms them by that person on that day", () => {
    const former = answered(book.former({ diameter: 16, use: "main" }));
    expect(former).toMatchObject({ value: 64, cite: { provenance: "confirmed", by: WHO[0], on: WHO[1] } });
    expect(former.cite.conflict).toBeUndefined();
    expect(book.caution).toBeNull();
    const left = figuresOf(REGISTRY.find(({ id }) => id === "BS8666:2020")!).filter(({ cite }) =>
      isUnsure(cite),
    );
    expect(left.length).toBeGreaterThan(200);
    expect(readOwn(lookedUp("BS8666:2020"))).toMatchObject({ problems: [] });
  });

  it("makes a course sure that was in doubt, so that stops are given", () => {
    expect(courseTrust(heldStandard("BS8666:2020").shapes.get("27")!)).toBe("in doubt");
    expect(courseTrust(book.shapes.get("27")!)).toBe("sure");
    const marks = MARKS.call([[["27"]], [["H12"]], [[400, 1000, 400, 200]]], {
      defaultStandard: "BS8666:2020",
      own: book.own,
    });
    expect(marks).toHaveLength(3);
    expect(marks[0]).toHaveLength(8);
  });

  it("is told by EXPLAIN and keeps the sheet's one note of an edition not read away", () => {
    const lines = EXPLAIN.call([[["21"]], [["H16"]], [[1000, 400, 500]]], {
      defaultStandard: "BS8666:2020",
      own: book.own,
    }).flat();
    expect(lines.filter((line) => /memory|doubtful/.test(String(line)))).toEqual([]);
    expect(lines.some((line) => String(line).includes(`confirmed by ${WHO[0]}, ${WHO[1]}`))).toBe(true);
    const bars = sheetFromRows("Bars", [
      ["Mark", "Size", "Total", "Length", "Shape", "A", "B", "C"],
      ["1", "H16", 2, 1850, "21", 1000, 400, 500],
    ]);
    const standard = heldStandard("BS8666:2020");
    const codes = (sheets: Sheet[]) => runAudit({ sheets, standard }).findings.map(({ code }) => code);
    expect(codes([bars])).toContain("STANDARD101");
    expect(codes([bars, lookedUp("BS8666:2020")])).not.toContain("STANDARD101");
  });
});

describe("a figure that the copy has otherwise", () => {
  const own = readOwn(figures(["BS8666:2020", "least former: d 20, diameter", 140, 160, ...WHO])).own;

  it("is in force and named as the owner's, with what was held", () => {
    const { value, cite } = answered(
      answered(resolveStandard("BS8666:2020", own)).former({ diameter: 20, use: "main" }),
    );
    expect([value, cite.provenance, cite.was]).toEqual([160, "own", "140"]);
    expect(FORMER.call([[["H20"]]], { defaultStandard: "BS8666:2020", own })).toEqual([[160]]);
    // no other bar, and no other document
    expect(answered(heldStandard("BS8666:2020").former({ diameter: 20, use: "main" })).value).toBe(140);
    expect(FORMER.call([[["H16"]], [["BS8666:2020"]]], { defaultStandard: "BS8666:2005", own })).toEqual([
      [64],
    ]);
    expect(FORMER.call([[["H20"]]], { defaultStandard: "BS8666:2005", own })).toEqual([[140]]);
  });

  it("says how many figures are left to be looked up", () => {
    const { caution } = answered(resolveStandard("BS8666:2020", own));
    expect(caution).toMatch(/; 237 of 238 figures are not confirmed yet$/);
  });

  it("raises a line of several figures only when all of them were looked up", () => {
    const part = readOwn(figures(["SANS282:2011", "bar: 16; d 16, kg/m", null, "agrees", ...WHO])).own;
    const bar = answered(resolveStandard("SANS282:2011", part)).bars.find(({ size }) => size === "16")!;
    expect(bar.cite).toMatchObject({
      provenance: "memory",
      conflict: expect.stringContaining("1 of 2 figures"),
    });
    const whole = readOwn(
      figures(
        ["SANS282:2011", "bar: 16; d 16, kg/m", null, 1.58, ...WHO],
        ["SANS282:2011", "bar: 16; d 16, mm2", null, "201", ...WHO],
      ),
    ).own;
    const sure = answered(resolveStandard("SANS282:2011", whole)).bars.find(({ size }) => size === "16")!;
    expect(sure.cite.provenance).toBe("confirmed");
  });
});

describe("lines that cannot be taken", () => {
  it("are told with their cell and stay out of force", () => {
    const sheet = figures(
      ["BS8666:2020", "least former: d 16, diameter", 64, 640, ...WHO],
      ["BS8666:2020", "least former: d 17, diameter", null, 64, ...WHO],
      ["BS8666:2020", "least former: d 12, diameter", 48, 48, null, "2026-11-02"],
      ["BS8666:2020", "least former: d 10, diameter", 40, 40, "R. Ashdown", null],
      ["BS 9999", "least former: d 8, diameter", 32, 32, ...WHO],
      ["BS8666:2020", "shape 21, length formula", null, "A + B + (C", ...WHO],
      ["BS8666:2020", "least former: d 8, diameter", 32, "thirty", ...WHO],
    );
    expect(readOwn(sheet).own.figures).toEqual([]);
    expect(reasons(sheet)).toEqual([
      "1,3: 640 where 64 is held: look at the unit, which is that of the line",
      "2,1: no figure of BS8666:2020 has this name: write the sheet anew and copy the line",
      "3,4: write who looked: a figure that nobody signs is not taken",
      "4,5: write the day on which it was looked up",
      expect.stringMatching(/^5,0: standard "BS 9999" is not held/),
      expect.stringMatching(/^6,3: /),
      "7,3: no number: 32 is held, write what your copy says in the same unit",
    ]);
  });

  it("leave a sheet of that name alone that is a schedule", () => {
    const bars = sheetFromRows("Standard", [
      ["Mark", "Size", "Total", "Length", "Shape", "A"],
      ["1", "H16", 2, 1000, "00", 1000],
    ]);
    expect(runAudit({ sheets: [bars], standard: heldStandard("BS8666:2005") }).rows.bars).toBe(1);
  });
});

describe("own shape codes", () => {
  const sheet = shapes(
    [
      "z1",
      null,
      "slope between two straights",
      "A +t B -t (C); t: D = B sin t",
      "A + B + (C)",
      "A, (C) >= P",
    ],
    ["W1", null, "saddle", "A +90 B -90 C -90 B +90 (A)", "2A + 2B + C - 2r - 4d"],
    ["L2", null, "", "A +90 (B)"],
    ["T5", "BS8666:2005", "tie", "C +135 A +90 B +90 A +90 B +135 (C)", "2A + 2B + 20d", "", "link"],
    ["RING", null, "ring", "circle A lap B", "pi(A - d) + B"],
    ["HX", null, "helix", "helix A pitch B turns C", "C pi (A - d)"],
    ["K1", null, "knee", "A +45 (B)", "A + (B)"],
    ["S9", null, "stool", "A +90 B +90 C -90 B -90 (A)", "2A + 2B + C - 2r - 4d"],
    ["U7", null, "own radius", "A +90rR B +90rR (C)", "A + B + (C) - 0.86R - 2.4d", "R >= r"],
    ["C3", null, "cranked", "A +30 B -30 (C)", "A + B + (C)"],
  );
  const { own, problems } = readOwn(sheet);
  const standard = answered(resolveStandard("BS8666:2005", own));
  const cut = (shape: string, dims: number[]) =>
    answered(cutLength(answered(resolveShape({ standard, shape, dims, diameter: 12 })))).unrounded;

  it("are ten, each measured by its own formula or by geometry", () => {
    expect([problems, own.shapes.length]).toEqual([[], 10]);
    expect(cut("Z1", [400, 1000, 400, 200])).toBe(1800);
    // 2 x 300 + 2 x 400 + 800 - 2 x 24 - 4 x 12
    expect(cut("W1", [300, 400, 800])).toBe(2104);
    // 600 + 500 - 2 x 36 + pi/2 x 30
    expect(cut("L2", [600, 500])).toBeCloseTo(1028 + 15 * Math.PI, 9);
    expect(cut("RING", [500, 150])).toBeCloseTo(488 * Math.PI + 150, 9);
    // 500 + 600 + 500 - 0.86 x 100 - 2.4 x 12
    expect(cut("U7", [500, 600, 500, 100])).toBeCloseTo(1485.2, 9);
  });

  it("take letters, free leg, use and limits from what is written", () => {
    expect(standard.shapes.get("Z1")).toMatchObject({
      dims: ["A", "B", "C", "D"],
      free: "C",
      limits: [{ text: "A, (C) >= P" }],
    });
    expect(standard.shapes.get("T5")).toMatchObject({ use: "link", cite: { provenance: "own", by: WHO[0] } });
    expect(standard.shapes.get("U7")?.dims).toEqual(["A", "B", "C", "R"]);
    expect(answered(resolveStandard("EC2:2004", own)).shapes.has("T5")).toBe(false);
    expect(answered(resolveStandard("EC2:2004", own)).shapes.has("Z1")).toBe(true);
  });

  it("are checked like any other", () => {
    const bars = sheetFromRows("Bars", [
      ["Mark", "Size", "Total", "Length", "Shape", "A", "B", "C", "D"],
      ["1", "H12", 2, 1800, "Z1", 400, 1000, 400, 200],
      ["2", "H12", 2, 1800, "Z1", 100, 1300, 400, 200],
      ["3", "H12", 2, 1500, "L2", 600, 500, null, null],
    ]);
    const { findings } = runAudit({ sheets: [bars, sheet], standard: heldStandard("BS8666:2005") });
    const seen = findings
      .filter(({ severity }) => severity !== "note")
      .map(({ code, cell }) => `${code} ${cell}`);
    // A below P (125) of row 2; row 3 is 1028 + 47 up to 1100
    expect(seen).toEqual(["BEND102 F3", "LEN102 D4"]);
  });

  it("refuse a code that the document has, a letter that is no leg, and a course that cannot be laid", () => {
    expect(
      reasons(
        shapes(
          ["21", "BS8666:2005", "", "A +90 (B)"],
          ["X1", null, "", "A +90"],
          ["X2", null, "", "A +t (B)"],
          ["X3", null, "", "A +90 (B)", "A + B + C"],
          ["no code at all", null, "", "A +90 (B)"],
        ),
      ),
    ).toEqual([
      "1,0: BS8666:2005 has a shape of this code: give the own shape a code of its own",
      expect.stringMatching(/^2,3: the path "A \+90" does not end with a leg/),
      expect.stringMatching(/^3,3: the angle t has no equation/),
      "4,4: C is no leg of the course and in none of its angles",
      expect.stringMatching(/^5,0: no code/),
    ]);
  });
});

describe("what is kept and taken along", () => {
  it("gives the same standard for an equal sheet, and another for another", () => {
    const line = ["BS8666:2020", "least former: d 20, diameter", 140, 160, ...WHO];
    const [one, same] = [readOwn(figures(line)).own, readOwn(figures([...line])).own];
    expect(resolveStandard("BS8666:2020", one)).toBe(resolveStandard("BS8666:2020", same));
    expect(resolveStandard("BS8666:2020", one)).not.toBe(resolveStandard("BS8666:2020"));
    expect(resolveStandard("BS8666:2020", NOTHING_OWN)).toBe(resolveStandard("BS8666:2020"));
  });

  it("is read back as it was written", () => {
    const { own } = readOwn(
      shapes(["Z1", null, "slope", "A +t B -t (C); t: D = B sin t", "A + B + (C)", "A >= P; (C) >= P"]),
    );
    const written = ownTemplate(["BS8666:2005"], own).map(({ cells }) => [...cells]);
    expect(readOwn(sheetFromRows("Standard", written)).own.shapes[0]).toEqual(own.shapes[0]);
  });

  it("of a file stands behind the workbook's own", () => {
    const [book, file] = [160, 170].map(
      (copy) => readOwn(figures(["BS8666:2020", "least former: d 20, diameter", 140, copy, ...WHO])).own,
    );
    expect(joinOwn(book!, file!).figures).toEqual(book!.figures);
  });
});

describe("figures of every document", () => {
  it.each(REGISTRY.map(({ id }) => id))("%s: each has a name of its own, so that a sheet means one", (id) => {
    const names = figuresOf(REGISTRY.find((tables) => tables.id === id)!).map(({ name }) => name);
    expect(names.filter((name, place) => names.indexOf(name) !== place)).toEqual([]);
  });

  it.each(REGISTRY.map(({ id }) => id))(
    "%s: a sheet that agrees in all confirms all and changes none",
    (id) => {
      const { own, problems } = readOwn(lookedUp(id));
      expect(problems).toEqual([]);
      const before = heldStandard(id);
      const after = answered(resolveStandard(id, own));
      for (const bar of before.bars) {
        const now = after.bars.find(({ size }) => size === bar.size)!;
        expect([now.area, now.massPerMetre]).toEqual([bar.area, bar.massPerMetre]);
        for (const use of before.uses) {
          const question = { diameter: bar.diameter, use };
          const [held, confirmed] = [before.former(question), after.former(question)];
          expect("value" in confirmed ? confirmed.value : null).toBe("value" in held ? held.value : null);
        }
      }
      expect([...after.shapes.values()].map(({ formula, path }) => [formula, path])).toEqual(
        [...before.shapes.values()].map(({ formula, path }) => [formula, path]),
      );
    },
  );
});
