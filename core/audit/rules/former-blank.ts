import type { BarFacts } from "../../bar/bar-facts";
import { defineRule } from "../rule";

/** share of the bent bars that name a former before a blank is a blank forgotten */
const USUAL = 0.6;
const FEWEST = 2;

const bar = (B: number, former: number | null) => ({
  ...{ size: "H16", shape: "11", A: 500, B, former },
  length: Math.ceil((500 + B - 32) / 25) * 25,
});
const BARS = [bar(400, 64), bar(500, 64), bar(600, 64)];

export default defineRule({
  code: "BEND110",
  name: "former-blank",
  severity: "doubtful",
  asksOnce: true,
  docs: {
    summary: "A bent bar names no former, while most bent bars of the sheet do.",
    why: "What stands in its place is a guess: whoever sets the bender takes the former of the row above, and nobody has checked that one for this bar. Straight bars need none.",
    failing: [{ rows: [...BARS, bar(700, null)] }],
    passing: [{ rows: [...BARS, { size: "H16", shape: "00", A: 2000, length: 2000 }] }],
  },
  messages: {
    least:
      "the former is blank, where {kept} of {tested} bent bars name one: it was judged by the least {least} of {standard}, ask which it is bent round",
    unknown:
      "the former is blank, where {kept} of {tested} bent bars name one: its bends were not checked, ask which it is bent round",
  },
  checkSheet(sheet, { standard }, report) {
    if (!sheet.has("former")) return;
    const blank = sheet.answers.those(lacksFormer);
    const tested = sheet.answers.count(isBent);
    const kept = tested - blank.length;
    if (blank.length === 0 || kept < FEWEST || kept < USUAL * tested) return;
    for (const { facts } of blank) {
      const least = facts.leastFormer?.value ?? null;
      const values = { kept, tested, least: { mm: least ?? 0 }, standard: standard.id };
      const messageId = least === null ? "unknown" : "least";
      report({ messageId, outcome: "unsure", row: facts, at: "former", values });
    }
  },
});

function isBent({ row, isStraight, bendCount }: BarFacts): boolean {
  if (row.struckThrough || row.superseded === true || isStraight) return false;
  return (bendCount ?? 0) > 0;
}

/** Neither a former nor a radius is written, nor words that speak of one. */
function lacksFormer(facts: BarFacts): true | null {
  if (!isBent(facts) || facts.row.former !== null || facts.row.radius !== null) return null;
  const typed = facts.typed("former");
  const isBlank = typed === null || (typeof typed === "string" && BLANK.test(typed));
  return isBlank && !facts.inWords(saysFormer) ? true : null;
}

/** a dash is how some write that there is none */
const BLANK = /^[\s\-–—]*$/;

function saysFormer(words: string): boolean {
  return /\b(?:former|mandrel|pin)\b/.test(words);
}
