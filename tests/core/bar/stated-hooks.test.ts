import { describe, expect, it } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { leastHooksIn } from "../../../core/bar/stated-hooks";
import { type Cell, sheetFromRows } from "../../../core/schedule/sheet";
import { heldStandard } from "../../_support/held-standard";

// notes as offices write them, invented: what is wanted is what each says, an inch being 25.4 mm
describe("the least of a hook in a note", () => {
  it.each([
    ["Tie hooks not less than 6d nor 3 in", 6, 76.2],
    ['Hooks min. 3"', 0, 76.2],
    ["Estribos: ganchos a 135\u00ba, m\u00ednimo 10\u00d8", 10, 0],
    ["Crochets : mini 10 \u00d8", 10, 0],
    ["Haken mindestens 10 ds, mind. 8 cm", 10, 80],
    ["ganci almeno 8 diametri", 8, 0],
    ["Ties: 2A + 2B + 2C, C = 135 deg hook, not less than 13 bar diameters", 13, 0],
    [
      "\u043a\u0440\u044e\u043a\u0438 \u043d\u0435 \u043c\u0435\u043d\u0435\u0435 75 \u043c\u043c".replace(
        "\u043c\u043c",
        "mm",
      ),
      0,
      75,
    ],
    [
      "\u0642\u0644\u0627\u0628 \u062d\u062f\u0627\u0642\u0644 \u06f7\u066b\u06f5 \u0633\u0627\u0646\u062a\u06cc\u200c\u0645\u062a\u0631",
      0,
      75,
    ],
  ])("%s", (note, diameters, mm) => {
    const [found, ...more] = leastHooksIn(note);
    expect(more).toEqual([]);
    expect(found?.diameters).toBe(diameters);
    expect(found?.mm).toBeCloseTo(mm, 6);
  });

  it.each([
    "Stirrup = 2(a+b) + 2 hooks 10 cm",
    "Hooks 135 deg, laps min 50 d",
    "Formers for hooks at least 4d",
    "Ties T1: #4 135\u00b0 hooks. Max length 40-00",
    "Bars at least 12 m",
    "Hooks at least 135\u00b0",
  ])("is not said by %s", (note) => {
    expect(leastHooksIn(note)).toEqual([]);
  });
});

describe("hooks of a list that says how long they are at least", () => {
  const HEADS = ["Mark", "Dia mm", "Total no.", "A", "B", "Hook", "Length mm"];
  const list = (note: string, ...hooks: readonly number[]): Cell[][] => [
    [note],
    HEADS,
    // 2 (300 + 400) and two hooks
    ...hooks.map((hook, at): Cell[] => [`T${at + 1}`, 10, 20, 300, 400, hook, 1400 + 2 * hook]),
  ];
  const said = (rows: readonly (readonly Cell[])[]): string[] =>
    runAudit({ sheets: [sheetFromRows("Ties", rows)], standard: heldStandard("EC2:2004") })
      .findings.filter(({ code }) => code === "BEND111")
      .map(({ cell, message }) => `${cell}: ${message}`);

  it("should be told where one is shorter", () => {
    // 10 x 10 mm
    const note = "Hooks at least 10 d";
    expect(said(list(note, 100, 100, 110, 120))).toEqual([]);
    expect(said(list(note, 100, 100, 110, 70))).toEqual([
      "G6: hook 70 mm of 10 is below the 100 mm that A1 asks of hooks: is it a slip?",
    ]);
    expect(said(list("Hooks 10 d", 100, 100, 110, 70))).toEqual([]);
  });

  it("should say nothing where they go by something else, or where two notes differ", () => {
    expect(said(list("Hooks at least 10 d", 80, 70, 110, 70))).toEqual([]);
    expect(said(list("Hooks at least 10 d; tie hooks at least 6 d", 100, 100, 110, 70))).toEqual([]);
  });

  it("should take a small number among lengths for a length, and small ones alone for counts", () => {
    // 3 mm are less than 5 x 10
    expect(said(list("Ties", 100, 100, 110, 3))).toEqual(["G6: hook 3 mm of 10 is below 5 d: is it a slip?"]);
    expect(said(list("Ties", 2, 2, 2, 1))).toEqual([]);
  });

  it("should tell of one where another keeps it", () => {
    expect(said(list("Hooks at least 10 d", 100, 60))).toEqual([
      "G4: hook 60 mm of 10 is below the 100 mm that A1 asks of hooks: is it a slip?",
    ]);
  });
});

// each size has a least of its own; 4 1/2 in are 114.3 mm
describe("the least of hooks by size", () => {
  it.each([
    [
      'Tie hook leg not less than 4\u00bd" for #4, 5\u00bd" for #5.',
      [
        ["#4", 114.3],
        ["#5", 139.7],
      ],
    ],
    [
      "\u30d5\u30c3\u30af\u5bf8\u6cd5 D10=90\u4ee5\u4e0a\u3001D13=110\u4ee5\u4e0a",
      [
        ["10", 90],
        ["13", 110],
      ],
    ],
    [
      "Hooks at least 115 (H8), 130 (H10), 160 (H12)",
      [
        ["8", 115],
        ["10", 130],
        ["12", 160],
      ],
    ],
  ] as const)("%s", (note, sizes) => {
    const [found] = leastHooksIn(note);
    expect([...(found?.bySize ?? [])].map(([size, mm]) => [size, Number(mm.toFixed(6))])).toEqual(sizes);
  });

  it("should be asked of the hooks of that size alone", () => {
    const rows = (hook: number): Cell[][] => [
      ["Hooks at least 90 (D10), 110 (D13)"],
      ["Mark", "Size", "Total no.", "A", "B", "Hook", "Length mm"],
      ["T1", "D13", 20, 300, 400, 120, 1640],
      ["T2", "D10", 20, 300, 400, hook, 1400 + 2 * hook],
      ["T3", "D16", 20, 300, 400, 80, 1560],
    ];
    const said = (hook: number) =>
      runAudit({ sheets: [sheetFromRows("Ties", rows(hook))], standard: heldStandard("EC2:2004") })
        .findings.filter(({ code, message }) => code === "BEND111" && message.includes("asks of hooks"))
        .map(({ cell }) => cell);
    expect(said(90)).toEqual([]);
    expect(said(60)).toEqual(["G4"]);
  });
});

describe("hooks without a column of their own", () => {
  const said = (note: string, ...rows: readonly (readonly Cell[])[]): string[] =>
    runAudit({
      sheets: [
        sheetFromRows("Ties", [[note], ["Mark", "Dia mm", "Total no.", "Length mm", "A", "B", "C"], ...rows]),
      ],
      standard: heldStandard("EC2:2004"),
    })
      .findings.filter(({ code }) => code === "BEND111")
      .map(({ cell, message }) => `${cell}: ${message}`);

  // 13 x 10 mm; 2 (320 + 320 + 130) = 1540 and 2 (220 + 420 + 130) = 1540
  it("should be the leg that a note calls so", () => {
    const note = "Ties 2A + 2B + 2C, C = 135 deg hook, not less than 13 bar diameters";
    const whole: Cell[] = ["C3", 10, 192, 1540, 320, 320, 130];
    // a plain sum of its legs has no such hooks
    const open: Cell[] = ["S4", 10, 63, 1280, 600, 80, 600];
    expect(said(note, whole, open, ["G5", 10, 160, 1540, 220, 420, 130])).toEqual([]);
    expect(said(note, whole, open, ["G5", 10, 160, 1540, 220, 420, 50])).toEqual([
      "G5: hook 50 mm of 10 is below the 130 mm that A1 asks of hooks: is it a slip?",
    ]);
  });

  it("should be the shorter end of a bar whose other end is one", () => {
    const note = "Ganchos de trabas: 12 cm m\u00ednimo";
    const whole: Cell[] = ["5", 10, 390, 580, 120, 340, 120];
    expect(said(note, whole, ["8", 10, 390, 480, 120, 240, 120])).toEqual([]);
    expect(said(note, whole, ["8", 10, 390, 430, 70, 240, 120])).toEqual([
      "E4: hook 70 mm of 10 is below the 120 mm that A1 asks of hooks: is it a slip?",
    ]);
    // a bar of two legs has ends of its own
    expect(said(note, whole, ["9", 10, 40, 1490, 90, 1400])).toEqual([]);
  });
});
