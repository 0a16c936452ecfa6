import { bendAngle } from "../shapes/bend-angle";
import { formula } from "../shapes/formula";
import { pathTemplate } from "../shapes/path-template";
import { compileLimits } from "../shapes/shape-limit-text";
import type { Citation } from "../standards/citation";
import { DIMENSION_LETTERS } from "../standards/dimension-letters";
import { type Course, courseOfText } from "../standards/figures";
import type { DimLetter, ShapeDefinition } from "../standards/port";

/** The texts of one own shape, as typed. */
export interface ShapeTexts {
  readonly code: string;
  readonly words: string;
  readonly course: string;
  readonly formula: string;
  readonly limits: string;
  readonly use: string;
}

/** Which text of a shape cannot be taken, and what is wrong with it. */
export interface ShapeFault {
  readonly of: keyof ShapeTexts;
  readonly reason: string;
}

const LETTERS: readonly DimLetter[] = [...DIMENSION_LETTERS, "R"];
const CODE = /^[A-Z0-9][A-Z0-9.-]{0,7}$/;
const CURVES = { arc: "arc", circle: "circle", helix: "helix" } as const;

/** A shape that its owner describes: drawn, measured and checked as any other. */
export function ownShape(texts: ShapeTexts, cite: Citation): ShapeDefinition | ShapeFault {
  const code = texts.code.toUpperCase();
  if (!CODE.test(code)) {
    return { of: "code", reason: "no code: write up to eight letters, figures, points and dashes" };
  }
  const course = courseOfText(texts.course);
  if (course === null) return { of: "course", reason: "write an angle after the course as t: D = B sin t" };
  const kind = CURVES[course.path.split(" ")[0] as keyof typeof CURVES] ?? "planar";
  const way = faultIn("course", () => {
    const template = pathTemplate(course.path, kind);
    for (const [name, angle] of Object.entries(course.angles)) bendAngle(name, angle);
    return template;
  });
  if (way !== null) return way;
  const named = course.path.match(/(?<=[+-])[tu]|(?<=\()[^)]*[tu][^)]*(?=\))/g) ?? [];
  for (const name of ["t", "u"]) {
    const isUsed = named.some((part) => part.includes(name));
    if (isUsed && course.angles[name] === undefined) {
      return {
        of: "course",
        reason: `the angle ${name} has no equation: write ${name}: D = B sin ${name} after a semicolon`,
      };
    }
  }
  const printed = texts.formula === "" ? null : texts.formula;
  const length = printed === null ? null : faultIn("formula", () => formula(printed));
  if (length !== null) return length;
  const limits = texts.limits
    .split(";")
    .map((text) => text.trim())
    .filter((text) => text !== "");
  const bound = faultIn("limits", () => limits.map((text) => compileLimits(text)));
  if (bound !== null) return bound;
  return definitionOf({ ...texts, code }, course, { kind, printed, limits }, cite);
}

function definitionOf(
  texts: ShapeTexts,
  course: Course,
  {
    kind,
    printed,
    limits,
  }: { kind: NonNullable<ShapeDefinition["kind"]>; printed: string | null; limits: string[] },
  cite: Citation,
): ShapeDefinition | ShapeFault {
  const all = [
    course.path,
    ...Object.values(course.angles).map(({ equation }) => equation),
    printed ?? "",
    ...limits,
  ];
  const dims = LETTERS.filter((letter) => all.some((text) => letterIn(text ?? "", letter)));
  const unknown = formulaLetters(printed).filter(
    (letter) => !letterIn(all.slice(0, -1 - limits.length).join(" "), letter),
  );
  const free = /\(([A-HJK])(?:\|[A-HJK])?\)/.exec(`${course.path} ${printed ?? ""}`)?.[1] ?? null;
  if (unknown.length > 0 && kind === "planar") {
    return {
      of: "formula",
      reason: `${unknown.join(", ")} is no leg of the course and in none of its angles`,
    };
  }
  return {
    code: texts.code,
    words: texts.words === "" ? "an own shape" : texts.words,
    dims,
    free: free as DimLetter | null,
    formula: printed,
    path: course.path,
    ...(Object.keys(course.angles).length === 0 ? {} : { angles: course.angles }),
    ...(kind === "planar" ? {} : { kind }),
    ...(kind === "helix" ? { counts: ["C" as DimLetter] } : {}),
    ...(/^(link|tie|stirrup)/i.test(texts.use) ? { use: "link" as const } : {}),
    limits: limits.map((text) => ({ text, cite })),
    cite,
    course: cite,
  };
}

function formulaLetters(text: string | null): DimLetter[] {
  return text === null ? [] : DIMENSION_LETTERS.filter((letter) => letterIn(text, letter));
}

/** A letter that stands alone: no part of a word. */
function letterIn(text: string, letter: string): boolean {
  // the R of "+90rR" is a radius of its own
  return new RegExp(`(?<![A-Za-z])${letter}(?![A-Za-z])${letter === "R" ? "|rR" : ""}`).test(text);
}

function faultIn(of: keyof ShapeTexts, read: () => unknown): ShapeFault | null {
  try {
    read();
    return null;
  } catch (fault) {
    return { of, reason: fault instanceof Error ? fault.message : String(fault) };
  }
}
