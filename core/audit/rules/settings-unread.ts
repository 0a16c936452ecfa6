import { defineRule } from "../rule";

export default defineRule({
  code: "SETTING102",
  name: "settings-unread",
  severity: "doubtful",
  docs: {
    summary: "The settings kept in the workbook could not be read, all or in part.",
    why: "What could not be read takes its default: a limit that was lowered is the usual one again, and waived findings come back.",
    failing: [
      {
        rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }],
        kept: '{"limits":{"hoist":"two tonnes"}}',
      },
    ],
    passing: [
      {
        rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }],
        kept: '{"limits":{"hoist":2000}}',
      },
    ],
  },
  messages: {
    unread:
      "the settings kept in the workbook under the name Barwright.Audit could not be read: {problem}; put the name right, or delete it",
  },
  checkSettings({ settings, firstSheet }, report) {
    const { problem } = settings;
    if (problem === undefined) return;
    report({ messageId: "unread", outcome: "unsure", sheet: firstSheet, values: { problem } });
  },
});
