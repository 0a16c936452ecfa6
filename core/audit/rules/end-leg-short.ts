import type { BarFacts } from "../../bar/bar-facts";
import { saying } from "../../bar/said-words";
import type { Turn } from "../../shapes/path";
import { type Citation, type Cited, leastSure } from "../../standards/citation";
import type { DimLetter, Standard } from "../../standards/port";
import { isRefusal } from "../../units/refusal";
import { lengthLengthened } from "../carry-along";
import { courseOf } from "../course-of";
import type { Severity } from "../finding";
import { hasEndsElsewhere } from "../kept-elsewhere";
import { defineRule, type NoFixes, type RowReport } from "../rule";
import { isEndLegLimit } from "../shape-limit-kinds";

const CLOSE = 1e-6;
const RIGHT_ANGLE = 90;
const HOOK_BETWEEN = 135;
const HALF_CIRCLE = 180;

const MESSAGES = {
  short: "end leg {letter} {actual} is below the least {least} for {size}: ask the designer",
  longer:
    "end leg {letter} {actual} is below the least {least} for {size}: so long it would need a bar of {after}, ask the designer",
  path: "{end} of {actual} is below the least {least} for {size}",
  hook: "{end} of {actual} is shorter than a standard hook of {least} for {size}: it may not be counted as one",
} as const;

type Report = (found: RowReport<typeof MESSAGES, NoFixes>) => void;

const saysHook = saying(/\b(?:std|standard)\.? hook/);

export default defineRule({
  code: "BEND102",
  name: "end-leg-short",
  severity: "off-standard",
  docs: {
    summary: "An end leg is shorter than the standard's least end projection, or than its hook.",
    why: "A bar of a small size with a shorter leg cannot be pushed round; whether a thicker one can is for the tooling, which has a rule of its own. Where the document asks for the leg so that an anchorage may be counted, a shorter one is bent all the same and counts for less: a note.",
    failing: [
      { rows: [{ size: "H16", shape: "21", A: 125, B: 400, C: 300, length: 775 }] },
      { rows: [{ size: "H10", shape: "11", A: 100, B: 400, length: 475 }] },
      { standard: "ACI318:2019", rows: [{ size: "#5", shape: "8 +90 40", length: 46 }] },
    ],
    passing: [{ rows: [{ size: "H16", shape: "21", A: 130, B: 400, C: 300, length: 775 }] }],
  },
  messages: MESSAGES,
  checkRow(facts, context, report) {
    const { standard } = context;
    const isElsewhere = hasEndsElsewhere(facts.sheet.habits, context);
    for (const limit of facts.brokenLimits) {
      if (!isEndLegLimit(limit)) continue;
      const { actual, cite } = limit;
      const letter = limit.letter as DimLetter;
      const least = limit.least ?? 0;
      tell(facts, standard, { at: letter, actual, least, cite, isHook: false, isElsewhere }, report);
    }
    for (const leg of endsByTable(facts, standard)) tell(facts, standard, { ...leg, isElsewhere }, report);
  },
});

const NO_LEGS: readonly ShortLeg[] = [];

/** Ends of a path, and of a code beside which the document prints no limit, against its table of ends. */
function endsByTable(facts: BarFacts, standard: Standard): readonly ShortLeg[] {
  const definition = facts.shape?.definition ?? null;
  const isJudged =
    facts.isPath ||
    (definition !== null &&
      definition.formula === null &&
      !definition.limits.some(({ text }) => /\bP\b/.test(text)));
  if (!isJudged) return NO_LEGS;
  const { planarPath, diameter } = facts;
  if (planarPath === null || diameter === null) return NO_LEGS;
  const { legs, turns } = planarPath;
  const parts = definition?.path?.split(" ") ?? [];
  const ends = [
    { name: "first", leg: legs[0], turn: turns[0], part: parts[0] },
    { name: "last", leg: legs.at(-1), turn: turns.at(-1), part: parts.at(-1) },
  ] as const;
  return ends.flatMap(({ name, leg, turn, part = "" }) => {
    // a standard hook brings its own extension
    if (leg === undefined || turn === undefined || leg.hook !== undefined) return [];
    const least = leastOutside(facts, standard, turn);
    if (least === null) return [];
    const isHookDim = part.startsWith("h");
    // what a hook adds is printed rounded
    const slack = isHookDim ? Math.max(CLOSE, standard.lengthRounding.step) : CLOSE;
    if (leg.length >= least.value - slack) return [];
    const at = (/[A-HJK]/.exec(part)?.[0] ?? "shape") as DimLetter | "shape";
    // a hook is told of as it is typed: by what it adds
    const beyond = isHookDim && at !== "shape" ? leg.length - (facts.dim(at) ?? leg.length) : 0;
    const [actual, needed] = [leg.length - beyond, least.value - beyond];
    const cite = leastSure(least.cite, ...courseOf(facts));
    return [
      {
        at,
        actual,
        least: needed,
        cite,
        isHook: isHookDim,
        ...(at === "shape" ? { end: name } : {}),
      },
    ];
  });
}

/** mm: a hook that turns beyond a right angle has a straight of its own where end legs are anchorages. */
function leastOutside(facts: BarFacts, standard: Standard, turn: Turn): Cited<number> | null {
  const { use } = facts;
  const diameter = facts.diameter ?? 0;
  const angle = Math.abs(turn.angle);
  if (angle <= RIGHT_ANGLE || standard.bendingNeedsEndLegUpTo !== null) {
    const leg = standard.endLeg(diameter, use);
    return isRefusal(leg) ? null : { value: leg.value.outside, cite: leg.cite };
  }
  const hook = standard.hook(angle < HALF_CIRCLE ? HOOK_BETWEEN : HALF_CIRCLE, diameter, use);
  if (isRefusal(hook)) return null;
  const inside = turn.radius ?? (facts.former ?? hook.value.former) / 2;
  return { value: hook.value.extension + inside + diameter, cite: hook.cite };
}

interface ShortLeg {
  readonly at: DimLetter | "shape";
  readonly actual: number;
  readonly least: number;
  readonly cite: Citation | null;
  /** the code itself says that the end is a hook */
  readonly isHook: boolean;
  /** the document was not chosen, and the list keeps to another */
  readonly isElsewhere?: boolean;
  /** which of the path's legs; a coded shape has a letter */
  readonly end?: "first" | "last";
}

function tell(facts: BarFacts, standard: Standard, leg: ShortLeg, report: Report): void {
  const { at, actual, least, cite } = leg;
  const upTo = standard.bendingNeedsEndLegUpTo;
  const isAnchorage = upTo === null;
  const severity: Severity = isAnchorage
    ? leg.isHook || facts.inWords(saysHook)
      ? "off-standard"
      : "note"
    : (facts.diameter ?? 0) <= upTo
      ? "unbendable"
      : "off-standard";
  const after =
    at === "shape" || isAnchorage ? null : lengthLengthened(facts, facts.brokenLimits.filter(isEndLegLimit));
  report({
    messageId: isAnchorage ? "hook" : at === "shape" ? "path" : after === null ? "short" : "longer",
    severity: leg.isElsewhere === true ? "note" : severity,
    ...(leg.isElsewhere === true ? { outcome: "unsure" as const } : {}),
    at,
    values: {
      ...{
        letter: at,
        end: leg.end === undefined ? `end leg ${at}` : `the ${leg.end} leg`,
        size: facts.sizeName,
      },
      ...{ actual: { mm: actual }, least: { mm: least }, after: { mm: after ?? 0 } },
    },
    cite,
  });
}
