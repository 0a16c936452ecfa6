import { massPerMetreOf } from "../../schedule/cells/size-elsewhere";
import { prefixNotHeld } from "../../standards/index";
import { isRefusalOf } from "../../units/refusal";
import { isOpen } from "../kept-elsewhere";
import { perLength } from "../per-length";
import { defineRule } from "../rule";
import { isFabricName, swappedSize } from "../size-slips";

export default defineRule({
  code: "SIZE101",
  name: "unknown-size",
  severity: "off-standard",
  ofConvention: true,
  asksOnce: true,
  needs: "unknown size",
  docs: {
    summary: "The size is no bar of the standard in force, or one of some countries alone.",
    why: "A size that is not rolled cannot be bought, and its mass, former and end legs are not known.",
    failing: [{ rows: [{ size: "H13", shape: "00", A: 1000, length: 1000 }] }],
    passing: [{ rows: [{ size: "H12", shape: "00", A: 1000, length: 1000 }] }],
  },
  messages: {
    unknown: 'size "{size}" is no bar of {standard}: it holds {held}',
    weighed:
      'size "{size}" is no bar of {standard}: it holds {held}; its mass is taken as {unitMass} and nothing else of it was judged',
    somewhere: "size {size} is rolled in some countries alone: see that it can be had",
    missing: "no size is given",
  },
  checkRow(facts, context, report) {
    const { row } = facts;
    const bar = row.size?.bar;
    if (bar?.cite.provenance === "common practice" && facts.sheet.habits.standardMeant === null) {
      const { size, cite } = bar;
      report({
        messageId: "somewhere",
        severity: "note",
        outcome: "unsure",
        at: "size",
        values: { size },
        cite,
      });
    }
    if (bar || row.superseded === true || facts.sheet.habits.standardMeant !== null) return;
    if (row.problems?.some(({ field }) => field === "size")) return;
    if (row.sizeTyped === null) {
      report({ messageId: "missing", at: "size" });
      return;
    }
    if (isFabricName(row.sizeTyped) || swappedSize(row.sizeTyped, context.standard) !== null) return;
    const reading = context.standard.readSize(row.sizeTyped);
    if (isRefusalOf(reading, prefixNotHeld)) return;
    const held = context.standard.bars.map((bar) => bar.size).join(", ");
    const kgPerMetre = massPerMetreOf(row.size);
    const unitMass = kgPerMetre === null ? "" : perLength(kgPerMetre, context.standard.unit);
    report({
      messageId: kgPerMetre === null ? "unknown" : "weighed",
      // rolled somewhere, where nobody chose the document
      ...(kgPerMetre !== null && isOpen(context) ? { outcome: "unsure" as const } : {}),
      at: "size",
      values: { size: row.sizeTyped, standard: context.standard.id, held, unitMass },
      cite: context.standard.bars[0]?.cite ?? null,
    });
  },
});
