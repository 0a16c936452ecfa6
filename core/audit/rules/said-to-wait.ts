import { shortened } from "../../schedule/cells/longest-text";
import { saysWait } from "../../schedule/cells/says-wait";
import { defineRule } from "../rule";

export default defineRule({
  code: "REV102",
  name: "said-to-wait",
  severity: "doubtful",
  needs: "remark",
  docs: {
    summary: "The row's remark says that the bar is to wait: on hold, awaiting an answer, not to be made.",
    why: "Steel that was cut before the answer came is scrap. The bar still counts, and every paper marks it HOLD until the remark is taken out.",
    failing: [
      { rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, remark: "HOLD - awaiting RFI" }] },
      { rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, remark: "do not make" }] },
    ],
    passing: [{ rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, remark: "hold-down bar" }] }],
  },
  messages: {
    waits:
      'the remark "{remark}" holds this bar back: ask who wrote it, and take the remark out once it is cleared',
  },
  checkRow({ row }, _context, report) {
    const { remark } = row;
    if (remark === null || row.superseded === true || row.struckThrough) return;
    if (!saysWait(remark)) return;
    report({ messageId: "waits", outcome: "unsure", at: "remark", values: { remark: shortened(remark) } });
  },
});
