import type { BarFacts } from "../../bar/bar-facts";
import { leastInsideRadius, tightWidth } from "../../bar/radius-of-width";
import type { ColumnKind } from "../../schedule/bar-row";
import { courseTrust } from "../../shapes/course";
import { dimOf } from "../../shapes/shape-values";
import type { Citation } from "../../standards/citation";
import { defineRule, type NoFixes, type RowReport } from "../rule";

const CLOSE = 1e-6;
/** mm: formers are written in whole millimetres */
const ROUNDED = 0.5;

const OF_WIDTH = {
  width:
    "{letter} {actual} makes a bend with an inside radius of {radius}, a former of {former}; the least for {size} is {leastRadius}, a former of {least}: ask the designer for a wider one",
} as const;

const AS_LINK = {
  asLink:
    "former {former} is the least for a link of {size}, and {least} for any other bar: write in the remarks whether this closed path is a link",
} as const;

export default defineRule({
  code: "BEND101",
  name: "former-too-small",
  severity: "unsafe",
  // formers that a list keeps by another document than the one that nobody chose are one question
  asksOnce: true,
  tellsEach: ["former", "coated", "coatingNotHeld", "radius", "width", "asLink", "perhapsLink", "ring"],
  docs: {
    summary:
      "The former, or a radius that is typed or follows from a dimension, is below the least of the standard.",
    why: "A bar bent round too small a former can crack at the bend, at once or later in the member.",
    failing: [
      { rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875, former: 50 }] },
      { rows: [{ size: "H20", shape: "12", A: 500, B: 500, R: 60, length: 950 }] },
      { rows: [{ size: "H20", shape: "13", A: 600, B: 120, C: 600, length: 1250 }] },
    ],
    passing: [
      { rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875, former: 64 }] },
      { rows: [{ size: "H20", shape: "12", A: 500, B: 500, R: 70, length: 950 }] },
    ],
  },
  messages: {
    former: "former {former} is below the least {least} for {size}",
    own: "former {former} is below the least {least} of {standard} for {size}: nobody chose the document, and the list keeps its own formers: ask which it is bent to",
    coated: "former {former} is below the least {least} for {size} {coating}",
    coatingNotHeld:
      "former {former} may be too small for {size} {coating}: {standard} holds no former for the coating, ask the designer",
    radius:
      "inside radius {radius} is below the least {leastRadius} for {size}: ask the designer for a larger one",
    ...OF_WIDTH,
    ...AS_LINK,
    perhapsLink:
      "former {former} is enough for a link of {size}, and {least} is the least for any other bar: the shape is not held, so which it is was not judged",
    ring: "inside diameter {inside} is below the least former {least} for {size}: ask the designer for a wider ring",
  },
  fixes: {
    least: { label: "use the least former {least}", safety: "needs-review" },
  },
  checkRow(facts, context, report) {
    const { leastFormer } = facts;
    if (leastFormer === null) return;
    const { value: least, cite } = leastFormer;
    const { former } = facts.row;
    const ofLink = facts.isShapeUnknown ? facts.leastFormerOfLink : null;
    if (former !== null && ofLink !== null && former < least - ROUNDED && former >= ofLink.value - ROUNDED) {
      report({
        messageId: "perhapsLink",
        severity: "note",
        outcome: "unsure",
        at: "former",
        values: { former: { mm: former }, least: { mm: least }, size: facts.sizeName },
        cite,
      });
    } else if (former !== null && former < least - ROUNDED) {
      const { coating } = facts;
      // formers of several sizes are below the least of a document that nobody chose: the list may keep another's
      const isOfAnother =
        context.isStandardAssumed &&
        !context.isStandardNamed &&
        facts.sheet.habits.formersOwnWay.includes(`|${facts.diameter}:${former}|`);
      report({
        messageId: isOfAnother ? "own" : coating === null || !facts.isCoatingHeld ? "former" : "coated",
        ...(isOfAnother ? { outcome: "unsure" as const } : {}),
        at: "former",
        values: {
          ...{ former: { mm: former }, least: { mm: least }, size: facts.sizeName },
          ...{ coating: coating ?? "", standard: context.standard.id },
        },
        cite,
        fix: { id: "least", edits: [{ at: "former", to: least }] },
      });
    } else if (former !== null && !facts.isCoatingHeld) {
      const { coating } = facts;
      report({
        messageId: "coatingNotHeld",
        outcome: "unsure",
        at: "former",
        values: {
          former: { mm: former },
          size: facts.sizeName,
          coating: coating ?? "",
          standard: context.standard.id,
        },
        cite,
      });
    }
    const said = former === null ? facts.inWords(formerSaid) : null;
    if (said !== null && said < least - ROUNDED) {
      const values = { former: { mm: said }, least: { mm: least }, size: facts.sizeName, coating: "" };
      report({ messageId: "former", outcome: "unsure", at: "remark", values, cite });
    }
    askWhetherLink(facts, report);
    judgeWidth(facts, least, cite, report);
    // the radius of a code's own bends is the former's, unless one was typed
    if (facts.pathKind === "planar" && !facts.isPath && facts.row.radius === null) return;
    const { path } = facts;
    if (path === null) return;
    if (path.kind === "circle" || path.kind === "helix") {
      const inside = path.outsideDiameter - 2 * (facts.diameter ?? 0);
      if (inside >= least - CLOSE) return;
      report({
        messageId: "ring",
        at: "A",
        values: { inside: { mm: inside }, least: { mm: least }, size: facts.sizeName },
        cite,
      });
      return;
    }
    const radius = path.kind === "arc" ? path.radius : typedRadius(facts);
    const leastRadius = leastInsideRadius(facts);
    if (radius === null || leastRadius === null || radius >= leastRadius - CLOSE) return;
    const at: ColumnKind = facts.row.radius === null ? "shape" : "R";
    report({
      messageId: "radius",
      at,
      values: { radius: { mm: radius }, leastRadius: { mm: leastRadius }, size: facts.sizeName },
      cite,
    });
  },
});

/** A width that a half circle spans says its radius as surely as a radius that is typed. */
function judgeWidth(
  facts: BarFacts,
  least: number,
  cite: Citation | null,
  report: (found: RowReport<typeof OF_WIDTH, NoFixes>) => void,
): void {
  const tight = tightWidth(facts);
  if (tight === null) return;
  const { letter, radius } = tight;
  report({
    messageId: "width",
    ...(courseTrust(facts.definition) === "in doubt" && { outcome: "unsure" }),
    at: letter,
    values: {
      letter,
      actual: { mm: facts.shape === null ? 0 : (dimOf(facts.shape.values, letter) ?? 0) },
      radius: { mm: radius },
      former: { mm: 2 * radius },
      leastRadius: { mm: tight.least },
      least: { mm: least },
      size: facts.sizeName,
    },
    cite,
  });
}

/** A closed path is judged as a link; a former that only a link may have is asked for. */
function askWhetherLink(facts: BarFacts, report: (found: RowReport<typeof AS_LINK, NoFixes>) => void): void {
  if (!facts.isLinkByShapeOnly) return;
  const { former } = facts.row;
  const ofMain = facts.leastFormerOfMain;
  if (former === null || ofMain === null || former < (facts.leastFormer?.value ?? 0) - CLOSE) return;
  if (former >= ofMain.value - CLOSE) return;
  report({
    messageId: "asLink",
    outcome: "unsure",
    at: "former",
    values: { former: { mm: former }, least: { mm: ofMain.value }, size: facts.sizeName },
    cite: ofMain.cite,
  });
}

/** The least radius that was typed with the shape, not one that follows from a width. */
function typedRadius({ row, planarPath, isPath }: BarFacts): number | null {
  if (row.radius !== null) return row.radius;
  if (!isPath || planarPath === null) return null;
  let least: number | null = null;
  for (const { radius } of planarPath.turns) {
    if (radius !== null && (least === null || radius < least)) least = radius;
  }
  return least;
}

/** mm: "former 100", "mandrel dia 100 mm" of a remark, where the row has no former of its own. */
function formerSaid(words: string): number | null {
  const said =
    /\b(?:former|mandrel)\b(?: dia(?:meter|\.)?)?(?: of)?[ :=]*(\d{2,3})(?: ?mm)?(?![\d.]|\s*d\b)/.exec(
      words,
    )?.[1];
  return said === undefined ? null : Number(said);
}
