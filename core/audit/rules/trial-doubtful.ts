import { reasonOnSheet } from "../../bending/trial-problem";
import { refusalText } from "../../units/refusal";
import { exampleShop } from "../example-shop";
import { defineRule } from "../rule";

export default defineRule({
  code: "SHOP103",
  name: "trial-doubtful",
  severity: "doubtful",
  docs: {
    summary: "A trial of the log is not used, could be meant two ways, or does not fit the others.",
    why: "Every compensated angle rests on the log: a wrong trial bends whole batches wrong. No trial is dropped unsaid.",
    failing: [
      {
        rows: [{ size: "H12", shape: "00", A: 900, length: 900 }],
        shop: exampleShop({ trials: [["2031-03-02", "Bench 2", "H12", 48, "H", "bar", "K4", 5, 4]] }),
      },
    ],
    passing: [
      {
        rows: [{ size: "H12", shape: "00", A: 900, length: 900 }],
        shop: exampleShop({
          trials: [
            ["2031-03-02", "Bench 2", "H12", 48, "H", "bar", "K4", 90, 85],
            ["2031-03-02", "Bench 2", "H12", 48, "H", "bar", "K4", 135, 128.5],
          ],
        }),
      },
    ],
  },
  messages: { rejected: "{reason}", asks: "{reason}", shown: "{reason}" },
  checkShop({ shop: { trials }, log, logRefusal, sheet }, _context, report) {
    if (trials === null) return;
    if (logRefusal !== null) {
      const place = { row: trials.top, column: trials.left };
      report({ messageId: "rejected", place, values: { reason: refusalText(logRefusal) } });
      return;
    }
    for (const { row, outcome, reason } of [...log.problems, ...log.calibration.problems]) {
      const place = { row: trials.top + row, column: trials.left };
      const values = { reason: refusalText(reasonOnSheet(reason, (sheet?.top ?? 0) + trials.top)) };
      if (outcome === "rejected") report({ messageId: "rejected", place, values });
      else if (outcome === "asks") report({ messageId: "asks", outcome: "unsure", place, values });
      else report({ messageId: "shown", severity: "note", place, values });
    }
  },
});
