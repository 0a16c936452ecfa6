import { describe, expect, it } from "vitest";
import { developedLength } from "../../../core/shapes/developed-length";
import { otherReading } from "../../../core/shapes/other-reading";
import { type DimLetter, STANDARD_IDS } from "../../../core/standards";
import { isRefusal, refusalText } from "../../../core/units/refusal";
import { exampleDims } from "../../../docs/generate/example-dims";
import { SHAPE_EXAMPLES } from "../../../docs/generate/shape-examples.data";
import { type Corner, halve, measuredBar, straightsFor } from "./measured-bar";
import { resolved, standardNamed } from "./resolved";

type Dims = Readonly<Record<string, number>>;

interface Course {
  readonly legs: string;
  /** corners from the dims, the diameter, the standard inside radius and the slope in degrees */
  corners(dims: Dims, d: number, r: number, t: number): Corner[];
  /** what the sloped bar measures, to be met by the dim named */
  readonly slope?: { readonly dim: string; measure(dims: Dims, d: number, r: number, t: number): number };
}

const turns =
  (...list: number[]) =>
  (_: Dims, __: number, r: number): Corner[] =>
    list.map((turn) => ({ turn, radius: r }));

/** Overall height of a bar over its first leg. */
function height(legs: number[], corners: Corner[], d: number): number {
  const { outline } = measuredBar(straightsFor(legs, corners, d), corners, d);
  const ys = outline.map((point) => point.y);
  return reduced(ys, Math.max) - reduced(ys, Math.min);
}

function reduced(values: readonly number[], choose: (a: number, b: number) => number): number {
  return values.reduce((a, b) => choose(a, b));
}

/** Height between the meetings of the outside edges of the first two bends. */
function rise(legs: number[], corners: Corner[], d: number): number {
  const { meetings } = measuredBar(straightsFor(legs, corners, d), corners, d);
  return Math.abs(meetings[1]!.y - meetings[0]!.y);
}

const bend = (turn: number, radius: number): Corner => ({ turn, radius });
const crankHeight = (dims: Dims, d: number, r: number, t: number) =>
  height([dims["A"]!, dims["B"]!, dims["C"]!], [bend(t, r), bend(-t, r)], d);

/** Overall height of the sloping end A over the straight B. */
const slopingEnd = (dims: Dims, d: number, r: number, t: number) =>
  height([dims["B"]!, dims["A"]!], [bend(t, r)], d);

/** The courses of BS 8666 Table 3, written by hand from the words of the table (the drawings: from memory). */
const COURSES: Readonly<Record<string, Course>> = {
  "00": { legs: "A", corners: turns() },
  "01": { legs: "A", corners: turns() },
  "11": { legs: "A B", corners: turns(90) },
  "12": { legs: "A B", corners: ({ R }) => [bend(90, R!)] },
  "13": { legs: "A C", corners: ({ B }, d) => [bend(180, B! / 2 - d)] },
  "14": {
    legs: "A C",
    corners: (_, __, r, t) => [bend(t, r)],
    slope: { dim: "B", measure: ({ A, C }, d, r, t) => height([A!, C!], [bend(t, r)], d) },
  },
  "15": {
    legs: "A C",
    corners: (_, __, r, t) => [bend(t, r)],
    slope: { dim: "B", measure: ({ A, C }, d, r, t) => height([A!, C!], [bend(t, r)], d) },
  },
  "21": { legs: "A B C", corners: turns(90, 90) },
  "22": { legs: "A B D", corners: ({ C }, d, r) => [bend(90, r), bend(180, C! / 2 - d)] },
  "23": { legs: "A B C", corners: turns(90, -90) },
  "24": {
    legs: "A B C",
    corners: (_, __, r, t) => [bend(t, r), bend(90 - t, r)],
    slope: {
      dim: "D",
      measure: ({ A, B, C }, d, r, t) => rise([A!, B!, C!], [bend(t, r), bend(90 - t, r)], d),
    },
  },
  "26": {
    legs: "A B C",
    corners: (_, __, r, t) => [bend(t, r), bend(-t, r)],
    slope: { dim: "D", measure: crankHeight },
  },
  "27": {
    legs: "A B C",
    corners: (_, __, r, t) => [bend(t, r), bend(90, r)],
    slope: { dim: "D", measure: slopingEnd },
  },
  "28": {
    legs: "A B C",
    corners: (_, __, r, t) => [bend(t, r), bend(-90, r)],
    slope: { dim: "D", measure: slopingEnd },
  },
  "29": {
    legs: "A B C",
    corners: (_, __, r, t) => [bend(t, r), bend(180 - t, r)],
    slope: {
      dim: "D",
      measure: ({ A, B, C }, d, r, t) => {
        const corners = [bend(t, r), bend(180 - t, r)];
        const { outline, meetings } = measuredBar(straightsFor([A!, B!, C!], corners, d), corners, d);
        return (
          reduced(
            outline.map((point) => point.x),
            Math.max,
          ) - meetings[0]!.x
        );
      },
    },
  },
  "31": { legs: "A B C D", corners: turns(90, 90, 90) },
  "32": { legs: "A B C D", corners: turns(90, 90, -90) },
  "33": {
    legs: "C A A C",
    corners: ({ B }, d) => [bend(180, B! / 2 - d), bend(180, B! / 2 - d), bend(180, B! / 2 - d)],
  },
  "34": {
    legs: "A B C E",
    corners: (_, __, r, t) => [bend(t, r), bend(-t, r), bend(90, r)],
    slope: { dim: "D", measure: crankHeight },
  },
  "35": {
    legs: "A B C E",
    corners: (_, __, r, t) => [bend(t, r), bend(-t, r), bend(-90, r)],
    slope: { dim: "D", measure: crankHeight },
  },
  "36": {
    legs: "A B C D",
    corners: (_, __, r, t) => [bend(90, r), bend(90, r), bend(-t, r)],
    slope: { dim: "E", measure: ({ C, D }, d, r, t) => height([C!, D!], [bend(t, r)], d) },
  },
  "41": { legs: "A B C D E", corners: turns(90, -90, -90, 90) },
  "44": { legs: "A B C D E", corners: turns(90, 90, 90, 90) },
  "46": {
    legs: "A B C B E",
    corners: (_, __, r, t) => [bend(t, r), bend(-t, r), bend(-t, r), bend(t, r)],
    slope: { dim: "D", measure: crankHeight },
  },
  "47": { legs: "C A B A C", corners: turns(180, 90, 90, 180) },
  "48": { legs: "C A B A C", corners: turns(135, 90, 90, 135) },
  "51": { legs: "C A B A B C", corners: turns(90, 90, 90, 90, 90) },
  "52": { legs: "C A B A B C", corners: turns(135, 90, 90, 90, 135) },
  "63": { legs: "C B A B A B C", corners: turns(90, 90, 90, 90, 90, 90) },
  "64": { legs: "A D B C E D F", corners: turns(90, -90, -90, 90, 90, -90) },
  "98": { legs: "C B A B D", corners: turns(90, 90, -90, 90) },
};

const DIAMETERS = [8, 16, 20, 40];

function examples(code: string) {
  const example = SHAPE_EXAMPLES.find((one) => one.code === code);
  if (example === undefined) throw new Error(`no example of code ${code}`);
  return [example.least, example.thousand];
}

function dimsByLetter(letters: readonly DimLetter[], dims: readonly (number | null)[]): Dims {
  return Object.fromEntries(letters.flatMap((letter, at) => (dims[at] == null ? [] : [[letter, dims[at]]])));
}

function lengthOf(code: string, diameter: number, dims: readonly (number | null)[]): number {
  const developed = developedLength(resolved({ standard: "BS8666:2020", shape: code, diameter, dims }));
  if (isRefusal(developed)) throw new Error(`${code}, ${diameter}: ${refusalText(developed)}`);
  return developed.length;
}

describe("developed length of BS 8666 codes against a measured polyline", () => {
  const standard = standardNamed("BS8666:2020");

  it.each(Object.keys(COURSES))("code %s", (code) => {
    const course = COURSES[code]!;
    const definition = standard.shapes.get(code)!;
    for (const diameter of DIAMETERS) {
      for (const texts of examples(code)) {
        const dims = exampleDims(texts, diameter, standard);
        const byLetter = dimsByLetter(definition.dims, dims);
        const r = diameter <= 16 ? 2 * diameter : 3.5 * diameter;
        const [low, high] = code === "14" ? [120, 180] : code === "29" ? [0.01, 90] : [0.01, 60];
        const t =
          course.slope === undefined
            ? 0
            : halve(
                (degrees) => course.slope!.measure(byLetter, diameter, r, degrees),
                byLetter[course.slope.dim]!,
                low!,
                high!,
              );
        const corners = course.corners(byLetter, diameter, r, t);
        const legs = course.legs.split(" ").map((letter) => byLetter[letter]!);
        const measured = measuredBar(straightsFor(legs, corners, diameter), corners, diameter);
        expect(Math.abs(lengthOf(code, diameter, dims) - measured.length)).toBeLessThan(0.001);
      }
    }
  });

  it("code 25: both ends slope, each by its own height", () => {
    for (const diameter of DIAMETERS) {
      for (const texts of examples("25")) {
        const dims = exampleDims(texts, diameter, standard);
        const [A, B, C, D, E] = dims as number[];
        const r = diameter <= 16 ? 2 * diameter : 3.5 * diameter;
        const slope = (leg: number, wanted: number) =>
          halve((t) => height([E!, leg], [bend(t, r)], diameter), wanted, 0.01, 60);
        const corners = [bend(slope(A!, C!), r), bend(slope(B!, D!), r)];
        const measured = measuredBar(straightsFor([A!, E!, B!], corners, diameter), corners, diameter);
        expect(Math.abs(lengthOf("25", diameter, dims) - measured.length)).toBeLessThan(0.001);
      }
    }
  });

  it("code 56: the slope of D closes the four sides", () => {
    for (const diameter of DIAMETERS) {
      for (const texts of examples("56")) {
        const dims = exampleDims(texts, diameter, standard);
        const [A, B, C, D, E] = dims as number[];
        const r = diameter <= 16 ? 2 * diameter : 3.5 * diameter;
        const t = (Math.acos((A! - C!) / D!) * 180) / Math.PI;
        const corners = [180 - t, 90, 90, t, 180 - t].map((turn) => bend(turn, r));
        const measured = measuredBar(
          straightsFor([E!, A!, B!, C!, D!, E!], corners, diameter),
          corners,
          diameter,
        );
        expect(Math.abs(lengthOf("56", diameter, dims) - measured.length)).toBeLessThan(0.001);
      }
    }
  });

  it("curves 67, 75 and 77 by chords", () => {
    const chords = 2_000_000;
    const ring = (outside: number, diameter: number, rise: number) => {
      const radius = (outside - diameter) / 2;
      return chords * Math.hypot(2 * radius * Math.sin(Math.PI / chords), rise / chords);
    };
    for (const diameter of DIAMETERS) {
      for (const texts of examples("75")) {
        const [A, B] = exampleDims(texts, diameter, standard) as number[];
        expect(lengthOf("75", diameter, [A!, B!])).toBeCloseTo(ring(A!, diameter, 0) + B!, 3);
      }
      for (const texts of examples("77")) {
        const [A, B, C] = exampleDims(texts, diameter, standard) as number[];
        expect(lengthOf("77", diameter, [A!, B!, C!])).toBeCloseTo(C! * ring(A!, diameter, B!), 3);
      }
      for (const texts of examples("67")) {
        const dims = exampleDims(texts, diameter, standard);
        expect(lengthOf("67", diameter, dims)).toBe(dims[0]);
      }
    }
  });

  it("covers every code of both editions but 99, which is drawn", () => {
    expect(STANDARD_IDS).toContain("BS8666:2020");
    const covered = [...Object.keys(COURSES), "25", "56", "67", "75", "77", "99"].sort();
    expect([...standard.shapes.keys()].sort()).toEqual(covered);
    const older = covered.filter((code) => code !== "48" && code !== "52");
    expect([...standardNamed("BS8666:2005").shapes.keys()].sort()).toEqual(older);
  });
});

describe("otherReading", () => {
  it("takes the legs of code 14 to the meeting of the outside edges", () => {
    for (const diameter of DIAMETERS) {
      const A = 1000;
      const C = 1000;
      const B = 800;
      const r = diameter <= 16 ? 2 * diameter : 3.5 * diameter;
      const t = 180 - (Math.asin(B / C) * 180) / Math.PI;
      const corners = [bend(t, r)];
      const trial = measuredBar([5000, 5000], corners, diameter);
      const beyond = trial.meetings[0]!.x - 5000;
      const measured = measuredBar([A - beyond, C - beyond], corners, diameter);
      const other = otherReading(resolved({ shape: "14", diameter, dims: [A, B, C] }));
      expect(other?.length).toBeCloseTo(measured.length, 3);
      expect(other?.angles["t"]).toBeCloseTo(t, 6);
    }
  });

  it("is none for a code that bears one reading", () => {
    expect(otherReading(resolved({ shape: "11", diameter: 16, dims: [1000, 500] }))).toBeNull();
  });
});
