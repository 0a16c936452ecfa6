import { defineRule } from "../rule";
import { isFabricName } from "../size-slips";

export default defineRule({
  code: "SIZE104",
  name: "fabric-as-bar",
  severity: "off-standard",
  needs: "unknown size",
  docs: {
    summary: "Welded fabric stands among the bars.",
    why: "Fabric is scheduled by sheet and area; as a bar it gets a length and a mass that mean nothing.",
    failing: [{ rows: [{ size: "A393", shape: "00", A: 4800, length: 4800 }] }],
    passing: [{ rows: [{ size: "H10", shape: "00", A: 4800, length: 4800 }] }],
  },
  messages: { fabric: '"{size}" is welded fabric and no bar: put it on a fabric schedule' },
  checkRow(facts, _context, report) {
    const { sizeTyped, size } = facts.row;
    if (sizeTyped === null || size?.bar || !isFabricName(sizeTyped)) return;
    report({ messageId: "fabric", at: "size", values: { size: sizeTyped } });
  },
});
