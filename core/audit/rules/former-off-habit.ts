import type { BarFacts } from "../../bar/bar-facts";
import type { SheetFacts } from "../../bar/sheet-facts";
import { statedFormers } from "../../bar/stated-formers";
import { STATED_FORMERS } from "../../bar/stated-formers.data";
import { greatest, least } from "../../units/extremes";
import { isLink, saysLink } from "../member-bars";
import { defineRule } from "../rule";

const bar = (size: string, former: number, length: number) => ({
  ...{ size, shape: "U", A: 350, B: length - 700, C: 350, length, former },
});
const BARS = [bar("HD25", 150, 2200), bar("HD25", 150, 2600), bar("HD16", 80, 2000)];

export default defineRule({
  code: "BEND109",
  name: "former-off-habit",
  severity: "unsafe",
  docs: {
    summary:
      "A bar has a smaller former than all other bars of its size and grade on the sheet, or than thinner bars, and the standard in force has none to judge it by.",
    why: "Where no least former is held the sheet's own formers are the measure: a slip of one line bends a bar round too small a former, where it can crack.",
    failing: [{ rows: [...BARS, bar("HD25", 100, 2200)] }],
    passing: [{ rows: [{ size: "H16", shape: "21", A: 350, B: 1500, C: 350, length: 2150, former: 64 }] }],
  },
  messages: {
    smaller:
      "former {former} is smaller than the {usual} of the other {others} bars of {size}: if it is no slip, ask the designer for the least former of this steel",
    stated:
      "former {former} is below the {least} of {size} by {cell}, {times} d: if it is no slip, ask the designer",
    thinner:
      "former {former} is smaller than the {usual} of {others} thinner bars, such as {size}: if it is no slip, ask the designer for the least former of this steel",
  },
  checkSheet(sheet, _context, report) {
    // bars of another standard than the one in force are judged by none
    const isForeign = sheet.habits.standardMeant !== null;
    const formers = sheet.answers.those(formerToCompare, isForeign);
    const groups = new Map<string, (typeof formers)[number][]>();
    for (const one of formers) {
      const group = groups.get(one.answer.bar);
      if (group === undefined) groups.set(one.answer.bar, [one]);
      else group.push(one);
    }
    const told = new Set<BarFacts>();
    for (const group of groups.values()) {
      const largest = greatest(group.map(({ answer }) => answer.former));
      const others = group.filter(({ answer }) => answer.former === largest);
      const [odd] = group.filter(({ answer }) => answer.former < largest);
      // one that is unlike all others, where another of its shape has theirs
      if (odd === undefined || others.length !== group.length - 1 || others.length < FEWEST_OTHERS) continue;
      if (!others.some(({ answer }) => answer.shape === odd.answer.shape)) continue;
      told.add(odd.facts);
      report({
        messageId: "smaller",
        outcome: "unsure",
        row: odd.facts,
        at: "former",
        values: {
          former: { mm: odd.answer.former },
          usual: { mm: largest },
          others: others.length,
          size: odd.facts.sizeName,
        },
      });
    }
    for (const { facts, answer, times, cell } of belowStated(formers, sheet)) {
      if (told.has(facts)) continue;
      told.add(facts);
      const least = { mm: times * (facts.diameter ?? 0) };
      const values = { former: { mm: answer.former }, least, times, cell, size: facts.sizeName };
      report({ messageId: "stated", outcome: "unsure", row: facts, at: "former", values });
    }
    for (const group of groups.values()) {
      const smallest = least(group.map(({ answer }) => answer.former));
      const [odd, another] = group.filter(({ answer }) => answer.former === smallest);
      if (odd === undefined || another !== undefined || told.has(odd.facts)) continue;
      const thinner = thinnerOnLarger(odd, formers);
      const ofGrade = thinner.filter(({ facts }) => facts.gradeName === odd.facts.gradeName);
      // where others of its own size have larger ones too, the thinner of its shape may be of another steel
      const held = group.length === 1 ? ofGrade : thinner;
      const { shape, isOpen } = odd.answer;
      const alike =
        held.find(({ answer }) => answer.shape === shape) ??
        held.find(({ answer }) => isOpen && answer.isOpen);
      if (alike === undefined || ofGrade.length === 0 || held.length < FEWEST_OTHERS) continue;
      report({
        messageId: "thinner",
        outcome: "unsure",
        row: odd.facts,
        at: "former",
        values: {
          former: { mm: odd.answer.former },
          usual: { mm: alike.answer.former },
          others: held.length,
          size: alike.facts.sizeName,
        },
      });
    }
  },
});

const FEWEST_OTHERS = 2;
/** legs of an L and of a U */
const OPEN: ReadonlySet<number> = new Set([2, 3]);

interface FormerOfBar {
  readonly bar: string;
  readonly shape: string;
  /** two or three legs, and no link: those of all such bars are bent alike */
  readonly isOpen: boolean;
  readonly former: number;
}

interface BarOnFormer {
  readonly facts: BarFacts;
  readonly answer: FormerOfBar;
}

/** Formers below what a note of the sheet says, where most of them keep it. */
function belowStated(all: readonly BarOnFormer[], sheet: SheetFacts) {
  const stated = all.length === 0 ? null : statedFormers(sheet);
  if (stated === null) return [];
  const { kept, share } = STATED_FORMERS.value;
  const off = all.flatMap((one) => {
    const diameter = one.facts.diameter ?? 0;
    const times = diameter > stated.beyond ? stated.thick : stated.all;
    return one.answer.former < times * diameter - ROUNDED ? [{ ...one, times, cell: stated.cell }] : [];
  });
  return all.length - off.length >= kept && off.length <= share * all.length ? off : [];
}

/** mm: formers are written in whole millimetres */
const ROUNDED = 0.5;

/** Thinner bars that are bent round larger formers: of one steel no document asks less of the thicker one. */
function thinnerOnLarger(
  { facts, answer }: BarOnFormer,
  all: readonly BarOnFormer[],
): readonly BarOnFormer[] {
  return all.filter(
    (one) => (one.facts.diameter ?? Infinity) < (facts.diameter ?? 0) && one.answer.former > answer.former,
  );
}

/** A typed former that no limit of the standard in force judges. */
function formerToCompare(facts: BarFacts, isForeign: boolean): FormerOfBar | null {
  const { former } = facts.row;
  if (former === null || facts.diameter === null || !(isForeign || facts.leastFormer === null)) return null;
  const shape = String(facts.typed("shape") ?? "").trim();
  let legs = 0;
  for (const leg of facts.row.dims) if (leg !== null && leg > 0) legs += 1;
  const isOpen = OPEN.has(legs) && !isLink(facts) && !saysLink(shape);
  return { bar: JSON.stringify([facts.sizeName, facts.gradeName]), shape, isOpen, former };
}
