import { describe, expect, it } from "vitest";
import { readTrials, type TrialCell, type TrialLogReader } from "../../../core/bending/read-trials";
import { defineRefusal, isRefusal, refusalText } from "../../../core/units/refusal";

const noSize = defineRefusal("no-size", "not-held", "{size} is no bar");
const reader: TrialLogReader = {
  readSize(typed) {
    const found = /^([A-Z]*)(\d+)$/.exec(String(typed).trim());
    if (found === null) return noSize({ size: typed });
    return { diameter: Number(found[2]), prefix: found[1] ?? "" };
  },
  readGrade: (typed, prefix) => ({ name: typed ?? (prefix === "H" ? "B500B" : null), yield: 500 }),
  readLength: (typed, unit) => {
    const value = Number(typed);
    return Number.isFinite(value) ? value * (unit === "in" ? 25.4 : 1) : null;
  },
};
const HEADER = [
  "Date",
  "Machine",
  "Size",
  "Former (mm)",
  "Grade",
  "Bent to (°)",
  "Released (°)",
  "Form",
  "Heat",
  "Who",
];

function read(...rows: TrialCell[][]) {
  const reading = readTrials([HEADER, ...rows], reader);
  if (isRefusal(reading)) throw new Error(refusalText(reading));
  return {
    ...reading,
    said: reading.problems.map((problem) => `${problem.outcome}: ${refusalText(problem.reason)}`),
  };
}
const row = (
  bentTo: TrialCell,
  released: TrialCell,
  former: TrialCell = 64,
  size: TrialCell = "H16",
): TrialCell[] => ["3 May", "M1", size, former, null, bentTo, released, "bar", "A7", "Kim"];

describe("readTrials", () => {
  it("reads a row by the header's words, wherever the header stands", () => {
    const reading = readTrials([["Trials of this spring"], [], HEADER, row(90, 82)], reader);
    if (isRefusal(reading)) throw new Error(refusalText(reading));
    expect(reading.trials).toEqual([
      {
        row: 3,
        machine: "M1",
        size: "H16",
        diameter: 16,
        former: 64,
        grade: "B500B",
        yield: 500,
        form: "bar",
        heat: "A7",
        date: "3 May",
        bentTo: 90,
        released: 82,
      },
    ]);
    expect(reading.problems).toEqual([]);
  });

  it("needs no more than size, former, bent to and released, in any order and case", () => {
    const reading = readTrials(
      [
        ["RELEASED", "Bar size", "bent to", "FORMER"],
        [82, 16, 90, 64],
      ],
      reader,
    );
    expect(reading).toMatchObject({
      trials: [{ bentTo: 90, released: 82, former: 64, machine: null, form: null }],
    });
  });

  it("takes the former's unit from its header", () => {
    const reading = readTrials(
      [
        ["size", "former (in)", "bent to", "released"],
        ["H16", 2.5, 90, 82],
      ],
      reader,
    );
    expect(reading).toMatchObject({ trials: [{ former: 63.5 }] });
  });

  it("passes over blank rows and reads angles written as text", () => {
    expect(read([], [null, null, " "], row("90°", "82,5 deg")).trials).toMatchObject([
      { bentTo: 90, released: 82.5 },
    ]);
  });

  it("refuses a block without a header and says the words", () => {
    const reading = readTrials([["H16", 64, 90, 82]], reader);
    expect(isRefusal(reading) && refusalText(reading)).toMatch(/size, former, grade, bent to, released/);
  });

  it("knows coil from bar, and keeps a former from being read as a form", () => {
    const coil = readTrials(
      [
        ["size", "former", "bar or coil", "bent to", "released"],
        [8, 32, "Coil", 90, 80],
      ],
      reader,
    );
    expect(coil).toMatchObject({ trials: [{ form: "coil", former: 32 }] });
  });
});

describe("bad trials", () => {
  it.each([
    [
      "released above the angle bent to",
      row(120, 125),
      "rejected",
      /row 2: released 125 is above the 120 bent to/,
    ],
    ["bent to less than 10", row(8, 6), "rejected", /bent to 8 is below 10 degrees/],
    ["springback above 30 %", row(150, 80), "rejected", /comes back by 47 %, above 30 %/],
    ["released below 0", row(20, -3), "rejected", /released -3 is below 0/],
    ["bent to more than any machine turns", row(300, 280), "rejected", /bent to 300 is above 210/],
    ["a former of zero", row(90, 82, 0), "rejected", /a former of "0" is no former/],
    ["a negative former", row(90, 82, -64), "rejected", /a former of "-64" is no former/],
    ["a former that is no number", row(90, 82, "big"), "rejected", /former "big" could not be read/],
    ["a blank angle", row(90, null), "rejected", /released \(blank\) could not be read/],
    ["an error cell", row({ error: "#REF!" }, 82), "rejected", /bent to #REF! could not be read/],
    ["a size of no standard", row(90, 82, 64, "X?"), "rejected", /row 2: X\? is no bar/],
    [
      "the angle between the legs as released",
      row(135, 55),
      "asks",
      /released 55 looks like the angle between the legs; as a bend angle it is 125/,
    ],
    [
      "the angle between the legs at a right angle",
      row(90, 98),
      "asks",
      /released 98 is above the 90 bent to; if it is the angle between the legs, write the bend angle 82/,
    ],
    ["the angle between the legs as bent to", row(45, 125), "asks", /bent to 45 looks like .* it is 135/],
  ] as const)("are said with row, value and remedy: %s", (_, cells, outcome, text) => {
    const { trials, problems, said } = read([...cells]);
    expect(trials).toEqual([]);
    expect(problems).toHaveLength(1);
    expect(problems[0]?.outcome).toBe(outcome);
    expect(said[0]).toMatch(text);
  });

  it("allow a released angle a reading error above", () => {
    expect(read(row(90, 91)).trials).toHaveLength(1);
  });

  it("count a row that repeats another once", () => {
    const { trials, said } = read(row(90, 82), row(90, 82));
    expect(trials).toHaveLength(1);
    expect(said).toEqual([
      "rejected: trial in row 3 repeats row 2 in every column and is counted once; give the second bar its date or heat",
    ]);
  });

  it("do not spoil the others", () => {
    expect(read(row(90, 93), row(90, 82), row(8, 6)).trials).toHaveLength(1);
  });
});
