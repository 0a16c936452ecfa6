import { unreadRows } from "../../schedule/unread-rows";
import { defineRule } from "../rule";

export default defineRule({
  code: "READ103",
  name: "unread-row",
  severity: "doubtful",
  docs: {
    summary: "A row of the schedule could not be read as a bar, heading, total or note.",
    why: "No row is passed over in silence: what stands in it is not checked.",
    failing: [
      {
        rows: [
          { size: "H16", shape: "00", A: 1000, length: 1000 },
          {
            member: null,
            mark: null,
            size: null,
            members: null,
            each: null,
            total: null,
            length: 5,
            shape: "see",
            B: "sketch",
          },
        ],
      },
    ],
    passing: [{ rows: [{ size: "H16", shape: "00", A: 1000, length: 1000 }] }],
  },
  messages: { unread: "the row could not be read: {reason}" },
  checkSheet(sheet, _context, report) {
    for (const { row, reason } of unreadRows(sheet.reading)) {
      report({ messageId: "unread", outcome: "unsure", place: { row, column: 0 }, values: { reason } });
    }
  },
});
