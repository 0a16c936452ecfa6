import { type Citation, isSure } from "../standards/citation";
import type { ShapeDefinition } from "../standards/port";
import { otherReading } from "./other-reading";
import type { ResolvedShape } from "./resolve-shape";

/**
 * How far a code's course may be trusted: the way the bar runs, what its letters measure, the angles that
 * follow. `recalled` is of one memory, `in doubt` has another reading or a source that differs.
 */
export type CourseTrust = "sure" | "recalled" | "in doubt";

/** Where the course of a code comes from, apart from its printed formula. */
export function courseCite({ course, cite }: ShapeDefinition): Citation {
  return course ?? cite;
}

/** Null of a path that somebody typed: its course is what is written. */
export function courseTrust(definition: ShapeDefinition | null): CourseTrust {
  if (definition?.path == null || definition.course === undefined) return "sure";
  const { course, otherReading: other } = definition;
  if (isSure(course)) return "sure";
  return course.conflict !== undefined || other !== undefined ? "in doubt" : "recalled";
}

/** True where a bend's angle is worked out from dims by an equation of a course that nobody saw in print. */
export function hasUnsureAngles(definition: ShapeDefinition | null): boolean {
  return courseTrust(definition) !== "sure" && Object.keys(definition?.angles ?? {}).length > 0;
}

/** What to say beside the drawing of a code; null where its course is sure. */
export function courseNote(definition: ShapeDefinition | null): string | null {
  const trust = courseTrust(definition);
  return trust === "sure" ? null : `course ${trust}: compare with the drawing`;
}

/**
 * A line for whoever bends the bar; null where the course is sure, or recalled with right angles and half
 * circles only, which the printed formula counts. Names the other reading and its angles where there is one.
 */
export function courseWarning(shape: ResolvedShape): string | null {
  const { definition } = shape;
  const trust = courseTrust(definition);
  if (definition === null || trust === "sure") return null;
  const isCounted = definition.formula !== null && definition.kind !== "isometric";
  if (trust === "recalled" && isCounted && !hasUnsureAngles(definition)) return null;
  const said = `course of shape ${definition.code} ${trust}: compare with the drawing before bending`;
  if (trust === "recalled") return said;
  const doubt = definition.course?.conflict;
  return [said, doubt, otherWords(shape)].filter((part) => part !== undefined && part !== null).join("; ");
}

function otherWords(shape: ResolvedShape): string | null {
  const other = otherReading(shape);
  if (other === null) return null;
  const angles = Object.values(other.angles).map((angle) => `${Math.round(angle * 10) / 10}`);
  if (angles.length === 0) return `it may also be read with ${other.words}`;
  return `read with ${other.words} the slope turns ${angles.join(" and ")} degrees`;
}
