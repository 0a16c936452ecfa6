import { exampleShop } from "../example-shop";
import { faultsOfKind } from "../faults-of-kind";
import { HOOK_GAP } from "../practice.data";
import { defineRule } from "../rule";

export default defineRule({
  code: "MACHINE108",
  name: "hook-closes",
  severity: "doubtful",
  needs: "shop",
  docs: {
    summary:
      "The tail of a 180 degree hook meets the held leg before it is bent far enough to come back to 180.",
    why: "The legs touch and the hook stays open by what is missing. It is doubtful and not impossible: close it in a second stroke only if the machine's manual allows one, or shorten the tail.",
    failing: [
      { rows: [{ size: "H12", shape: "13", A: 1800, B: 75, C: 1800, length: 3625 }], shop: exampleShop() },
    ],
    passing: [
      { rows: [{ size: "H12", shape: "13", A: 500, B: 75, C: 160, length: 700 }], shop: exampleShop() },
    ],
  },
  messages: {
    closes:
      "on {machine}: bent back far enough, the tail of {tail} at bend {bend} leans {lean} over, and the legs stand {former} apart",
  },
  checkRow(facts, context, report) {
    for (const { fault, machine, outcome } of faultsOfKind("hook", facts, context)) {
      const { bend, tail, lean, former } = fault;
      const values = { machine, bend, tail: { mm: tail }, lean: { mm: lean }, former: { mm: former } };
      report({ messageId: "closes", outcome, at: "shape", values, cite: HOOK_GAP });
    }
  },
});
