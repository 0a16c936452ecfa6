import { defineRule } from "../rule";

export default defineRule({
  code: "STANDARD101",
  name: "edition-not-read",
  severity: "note",
  docs: {
    summary: "The text of the edition in force was not read; its numbers are recalled or those of another.",
    why: "A limit from memory is no limit: what is found by it is perhaps so, and what is not found was not judged by the text.",
    failing: [
      {
        standard: "BS8666:2020",
        rows: [{ size: "H16", shape: "21", A: 1000, B: 400, C: 500, length: 1850 }],
      },
    ],
    passing: [
      {
        standard: "BS8666:2005",
        rows: [{ size: "H16", shape: "21", A: 1000, B: 400, C: 500, length: 1850 }],
      },
    ],
  },
  messages: { unread: "{standard}: {caution}" },
  checkSheet(sheet, { standard }, report) {
    const { caution } = standard;
    if (caution === null || sheet.answers.length === 0) return;
    report({ messageId: "unread", outcome: "unsure", values: { standard: standard.id, caution } });
  },
});
