import { describe, expect, it } from "vitest";
import { COMPENSATED } from "../../../core/formulas/compensated";
import type { Block } from "../../../core/formulas/worksheet-function";
import type { Cell } from "../../../core/schedule/sheet";

const environment = { defaultStandard: "BS8666:2005" };
const HEADER = ["machine", "size", "former", "grade", "bent to", "released", "form"];
/** Invented trials of four groups. */
const LOG: Block = [
  HEADER,
  ["M1", "H16", 64, "B500B", 90, 82, "bar"],
  ["M1", "H16", 64, "B500B", 98, 89.5, "bar"],
  ["M1", "H16", 64, "B500B", 98, 90, "bar"],
  ["M1", "H12", 48, "B500B", 90, 81, "bar"],
  ["M1", "H10", 40, "B500B", 90, 80, "bar"],
  ["M1", "H20", 140, "B500B", 90, 82.5, "bar"],
];

type Given = Cell | Block | undefined;
function call(...args: Given[]): Block {
  const blocks = args.map((arg): Block | undefined =>
    arg === undefined || Array.isArray(arg) ? (arg as Block) : [[arg as Cell]],
  );
  return COMPENSATED.call(blocks, environment);
}
const one = (...args: Given[]) => call(...args)[0]?.[0];
const none = undefined;

describe("BAR.COMPENSATED", () => {
  it("bends to 100 by the plain rule where bent to 90 came back to 80", () => {
    // common practice
    const log: Block = [HEADER, ["M1", "H10", 40, null, 90, 80, null]];
    expect(one(90, "H10", none, none, none, log, "plain")).toBe(100);
  });

  it("adds each angle its own, row by row, and leaves blanks blank", () => {
    const column: Block = [[45], [null], [90], ["90°"]];
    const answers = call(column, "H16", none, none, none, LOG).map((row) => row[0]);
    expect(answers[1]).toBeNull();
    expect(answers[2]).toBe(answers[3]);
    expect((answers[0] as number) - 45).toBeLessThan((answers[2] as number) - 90);
    // the three trials at 90 came back by 8, 8.5 and 8
    expect((answers[2] as number) - 90).toBeGreaterThan(7.5);
    expect((answers[2] as number) - 90).toBeLessThan(8.6);
  });

  it("takes trials of the same grade however it is written", () => {
    const said = one(90, "H16", none, none, "B500B", LOG);
    for (const grade of ["b 500 b", "B-500-B"]) expect(one(90, "H16", none, none, grade, LOG)).toBe(said);
    const written = ["B500B", "b 500 b", "B500-B"];
    const mixed = LOG.map((row, at) =>
      row.map((cell, column) => (at > 0 && column === 3 ? written[at % 3]! : cell)),
    );
    expect(one(90, "H16", none, none, "B500B", mixed)).toBe(said);
    // trials of another grade are none of this one
    expect(one(90, "H16", none, none, "B500C", LOG)).not.toBe(said);
  });

  it("is not lifted by the rows of the log", () => {
    expect(call(90, "H16", none, none, none, LOG)).toHaveLength(1);
    // nor spoilt by an error cell in it
    const spoilt: Block = [...LOG, ["M1", "H16", 64, "B500B", { error: "#REF!" }, 80, "bar"]];
    expect(one(90, "H16", none, none, none, spoilt)).toBe(one(90, "H16", none, none, none, LOG));
  });

  it.each([
    ["no log", [90, "H16"], /^make a trial bend first/],
    ["an empty log", [90, "H16", none, none, none, [HEADER]], /^make a trial bend first/],
    [
      "plain without a trial of the group",
      [90, "H25", none, none, none, LOG, "plain"],
      /^make a trial bend first/,
    ],
    ["an angle far from what was tried", [180, "H16", none, none, none, LOG], /^make a trial bend first/],
  ] as const)("says #N/A and make a trial bend first: %s", (_, args, text) => {
    const answer = one(...(args as unknown as Given[]));
    expect(answer).toMatchObject({ error: "#N/A", message: expect.stringMatching(text) });
  });

  it.each([
    ["no bend", [0, "H16", none, none, none, LOG], /an angle of 0 is no bend/],
    ["a negative angle", [-90, "H16", none, none, none, LOG], /-90 is no bend/],
    ["a word for an angle", ["right", "H16", none, none, none, LOG], /angle "right" is no number/],
    [
      "another method",
      [90, "H16", none, none, none, LOG, "best"],
      /method "best" is none: write fit or plain/,
    ],
    [
      "a table that is no log",
      [
        90,
        "H16",
        none,
        none,
        none,
        [
          ["a", "b"],
          [1, 2],
        ],
      ],
      /no header of trials/,
    ],
    ["a former of zero", [90, "H16", none, 0, none, LOG], /former/],
  ] as const)("refuses %s as a bad value", (_, args, text) => {
    const answer = one(...(args as unknown as Given[]));
    expect(answer).toMatchObject({ error: "#VALUE!", message: expect.stringMatching(text) });
  });

  it("takes the former in the standard's unit", () => {
    const log: Block = [
      HEADER,
      ["M1", "#5", 3.75, null, 90, 82, null],
      ["M1", "#5", "95.25 mm", null, 92, 84, null],
    ];
    expect(one(90, "#5", "ACI318:2019", 3.75, none, log, "plain")).toBe(98);
  });

  it("takes the machine that is named, and its largest angle from the Shop sheet", () => {
    const log: Block = [...LOG, ["M2", "H16", 64, "B500B", 90, 76, "bar"]];
    expect(one(90, "H16", none, none, none, log, "plain", "M2")).toBe(104);
    expect(one(90, "H16", none, none, none, log, "plain")).toMatchObject({ error: "#VALUE!" });
    const machine = {
      name: "M2",
      rated: [],
      formers: null,
      pins: null,
      orbitRadius: null,
      backRestDistance: null,
      largestAngle: 100,
      guardRadius: null,
    };
    const withShop = { ...environment, machines: [machine] };
    const blocks = [[[90]], [["H16"]], none, none, none, log, [["plain"]], [["M2"]]];
    expect(COMPENSATED.call(blocks, withShop)[0]?.[0]).toMatchObject({
      error: "#N/A",
      message: expect.stringMatching(/beyond the 100 degrees that M2 turns/),
    });
    const other = [...blocks.slice(0, 7), [["M9"]]];
    expect(COMPENSATED.call(other, withShop)[0]?.[0]).toMatchObject({
      message: expect.stringMatching(/machine "M9" is none of the Shop sheet/),
    });
  });

  it("tells a log that changed from one that did not", () => {
    const before = one(90, "H16", none, none, none, LOG, "plain");
    const changed: Block = LOG.map((row, index) =>
      index > 0 && index < 4 ? [...row.slice(0, 5), (row[5] as number) - 4, "bar"] : row,
    );
    expect(before).toBe(98);
    expect(one(90, "H16", none, none, none, changed, "plain")).toBe(102);
  });
});
