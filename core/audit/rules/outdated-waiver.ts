import { defineRule } from "../rule";

export default defineRule({
  code: "SETTING101",
  name: "outdated-waiver",
  severity: "note",
  docs: {
    summary: "A finding was waived with a reason, and is not made any longer.",
    why: "The row was corrected, renamed or taken out. The waiver is worth deleting, or it hides the next mistake of this kind under an old reason.",
    failing: [
      {
        rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }],
        kept: '{"waivers":[{"code":"LEN102","sheet":"Schedule","key":"B1 | 01","reason":"agreed with the site"}]}',
      },
    ],
    passing: [{ rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }] }],
  },
  messages: {
    row: `the waiver of {code} for {key} ("{reason}") no longer applies: delete it`,
    sheet: `the waiver of {code} for the whole sheet ("{reason}") no longer applies: delete it`,
  },
  checkSettings({ outdated }, report) {
    for (const { waiver, sheet, row } of outdated) {
      const { code, key, reason } = waiver;
      const values = { code, reason, key: key ?? "" };
      report({ messageId: key === null ? "sheet" : "row", sheet, ...(row === null ? {} : { row }), values });
    }
  },
});
