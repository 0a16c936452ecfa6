import type { BarFacts } from "../../bar/bar-facts";
import { SHORT_ENDS } from "../../bar/identities.data";
import { endsInWords } from "../../bar/legs-in-words";
import { legsTooShort } from "../../bar/legs-too-short";
import { hooksOf, offHooks } from "../../bar/short-ends";
import { hooksBelowStated } from "../../bar/stated-hooks";
import { leastFormer } from "../../shapes/least-former";
import { resolveStandard } from "../../standards/index";
import type { Standard } from "../../standards/port";
import { isRefusal } from "../../units/refusal";
import { defineRule } from "../rule";

const link = (size: string, A: number, B: number, C: number) => ({
  ...{ size, shape: "B\u00fcgel", A, B, C, length: 2 * (A + B + C) },
});
const LINKS = [link("8", 300, 400, 120), link("12", 300, 500, 180), link("10", 250, 450, 150)];

const inWords = (size: string, remark: string, length: number) => ({ size, shape: "-", length, remark });
const WORDS = [
  inWords("12", "150-1300-150", 1600),
  inWords("16", "250-4800-250", 5300),
  inWords("16", "300-3300", 3600),
];

export default defineRule({
  code: "BEND111",
  name: "end-cannot-be-bent",
  severity: "unbendable",
  docs: {
    summary:
      "An end leg that words, another document's sizes or a column of hooks give has no room for its bend, or a hook is far shorter than the hooks of the other bars.",
    why: "What ends inside its bend is no leg at all, and a nought lost in a hook is seen nowhere else where the length follows it. Where the bar is not bent about the least former, or the column means something else, it may be right.",
    failing: [
      { standard: "EC2:2004", rows: [...LINKS, link("10", 200, 350, 50)] },
      { standard: "EC2:2004", rows: [...WORDS, inWords("16", "40-5600-250", 5890)] },
    ],
    passing: [
      { standard: "EC2:2004", rows: LINKS },
      { standard: "EC2:2004", rows: WORDS },
    ],
  },
  messages: {
    inside:
      "leg {leg} of {length} is too short for the right angle beside it, which takes {needed} of {size} with a former of {former}: if it is bent so, ask the designer",
    hook: "hook {length} of {size} is below {times} d: is it a slip?",
    stated: "hook {length} of {size} is below the {least} that {cell} asks of hooks: is it a slip?",
    unlike:
      "hook {leg} of {length} is {own} d, and those of the other {others} bars of this shape are {usual} d: is it a slip?",
  },
  checkSheet(sheet, _context, report) {
    const told = new Set<BarFacts>();
    const meant = sheet.habits.standardMeant === null ? null : resolveStandard(sheet.habits.standardMeant.id);
    const standard = meant === null || isRefusal(meant) ? null : meant;
    if (standard !== null) {
      for (const { facts, answer } of sheet.answers.those(shortByAnother, standard)) {
        told.add(facts);
        for (const { leg, length, needed, former } of answer) {
          const values = { leg, size: facts.sizeName, length: { mm: length }, needed: { mm: needed } };
          report({
            messageId: "inside",
            outcome: "unsure",
            row: facts,
            at: leg,
            values: { ...values, former: { mm: former } },
          });
        }
      }
    }
    for (const { facts, legs, ends } of endsInWords(sheet)) {
      const former = formerOf(facts, standard);
      const needed = former / 2 + (facts.diameter ?? 0);
      const least = Math.min(...ends);
      if (told.has(facts) || !Number.isFinite(needed) || least >= needed - CLOSE) continue;
      told.add(facts);
      const values = {
        leg: legs,
        size: facts.sizeName,
        length: { mm: least },
        needed: { mm: needed },
        former: { mm: former },
      };
      report({ messageId: "inside", outcome: "unsure", row: facts, at: "length", values });
    }
    for (const { facts, mm } of hooksOf(sheet)) {
      if (mm >= SHORT_ENDS.value.straight * (facts.diameter ?? 0) - CLOSE) continue;
      told.add(facts);
      const values = { length: { mm }, size: facts.sizeName, times: SHORT_ENDS.value.straight };
      report({ messageId: "hook", outcome: "unsure", row: facts, at: "length", values });
    }
    for (const { facts, length, least, cell, at } of hooksBelowStated(sheet)) {
      if (told.has(facts)) continue;
      told.add(facts);
      const values = { length: { mm: length }, size: facts.sizeName, least: { mm: least }, cell };
      const of = { row: facts, at, values };
      report({ messageId: "stated", severity: "doubtful", outcome: "unsure", ...of });
    }
    for (const { facts, end, usual, others } of offHooks(sheet)) {
      if (told.has(facts)) continue;
      const own = Math.round((end.mm / (facts.diameter ?? 1)) * 10) / 10;
      const values = {
        leg: end.name,
        length: { mm: end.mm },
        own,
        others,
        usual: Math.round(usual * 10) / 10,
      };
      report({
        messageId: "unlike",
        severity: "doubtful",
        outcome: "unsure",
        row: facts,
        at: end.at,
        values,
      });
    }
  },
});

const CLOSE = 1;

/** mm: the least former that any use has, or an open bar. */
function formerOf(facts: BarFacts, standard: Standard | null, isOpen = false): number {
  const { diameter, row } = facts;
  if (diameter === null) return Number.NaN;
  const of = standard ?? facts.standard;
  const formers = (isOpen ? (["main"] as const) : (["main", "link"] as const)).map((use) =>
    leastFormer(of, diameter, use),
  );
  const held = formers.flatMap((one) => (isRefusal(one) ? [] : [one.value]));
  return Math.min(row.former ?? Number.POSITIVE_INFINITY, ...held);
}

function shortByAnother(facts: BarFacts, standard: Standard) {
  if (facts.definition !== null || facts.isPath) return null;
  // no link has two legs alone
  const former = formerOf(facts, standard, facts.row.dims.filter((dim) => dim !== null).length === 2);
  const short = legsTooShort(facts, former);
  return short.length === 0 ? null : short.map((leg) => ({ ...leg, former }));
}
