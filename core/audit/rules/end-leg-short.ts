import type { BarFacts } from "../../bar/bar-facts";
import { saying } from "../../bar/said-words";
import type { Citation } from "../../standards/citation";
import type { DimLetter, Standard } from "../../standards/port";
import { isRefusal } from "../../units/refusal";
import { lengthLengthened } from "../carry-along";
import type { Severity } from "../finding";
import { defineRule, type NoFixes, type RowReport } from "../rule";
import { isEndLegLimit } from "../shape-limit-kinds";

const CLOSE = 1e-6;

const MESSAGES = {
  short: "end leg {letter} {actual} is below the least {least} for {size} ({limit})",
  longer:
    "end leg {letter} {actual} is below the least {least} for {size} ({limit}): so long it would need a bar of {after}, ask the designer",
  path: "an end leg of {actual} is below the least {least} for {size}",
  hook: "an end leg of {actual} is shorter than a standard hook of {least} for {size}: it may not be counted as one",
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
  checkRow(facts, { standard }, report) {
    for (const limit of facts.brokenLimits) {
      if (!isEndLegLimit(limit)) continue;
      const { actual, cite, text } = limit;
      const letter = limit.letter as DimLetter;
      const least = limit.least ?? 0;
      tell(facts, standard, { at: letter, actual, least, cite, limit: text }, report);
    }
    if (!facts.isPath) return;
    const { planarPath, diameter } = facts;
    if (planarPath === null || diameter === null || planarPath.turns.length === 0) return;
    const leg = standard.endLeg(diameter, facts.use);
    if (isRefusal(leg)) return;
    const least = leg.value.outside;
    for (const end of [planarPath.legs[0], planarPath.legs.at(-1)]) {
      // a standard hook brings its own extension
      if (end === undefined || end.hook !== undefined || end.length >= least - CLOSE) continue;
      tell(facts, standard, { at: "shape", actual: end.length, least, cite: leg.cite, limit: "" }, report);
    }
  },
});

interface ShortLeg {
  readonly at: DimLetter | "shape";
  readonly actual: number;
  readonly least: number;
  readonly cite: Citation | null;
  readonly limit: string;
}

function tell(facts: BarFacts, standard: Standard, leg: ShortLeg, report: Report): void {
  const { at, actual, least, cite, limit } = leg;
  const upTo = standard.bendingNeedsEndLegUpTo;
  const isAnchorage = upTo === null;
  const severity: Severity = isAnchorage
    ? facts.inWords(saysHook)
      ? "off-standard"
      : "note"
    : (facts.diameter ?? 0) <= upTo
      ? "unbendable"
      : "off-standard";
  const after =
    at === "shape" || isAnchorage ? null : lengthLengthened(facts, facts.brokenLimits.filter(isEndLegLimit));
  report({
    messageId: isAnchorage ? "hook" : at === "shape" ? "path" : after === null ? "short" : "longer",
    severity,
    at,
    values: {
      ...{ letter: at, limit, size: facts.sizeName },
      ...{ actual: { mm: actual }, least: { mm: least }, after: { mm: after ?? 0 } },
    },
    cite,
  });
}
