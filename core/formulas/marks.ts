import { type BendMark, bendMarks, type StopDistance } from "../bending/bend-marks";
import { compensatedAngle } from "../bending/compensated-angle";
import type { Cell } from "../schedule/sheet";
import { courseNote, courseTrust, courseWarning, hasUnsureAngles } from "../shapes/course";
import { cutLength } from "../shapes/cut-length";
import { developedLength } from "../shapes/developed-length";
import type { PlanarPath } from "../shapes/path";
import type { LengthUnit } from "../standards/port";
import { fromMillimetres } from "../units/convert-length";
import { defineRefusal, isRefusal, type Refusal } from "../units/refusal";
import {
  DIMS_ARGUMENT,
  FORMER_ARGUMENT,
  type ReadBar,
  readBar,
  SHAPE_ARGUMENT,
  SIZE_ARGUMENT,
  STANDARD_ARGUMENT,
  USE_ARGUMENT,
} from "./bar-arguments";
import { blockFunction, type RowReader } from "./lift";
import {
  GRADE_ARGUMENT,
  MACHINE_ARGUMENT,
  questionOf,
  readTrialLog,
  TRIALS_ARGUMENT,
} from "./trial-arguments";
import type { Block } from "./worksheet-function";

const rolledHasNoMarks = defineRefusal(
  "rolled-has-no-marks",
  "value",
  "shape {shape} is curved over its whole length and has no bends to mark: log the radius of trial pieces",
);
const straightHasNoMarks = defineRefusal(
  "straight-has-no-marks",
  "value",
  "shape {shape} is straight and has no bends to mark",
);

const courseInDoubt = defineRefusal(
  "course-in-doubt",
  "not-held",
  "{doubt}: no stop is given; write the bar as a path, or confirm the drawing of shape {shape} on the sheet Standard",
);

const PLACES = { shape: 0, size: 1, dims: 2, standard: 3, former: 4, grade: 5, use: 7 };
const TRIALS = 6;
const MACHINE = 8;
const HEADER: readonly Cell[] = [
  "bend",
  "turn",
  "start",
  "middle",
  "end",
  "stop from held end",
  "stop from swinging end",
  "compensated angle",
];

/**
 * BAR.MARKS: header and one row a bend, on the bar as cut and still straight, from the path's first end;
 * bends in the path's order, its first end held. Lengths in the standard's unit. A stop that bears on a bend
 * made earlier is a text that names it. A code whose course is in doubt is refused; angles that follow from a
 * recalled course have a further column that says so. The compensated angle is blank where the trials do not bear it.
 */
export const MARKS = blockFunction({
  name: "MARKS",
  description: "Bend marks on the straight bar: start, middle, end, stops and compensated angle of each bend",
  args: [
    SHAPE_ARGUMENT,
    SIZE_ARGUMENT,
    DIMS_ARGUMENT,
    STANDARD_ARGUMENT,
    FORMER_ARGUMENT,
    GRADE_ARGUMENT,
    TRIALS_ARGUMENT,
    USE_ARGUMENT,
    MACHINE_ARGUMENT,
  ],
  block(row, blocks) {
    const bar = readBar(row, PLACES);
    if (isRefusal(bar)) return bar;
    const path = planarPath(bar);
    if (isRefusal(path)) return path;
    const { shape, standard } = bar;
    if (courseTrust(shape.definition) === "in doubt") {
      return courseInDoubt({ doubt: courseWarning(shape) ?? "", shape: shape.code ?? "" });
    }
    const cut = cutLength(shape);
    if (isRefusal(cut)) return cut;
    const marks = bendMarks({ path, diameter: shape.diameter, radius: shape.radius, cutLength: cut.length });
    if (isRefusal(marks)) return marks;
    const angles = compensatedAngles(row, blocks[TRIALS], bar, path);
    if (isRefusal(angles)) return angles;
    const rows = marks.map((mark, index) => markRow(mark, angles[index] ?? null, standard.unit));
    const note = hasUnsureAngles(shape.definition) ? courseNote(shape.definition) : null;
    if (note === null) return [HEADER, ...rows];
    return [[...HEADER, "course"], ...rows.map((row) => [...row, note])];
  },
});

function planarPath({ shape }: ReadBar): PlanarPath | Refusal {
  const developed = developedLength(shape);
  if (isRefusal(developed)) return developed;
  const name = shape.code ?? "";
  if (shape.path?.kind !== "planar") return rolledHasNoMarks({ shape: name });
  return shape.path.turns.length === 0 ? straightHasNoMarks({ shape: name }) : shape.path;
}

/** Degrees a bend, null where refused: a blank says that a trial is needed first. */
function compensatedAngles(
  row: RowReader,
  trials: Block | undefined,
  { shape, size, standard }: ReadBar,
  path: PlanarPath,
): (number | null)[] | Refusal {
  const log = readTrialLog(trials, standard, row.environment);
  if (isRefusal(log)) return log;
  const angles: (number | null)[] = [];
  for (const turn of path.turns) {
    const former = turn.radius === null ? shape.former.value : 2 * turn.radius;
    const cells = { size, former, grade: row.cell(PLACES.grade), machine: row.cell(MACHINE) };
    const question = questionOf(Math.abs(turn.angle), cells, standard, row.environment, log);
    if (isRefusal(question)) return question;
    const found = compensatedAngle(log.calibration, question);
    angles.push(isRefusal(found) || found.refusal !== null ? null : found.angle);
  }
  return angles;
}

function markRow(mark: BendMark, compensated: number | null, unit: LengthUnit): Cell[] {
  const out = (mm: number) => fromMillimetres(mm, unit);
  return [
    mark.bend,
    mark.turn,
    out(mark.start),
    out(mark.middle),
    out(mark.end),
    stopCell(mark.fromHeld, unit),
    stopCell(mark.fromSwinging, unit),
    compensated,
  ];
}

function stopCell(stop: StopDistance, unit: LengthUnit): Cell {
  const distance = fromMillimetres(stop.distance, unit);
  if (stop.fromBend === null) return distance;
  const shown = distance.toFixed(unit === "in" ? 2 : 1).replace(/\.?0+$/, "");
  const place = stop.face ? "outside face" : "outside corner";
  return `${shown} from ${place} of bend ${stop.fromBend}`;
}
