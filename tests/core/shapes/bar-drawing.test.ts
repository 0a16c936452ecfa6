import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boxesOverlap, boxInside, boxOfPoints, boxToSegment } from "../../../core/geometry/box";
import { distance, type Point } from "../../../core/geometry/point";
import { type BarDrawing, barDrawing } from "../../../core/shapes/bar-drawing";
import type { BarPath, PlanarPath } from "../../../core/shapes/path";
import { type ResolvedShape, resolveShape } from "../../../core/shapes/resolve-shape";
import { resolveStandard, STANDARD_IDS } from "../../../core/standards";
import { DIMENSION_LETTERS } from "../../../core/standards/dimension-letters";
import type { DimLetter, ShapeDefinition, Standard } from "../../../core/standards/port";
import { isRefusal } from "../../../core/units/refusal";

function bar(legs: readonly number[], turns: readonly number[], inOnePlane = true): PlanarPath {
  return {
    kind: "planar",
    legs: legs.map((length, index) => ({
      length,
      free: legs.length > 1 && index === legs.length - 1,
      letter: "ABCDEFGHJK"[index] ?? null,
    })),
    turns: turns.map((angle) => ({ angle, radius: null })),
    inOnePlane,
  };
}

const BARS: Readonly<Record<string, BarPath>> = {
  straight: bar([6000], []),
  "right angle": bar([1000, 400], [90]),
  "U bar": bar([600, 400, 600], [90, 90]),
  "closed link": bar([100, 500, 300, 500, 300, 100], [135, 90, 90, 90, 135]),
  "square link, legs over each other": bar([110, 200, 200, 200, 200, 110], [90, 90, 90, 90, 90]),
  crank: bar([1000, 300, 900], [30, -30]),
  "half circle on a long bar": bar([12000, 100], [180]),
  "tight staircase": bar([75, 75, 75, 75, 75, 75], [90, -90, 90, -90, 90]),
  "seven bends": bar([150, 300, 300, 300, 300, 300, 300, 150], [90, 90, -90, -90, 90, 90, -90]),
  "more than one plane": bar([600, 300, 800, 250], [90, 90, 90], false),
  arc: { kind: "arc", length: 3000, radius: 2000 },
  circle: { kind: "circle", outsideDiameter: 600, lap: 300 },
  helix: { kind: "helix", outsideDiameter: 500, pitch: 75, turns: 20 },
};

/** Everything that touches what it should not, in words. */
function collisions(drawing: BarDrawing): string[] {
  const found: string[] = [];
  const texts = [...drawing.labels, ...drawing.notes];
  const frame = { x: 0, y: 0, width: drawing.width, height: drawing.height };
  texts.forEach((one, index) => {
    if (!boxInside(one.box, frame)) found.push(`${one.text} leaves the frame`);
    for (const other of texts.slice(index + 1)) {
      if (boxesOverlap(one.box, other.box)) found.push(`${one.text} on ${other.text}`);
    }
    for (const stroke of drawing.strokes) {
      for (let at = 1; at < stroke.length; at += 1) {
        const clear = boxToSegment(one.box, stroke[at - 1] as Point, stroke[at] as Point);
        if (clear < drawing.barWidth / 2) found.push(`${one.text} on the bar`);
      }
    }
    for (const { leader, text } of drawing.labels) {
      if (leader !== null && text !== one.text && boxToSegment(one.box, leader.from, leader.to) <= 0) {
        found.push(`${one.text} on the line of ${text}`);
      }
    }
  });
  return found;
}

/** Dims by letter that most shapes can be bent to, and others for shapes that need steeper or flatter ones. */
const DIMS: readonly Readonly<Record<string, number>>[] = [
  { A: 1000, B: 400, C: 500, D: 300, E: 350, F: 300, G: 300, H: 300, J: 300, K: 300, R: 1500 },
  { A: 400, B: 600, C: 400, D: 200, E: 150, F: 200, G: 200, H: 200, J: 200, K: 200, R: 800 },
  { A: 500, B: 300, C: 150, D: 500, E: 200, F: 150, G: 150, H: 150, J: 150, K: 150, R: 300 },
  { A: 600, B: 500, C: 20, D: 250, E: 400, F: 150, G: 150, H: 150, J: 150, K: 150, R: 300 },
];

/** Paths of a coded shape for several bars and dims; shapes that are only sketched have none. */
function pathsOf(standard: Standard, definition: ShapeDefinition): ResolvedShape[] {
  return DIMS.flatMap((byLetter) =>
    [10, 16, 25].flatMap((diameter) => {
      const taken = (letter: DimLetter): number | null =>
        definition.counts?.includes(letter) ? 6 : (byLetter[letter] ?? null);
      const width =
        Math.max(-1, ...definition.dims.map((letter) => DIMENSION_LETTERS.indexOf(letter as "A"))) + 1;
      const dims = DIMENSION_LETTERS.slice(0, width).map((letter) =>
        definition.dims.includes(letter) ? taken(letter) : null,
      );
      if (definition.dims.includes("R")) dims.push(taken("R"));
      const shape = resolveShape({ standard, shape: definition.code, dims, diameter });
      return isRefusal(shape) || shape.path === null ? [] : [shape];
    }),
  );
}

describe("drawings of every coded shape", () => {
  it.each(STANDARD_IDS)("keep every text off the bar and off the others: %s", (id) => {
    // ISO 3766 prints no formers: a yard bends it by another document
    const standard = resolveStandard(id === "ISO3766:2003" ? `${id}+EC2:2004` : id);
    if (isRefusal(standard)) throw new Error(`${id} is not held`);
    for (const definition of standard.shapes.values()) {
      const shapes = pathsOf(standard, definition);
      if (definition.path !== null)
        expect(shapes.length, `${id} ${definition.code} with ${definition.dims}`).toBeGreaterThan(0);
      for (const { path, diameter, radius } of shapes) {
        for (const frame of [undefined, { width: 220, height: 120 }]) {
          const drawing = barDrawing({
            path: path as BarPath,
            diameter,
            radius,
            ...(frame === undefined ? {} : { frame }),
          });
          expect(collisions(drawing), `${id} ${definition.code}`).toEqual([]);
        }
      }
    }
  });
});

describe("barDrawing", () => {
  it.each(Object.entries(BARS))("keeps every text off the bar and off the others: %s", (_, path) => {
    for (const diameter of [8, 16, 40]) {
      expect(collisions(barDrawing({ path, diameter, radius: diameter * 2 }))).toEqual([]);
    }
  });

  it("should keep texts apart for any path, sharp or slack, in any frame", () => {
    const turn = fc.integer({ min: 10, max: 180 }).chain((angle) => fc.constantFrom(angle, -angle));
    const shapes = fc.array(fc.tuple(fc.integer({ min: 40, max: 3000 }), turn), {
      minLength: 1,
      maxLength: 7,
    });
    const frames = fc.record({
      width: fc.integer({ min: 160, max: 500 }),
      height: fc.integer({ min: 90, max: 400 }),
    });
    fc.assert(
      fc.property(shapes, frames, (steps, frame) => {
        const path = bar(
          [...steps.map(([leg]) => leg), 200],
          steps.map(([, angle]) => angle),
        );
        const drawing = barDrawing({ path, diameter: 12, radius: 24, frame });
        expect(collisions(drawing)).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });

  it("writes each leg with its letter and value, the free one in parentheses", () => {
    const drawing = barDrawing({ path: bar([1000, 400], [90]), diameter: 16, radius: 32 });
    expect(drawing.labels.map((label) => label.text)).toEqual(["A 1000", "(B 400)"]);
    expect(drawing.notes.map((note) => note.text)).toEqual(["inside radius r 32; bends 90°"]);
  });

  it("marks angles other than 90 and radii that differ at their bends", () => {
    const path: PlanarPath = {
      ...bar([500, 400, 300], [135, 90]),
      turns: [
        { angle: 135, radius: null },
        { angle: 90, radius: 100 },
      ],
    };
    const texts = barDrawing({ path, diameter: 16, radius: 32 }).labels.map((label) => label.text);
    expect(texts).toContain("135° r 32");
    expect(texts).toContain("r 100");
  });

  it("is to scale", () => {
    const drawing = barDrawing({ path: bar([1000, 400], [90]), diameter: 16, radius: 32 });
    const points = drawing.strokes.flat();
    const wide = Math.max(...points.map((point) => point.x)) - Math.min(...points.map((point) => point.x));
    const high = Math.max(...points.map((point) => point.y)) - Math.min(...points.map((point) => point.y));
    // outside 1000 and 400, half a bar less each on the centre line
    expect(wide / drawing.scale).toBeCloseTo(992, 6);
    expect(high / drawing.scale).toBeCloseTo(392, 6);
    expect(drawing.schematic).toBeNull();
  });

  it("loses no text where there is no room: it goes under the drawing", () => {
    const path = BARS["seven bends"] as PlanarPath;
    const drawing = barDrawing({ path, diameter: 12, radius: 24, frame: { width: 120, height: 60 } });
    const written = [...drawing.labels, ...drawing.notes].map((text) => text.text);
    for (const text of ["A 150", "B 300", "(H 150)"]) expect(written).toContain(text);
    expect(collisions(drawing)).toEqual([]);
  });

  it("breaks a leg that would make the others invisible, and says so", () => {
    const drawing = barDrawing({ path: bar([12000, 100], [180]), diameter: 12, radius: 24 });
    expect(drawing.breaks).toHaveLength(1);
    expect(drawing.schematic).toBe("long legs drawn broken");
    expect(drawing.labels.map((label) => label.text)).toContain("A 12000");
  });

  it("turns in the end legs that lie upon the sides of a closed link, and says so", () => {
    const path = bar([160, 380, 520, 380, 520, 160], [90, 90, 90, 90, 90]);
    const drawing = barDrawing({ path, diameter: 12, radius: 24, frame: { width: 170, height: 96 } });
    const points = drawing.strokes.flat();
    const box = boxOfPoints(points);
    // both ends stand clear of every side: within the link, and apart from one another
    const ends = [points[0]!, points.at(-1)!];
    for (const end of ends) {
      const inside = [end.x - box.x, box.x + box.width - end.x, end.y - box.y, box.y + box.height - end.y];
      expect(Math.min(...inside)).toBeGreaterThan(1.5 * drawing.barWidth);
    }
    expect(distance(ends[0]!, ends[1]!)).toBeGreaterThan(1.5 * drawing.barWidth);
    expect(drawing.schematic).toMatch(/not to scale: end legs/);
    const texts = [...drawing.labels, ...drawing.notes].map(({ text }) => text).join(" ");
    expect(texts).toContain("bends 90°");
    expect(texts).not.toContain("120");
    const hooked = barDrawing({ path: BARS["closed link"] as BarPath, diameter: 10, radius: 20 });
    expect(hooked.schematic).toBeNull();
  });

  it("says that a helix and a bar of more than one plane are schematic", () => {
    expect(barDrawing({ path: BARS.helix as BarPath, diameter: 10, radius: 0 }).schematic).toMatch(
      /schematic/,
    );
    const iso = barDrawing({ path: BARS["more than one plane"] as BarPath, diameter: 10, radius: 20 });
    expect(iso.schematic).toMatch(/more than one plane/);
  });

  it("takes further lines for dimensions that are no leg", () => {
    const path = bar([1000, 300, 900], [30, -30]);
    const drawing = barDrawing({ path, diameter: 20, radius: 70, notes: ["D 150"] });
    expect(drawing.notes.map((note) => note.text)).toContain("D 150");
    expect(collisions(drawing)).toEqual([]);
  });

  it("words lengths as it is told", () => {
    const write = (mm: number) => `${mm / 25.4}"`;
    const drawing = barDrawing({ path: bar([254, 508], [90]), diameter: 12.7, radius: 25.4, write });
    expect(drawing.labels.map((label) => label.text)).toEqual(['A 10"', '(B 20")']);
  });
});

describe("a ring or an arc with hardly any radius", () => {
  it("should be drawn with few points and say that it is schematic", () => {
    const points = (drawing: { strokes: readonly (readonly unknown[])[] }) => drawing.strokes.flat().length;
    const ring = barDrawing({
      path: { kind: "circle", outsideDiameter: 12, lap: 300 },
      diameter: 12,
      radius: 24,
    });
    const arc = barDrawing({ path: { kind: "arc", length: 12000, radius: 0.5 }, diameter: 12, radius: 24 });
    expect(points(ring)).toBeLessThan(1000);
    expect(points(arc)).toBeLessThan(1000);
    expect(ring.schematic).toContain("more than once round");
    expect(arc.schematic).toContain("more than a full turn");
  });
});
