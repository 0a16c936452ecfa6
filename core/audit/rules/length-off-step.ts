import { isMost } from "../../bar/sheet-habits";
import { offStep, roundedUp } from "../../bar/step";
import { defineRule } from "../rule";

export default defineRule({
  code: "LEN101",
  name: "length-off-step",
  severity: "off-standard",
  ofConvention: true,
  docs: {
    summary: "The length is not a multiple of the step that the standard rounds lengths to.",
    why: "The length on the schedule is the one that is cut and paid for; the standard rounds it one way for all.",
    failing: [{ rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 870 }] }],
    passing: [{ rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }] }],
  },
  messages: { off: "length {length} is no multiple of {step}" },
  fixes: { up: { label: "change the length to {up}", safety: "needs-review" } },
  checkRow(facts, context, report) {
    const { length } = facts.row;
    const { step, cite } = context.standard.lengthRounding;
    if (length === null || cite.provenance === "common practice" || !offStep(length, step)) return;
    const { standardMeant, offStepShare, keepsAnotherStep } = facts.sheet.habits;
    // a sheet that keeps another step, or is of another standard, is told so once
    if (standardMeant !== null || isMost(offStepShare) || keepsAnotherStep) return;
    const judged = facts.lengthJudgement;
    if (judged.kind === "slip") return;
    // a length that is wrong by more than rounding is told so, and what it should be
    const computed = judged.kind === "differs" ? judged.cut.length : null;
    if (computed !== null && Math.abs(length - computed) > step) return;
    const up = computed ?? roundedUp(length, step);
    report({
      messageId: "off",
      at: "length",
      values: { length: { mm: length, typed: true }, step: { mm: step }, up: { mm: up } },
      cite,
      fix: { id: "up", edits: [{ at: "length", to: up }], mustHold: true },
    });
  },
});
