import { saying } from "../../bar/said-words";
import { crankOf } from "../crank";
import { CRANK_SLOPE } from "../practice.data";
import { defineRule } from "../rule";

/** run over rise of the steepest crank in a column bar */
const STEEPEST_RUN = 6;
const CLOSE = 0.02;

const saysColumn = saying(/\bcol(?:umn)?s?\b/);

/** mm: dimensions are written to it, and an offset that has to clear a bar is rounded up */
const STEP = 5;

export default defineRule({
  code: "SHAPE112",
  name: "crank-too-steep",
  severity: "doubtful",
  docs: {
    summary: "A column bar is cranked more steeply than 1 in 6.",
    why: "The steeper the crank, the more the bar pushes outwards at its bend; links must hold that. Ask the designer.",
    failing: [
      {
        rows: [
          { member: "Column C1", size: "H20", shape: "26", A: 1000, B: 150, C: 1000, D: 65, length: 2150 },
        ],
      },
    ],
    passing: [
      {
        rows: [
          { member: "Column C1", size: "H20", shape: "26", A: 1000, B: 300, C: 1000, D: 65, length: 2300 },
        ],
      },
    ],
  },
  messages: {
    steep: "the crank slopes 1 in {run}, steeper than 1 in {limit} for a column bar: ask the designer",
  },
  ofWords: saysColumn,
  checkRow(facts, { standard }, report) {
    if (!facts.inWords(saysColumn)) return;
    const crank = crankOf(facts);
    if (crank === null || crank.slope === null || crank.slope <= 0) return;
    const ofCode = standard.detailing("slope of a column bar's crank", facts.diameter ?? 0);
    const limit = ofCode?.value.run ?? STEEPEST_RUN;
    const run = 1 / Math.tan((crank.slope * Math.PI) / 180);
    const rise = crank.overall - (facts.diameter ?? 0);
    if (run * (1 + STEP / Math.max(STEP, rise)) >= limit - CLOSE) return;
    report({
      messageId: "steep",
      // some design codes ask for it; elsewhere it is a habit of the trade
      ...(ofCode === null ? {} : { severity: "off-standard" as const }),
      at: crank.letter,
      values: { run: Math.round(run * 10) / 10, limit },
      cite: ofCode?.cite ?? CRANK_SLOPE,
    });
  },
});
