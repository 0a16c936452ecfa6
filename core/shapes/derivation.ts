import { type Citation, citationText } from "../standards/citation";
import type { ShapeDefinition, Use } from "../standards/port";
import { fromMillimetres } from "../units/convert-length";
import { isRefusal, refusalText } from "../units/refusal";
import { courseTrust } from "./course";
import { type CutLength, cutLength, hasUnequalPair } from "./cut-length";
import { developedLength } from "./developed-length";
import { formula } from "./formula";
import { LEG_BASES, longerThanOutside } from "./leg-basis";
import { otherReading } from "./other-reading";
import type { PlanarPath } from "./path";
import { NO_FORMER, type ResolvedShape } from "./resolve-shape";
import { type LimitJudgement, shapeLimits } from "./shape-limits";
import { dimOf, placeOf, SHAPE_SYMBOLS } from "./shape-values";
import { siteCutLength } from "./site-cut-length";
import { substitutedFormula } from "./substituted-formula";

/**
 * How a bar's lengths come about, line by line: the bar, the former, the formula as printed and with its
 * numbers, unrounded and rounded, the geometric length beside it, the limits, and what is doubtful, each
 * with its source and how far that may be trusted. Lengths are in the standard's unit, which is said.
 */
export function derivation(shape: ResolvedShape): string[] {
  const cut = cutLength(shape);
  return [
    `standard: ${shape.standard.id}, ${shape.standard.title}`,
    ...(shape.standard.caution === null ? [] : [`doubtful: ${shape.standard.caution}`]),
    ...barLines(shape),
    ...formerLines(shape),
    ...(isRefusal(cut) ? [`cut length: refused, ${refusalText(cut)}`] : cutLines(shape, cut)),
    ...geometryLines(shape, isRefusal(cut) ? null : cut),
    ...doubtLines(shape),
    ...endLegLines(shape),
    ...shapeLimits(shape).map((limit) => limitLine(limit, shape)),
  ];
}

function barLines(shape: ResolvedShape): string[] {
  const { definition, path, compiled } = shape;
  const write = writer(shape);
  if (definition === null) {
    return path?.kind === "planar" ? [`path: ${pathText(path, shape)}`, ...hookLines(path, shape)] : [];
  }
  const counts = definition.counts ?? [];
  const dims = definition.dims.flatMap((letter) => {
    const value = dimOf(shape.values, letter);
    if (value === null) return [];
    return [`${letter} ${counts.includes(letter) ? plain(value) : write(value)}`];
  });
  const free = definition.free === null ? "" : `; ${definition.free} takes up tolerance`;
  const angles = (compiled?.angles ?? []).map(
    (angle) =>
      `angle ${SHAPE_SYMBOLS[angle.place]}: ${angle.equation} gives ${plain(shape.values[angle.place]!, 2)} degrees`,
  );
  const course = path?.kind === "planar" && path.turns.length > 0 ? [`path: ${pathText(path, shape)}`] : [];
  return [
    `shape ${definition.code}: ${definition.words}; ${dims.join(", ")}${free}; ${source(definition.cite)}`,
    ...courseLines(definition),
    ...angles,
    ...course,
  ];
}

/** The way the bar runs has a source of its own, which is never better than the formula's. */
function courseLines(definition: ShapeDefinition): string[] {
  if (definition.course === undefined) return [];
  const { conflict } = definition.course;
  const trust = courseTrust(definition);
  return [
    `course: ${trust}; ${source(definition.course)}`,
    ...(conflict === undefined ? [] : [`doubtful: ${conflict}`]),
  ];
}

function formerLines(shape: ResolvedShape): string[] {
  const { former, radius, use, diameter } = shape;
  const write = writer(shape);
  const bar = `bar: diameter ${write(diameter)}; use ${use}`;
  if (former === NO_FORMER) return [bar, "former: none needed"];
  return [
    bar,
    `former: ${write(former.value)}, inside radius ${write(radius)}; ${citationText(former.cite)}`,
  ];
}

function cutLines(shape: ResolvedShape, cut: CutLength): string[] {
  const write = writer(shape);
  const { direction, cite } = shape.standard.lengthRounding;
  const rounded =
    cut.step === 0
      ? `cut length: ${write(cut.length)}, not rounded`
      : `cut length: ${write(cut.length)}, rounded ${direction === "up" ? "up to the next" : "to the nearest"} ${write(cut.step)}; ${citationText(cite)}`;
  return [...basisLines(shape, cut), `unrounded: ${write(cut.unrounded)}`, rounded];
}

function basisLines(shape: ResolvedShape, cut: CutLength): string[] {
  if (cut.formula !== null) {
    return [
      `printed formula: ${cut.formula}; ${source(cut.cite)}`,
      ...radiusLines(shape, cut),
      ...allowanceLines(shape),
      `with numbers: ${withNumbers(cut.formula, shape, cut)}`,
    ];
  }
  if (cut.basis === "geometry") return [geometryLine(shape)];
  return siteLines(shape, cut);
}

function geometryLine({ compiled, values }: ResolvedShape): string {
  const formula = compiled?.formula ?? null;
  if (compiled === null || formula === null || !hasUnequalPair(compiled, values)) {
    return "printed formula: none, so the cut length goes by geometry";
  }
  const pairs = compiled.equalities.map(({ text }) => text).join(", ");
  return `printed formula: ${formula.text} is for ${pairs} only, so the cut length goes by geometry`;
}

function radiusLines(shape: ResolvedShape, { formulaRadius }: CutLength): string[] {
  if (formulaRadius === null) return [];
  const write = writer(shape);
  if (formulaRadius !== shape.radius) {
    return [
      `r of the formula: ${write(formulaRadius)} as printed, where half the former is ${write(shape.radius)}`,
    ];
  }
  return [`r of the formula: ${write(formulaRadius)}`];
}

/** h and n, which the formula takes from a table of the document. */
function allowanceLines(shape: ResolvedShape): string[] {
  const { standard, diameter, grade, compiled } = shape;
  const allowance = compiled?.needsAllowance === true ? standard.endAllowance(diameter, grade) : null;
  if (allowance === null || isRefusal(allowance)) return [];
  const { hook, bend } = allowance.value;
  const write = writer(shape);
  return [`h of a hook ${write(hook)}, n of a bend ${write(bend)}; ${citationText(allowance.cite)}`];
}

function withNumbers(text: string, shape: ResolvedShape, cut: CutLength): string {
  const values = shape.values.slice();
  if (cut.formulaRadius !== null) values[placeOf("r")!] = cut.formulaRadius;
  const counts: readonly string[] = shape.definition?.counts ?? [];
  return substitutedFormula(text, values, (value, symbol) =>
    plain(counts.includes(symbol) ? value : fromMillimetres(value, shape.standard.unit), 4),
  );
}

function siteLines(shape: ResolvedShape, cut: CutLength): string[] {
  const { path, diameter, standard } = shape;
  const site = standard.siteDeductions;
  if (site === null || path?.kind !== "planar") return [];
  const bends = site.value.bends
    .map(({ angle, perDiameter }) => `${angle} degrees ${perDiameter}d`)
    .join(", ");
  const hooks = site.value.hooks.map(({ turn, perDiameter }) => `${perDiameter}d at ${turn}`).join(", ");
  const sums = siteCutLength({ path, diameter, standard: standard.id }, site.value);
  const numbers = isRefusal(sums)
    ? []
    : [
        [
          sums.added.map((length) => plain(length)).join(" + "),
          ...sums.taken.map((length) => plain(length)),
        ].join(" - "),
      ];
  return [
    `site deductions: legs as given, less ${bends} for each bend; an end hook adds ${hooks}, at least ${site.value.leastHook} mm; ${source(cut.cite)}`,
    ...numbers.map((text) => `with numbers: ${text}`),
    ...(cut.cite.conflict === undefined ? [] : [`doubtful: ${cut.cite.conflict}`]),
  ];
}

function geometryLines(shape: ResolvedShape, cut: CutLength | null): string[] {
  const developed = developedLength(shape);
  if (isRefusal(developed)) return [`developed length: refused, ${refusalText(developed)}`];
  const write = writer(shape);
  const { straights, arcs, length } = developed;
  const list = (lengths: readonly number[]) =>
    lengths.map((one) => plain(fromMillimetres(one, shape.standard.unit), 2));
  const parts = [
    ...(straights.length > 0 ? [`straights ${list(straights).join(" + ")}`] : []),
    ...(arcs.length > 0 ? [`arcs ${list(arcs).join(" + ")}`] : []),
  ];
  const lines = [
    `developed length: ${write(length)} on the centre line (${parts.join(", ")}); geometry (derived)`,
  ];
  if (cut === null || cut.basis === "geometry") return lines;
  const difference = cut.unrounded - length;
  const step = shape.standard.lengthRounding.step;
  const word = cut.basis === "printed formula" ? "printed formula" : "site deductions";
  lines.push(`${word} less geometry: ${difference < 0 ? "-" : "+"}${write(Math.abs(difference))}`);
  if (step > 0 && Math.abs(difference) > step) {
    lines.push(
      `note: they differ by more than the rounding step of ${write(step)}: ask the designer which length holds`,
    );
  }
  return [...lines, ...legBasisLines(shape, cut, length)];
}

/** A rule of deductions does not say what its legs are measured to, so each reading is set beside it. */
function legBasisLines(shape: ResolvedShape, cut: CutLength, length: number): string[] {
  const { path, diameter } = shape;
  if (cut.basis !== "site deductions" || path?.kind !== "planar" || path.turns.length === 0) return [];
  const write = writer(shape);
  return LEG_BASES.map((basis) => {
    const geometric = length + longerThanOutside(path, diameter, basis);
    const difference = cut.unrounded - geometric;
    const word = difference < 0 ? "too short by" : "too long by";
    return `if the legs are measured to the ${basis}: geometry ${write(geometric)}, the site length is ${word} ${write(Math.abs(difference))} (derived)`;
  });
}

function doubtLines(shape: ResolvedShape): string[] {
  const { definition } = shape;
  if (definition === null) return [];
  const write = writer(shape);
  const other = otherReading(shape);
  const { minimisedFormula, formulaNote, cite } = definition;
  const lines: string[] = [];
  if (minimisedFormula !== undefined) {
    const value = formula(minimisedFormula).evaluate(shape.values);
    lines.push(
      `for least end legs the document also prints ${minimisedFormula}: ${write(value)}; ${trust(cite)}`,
    );
  }
  if (formulaNote !== undefined) lines.push(`note: ${formulaNote}`);
  if (other !== null) {
    const angles = Object.entries(other.angles).map(([name, angle]) => `${name} ${plain(angle, 2)} degrees`);
    const ofAngles = angles.length === 0 ? "" : ` (${angles.join(", ")})`;
    lines.push(`doubtful: read with ${other.words} it is ${write(other.length)}${ofAngles}`);
  }
  if (cite.conflict !== undefined) lines.push(`doubtful: ${cite.conflict}`);
  return lines;
}

function endLegLines(shape: ResolvedShape): string[] {
  const { standard, diameter, path, radius } = shape;
  if (path?.kind !== "planar" || path.turns.length === 0) return [];
  const write = writer(shape);
  const use = useOfEndLegs(shape);
  const leg = standard.endLeg(diameter, use, shape.grade);
  if (isRefusal(leg)) return [];
  const { outside, straight } = leg.value;
  const inside =
    straight === null
      ? ""
      : `; straight ${write(straight)} + radius ${write(radius)} + bar ${write(diameter)}`;
  return [
    `least end leg for use ${use}: ${write(outside)} overall to the outside${inside}; ${citationText(leg.cite)}`,
  ];
}

/** A link with 180 degree hooks has the end legs of main bars: the code's own limits say which P they mean. */
function useOfEndLegs({ compiled, use }: ResolvedShape): Use {
  const bounds = (compiled?.limits ?? []).flatMap((limit) => limit.bound.places);
  if (bounds.includes(placeOf("P(links)")!)) return "link";
  return bounds.includes(placeOf("P")!) ? "main" : use;
}

function limitLine(
  { text, letter, actual, least, most, met, cite }: LimitJudgement,
  shape: ResolvedShape,
): string {
  const write = writer(shape);
  const source = cite === null ? "" : `; ${trust(cite)}`;
  if (met === null) return `limit ${text}: not judged for ${letter}, the bound is not held${source}`;
  const bound =
    least === null ? `at most ${write(most!)}` : least === most ? write(least) : `at least ${write(least)}`;
  return `limit ${text}: ${letter} ${write(actual)}, ${bound}: ${met ? "met" : "not met"}${source}`;
}

function hookLines({ legs }: PlanarPath, shape: ResolvedShape): string[] {
  const write = writer(shape);
  return legs.flatMap(({ hook, length }, index) => {
    if (hook === undefined) return [];
    const { diameter, use, grade, formerGiven, radius } = shape;
    const given = formerGiven ? [2 * radius] : [];
    const held = shape.standard.hook(hook.turn, diameter, use, grade, ...given);
    const source = isRefusal(held) ? "" : `; ${citationText(held.cite)}`;
    const end = index === 0 ? "first" : "last";
    return [
      `hook${hook.turn} at the ${end} end: straight ${write(hook.extension)}, ${write(length)} overall${source}`,
    ];
  });
}

function pathText({ legs, turns }: PlanarPath, shape: ResolvedShape): string {
  const { unit } = shape.standard;
  return legs
    .flatMap((leg, index) => {
      const length = plain(fromMillimetres(leg.length, unit), 2);
      const turn = turns[index];
      const parts = [leg.free ? `(${length})` : length];
      if (turn !== undefined) {
        const own = turn.radius === null ? "" : `r${plain(fromMillimetres(turn.radius, unit), 2)}`;
        parts.push(`${turn.angle < 0 ? "-" : "+"}${plain(Math.abs(turn.angle), 2)}${own}`);
      }
      return parts;
    })
    .join(" ");
}

/** Without the conflict, which has a line of its own. */
function source(cite: Citation): string {
  const { conflict: _, ...rest } = cite;
  return citationText(rest);
}

function trust({ provenance }: Citation): string {
  return `(${provenance})`;
}

function writer({ standard }: ResolvedShape): (mm: number) => string {
  return (mm) =>
    `${plain(fromMillimetres(mm, standard.unit), standard.unit === "mm" ? 2 : 4)} ${standard.unit}`;
}

function plain(value: number, places = 4): string {
  return String(Number(value.toFixed(places)));
}
