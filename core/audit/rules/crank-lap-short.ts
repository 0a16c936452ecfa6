import type { BarFacts } from "../../bar/bar-facts";
import { crankOf, mayBeCrank } from "../crank";
import { lapSaid } from "../lap-said";
import { CRANK_LINKS } from "../practice.data";
import { ownLap } from "../project-lap";
import { defineRule } from "../rule";

export default defineRule({
  code: "SHAPE119",
  name: "crank-lap-short",
  severity: "doubtful",
  docs: {
    summary: "The straight beyond a crank is shorter than the lap that the row or the project's table names.",
    why: "A bar is cranked to lie beside the bar that it laps with: what is straight beyond the crank is the lap. Links close to the bends take their sideways push. Ask the designer.",
    failing: [
      {
        rows: [{ size: "H20", shape: "26", A: 3000, B: 300, C: 600, D: 60, length: 3900, remark: "lap 800" }],
      },
    ],
    passing: [
      {
        rows: [{ size: "H20", shape: "26", A: 3000, B: 300, C: 800, D: 60, length: 4100, remark: "lap 800" }],
      },
    ],
  },
  messages: {
    short: "{straight} beyond the crank is below the lap of {lap} {where}: ask the designer",
    links: "{rows} bars are cranked, such as mark {mark}: links are asked for close to the bends",
  },
  checkSheet(sheet, { standard }, report) {
    for (const { facts, answer } of sheet.answers.those(shortEnd)) {
      const { straight, lap, own } = answer;
      report({
        messageId: "short",
        outcome: "unsure",
        row: facts,
        at: "shape",
        values: {
          straight: { mm: straight },
          lap: { mm: lap },
          where: own === null ? "of the row" : "of the project's own table",
        },
        ...(own === null ? {} : { cite: own.cite }),
      });
    }
    // said where the code itself is known to say it
    const cranked = standard.unit === "in" ? sheet.answers.those(offsetOf) : [];
    const first = cranked[0]?.facts;
    if (first === undefined) return;
    report({
      messageId: "links",
      severity: "note",
      outcome: "unsure",
      values: { rows: cranked.length, mark: first.row.mark ?? String(first.row.row + 1) },
      cite: CRANK_LINKS,
    });
  },
});

/** degrees: what slopes more is a bar bent up in a beam, which no link pushes back */
const BENT_UP_FROM = 30;

function offsetOf(facts: BarFacts): true | null {
  const slope = crankOf(facts)?.slope ?? null;
  return slope !== null && slope < BENT_UP_FROM ? true : null;
}

/** An end beyond the crank that is shorter than the lap, of the row or of the project. */
function shortEnd(facts: BarFacts) {
  if (!facts.kind.ask(mayBeCrank, facts)) return null;
  const said = lapSaid(facts);
  const own = said === null ? ownLap(facts, facts.standard) : null;
  const lap = said ?? own?.value ?? null;
  const straight = lap === null || crankOf(facts) === null ? null : shorterEnd(facts);
  return lap === null || straight === null || straight >= lap ? null : { straight, lap, own };
}

function shorterEnd({ planarPath }: BarFacts): number | null {
  const first = planarPath?.legs[0]?.length;
  const last = planarPath?.legs.at(-1)?.length;
  return first === undefined || last === undefined ? null : Math.min(first, last);
}
