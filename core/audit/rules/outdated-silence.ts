import { defineRule } from "../rule";

export default defineRule({
  code: "SETTING101",
  name: "outdated-silence",
  severity: "note",
  docs: {
    summary: "A finding was silenced with a reason, and is not made any longer.",
    why: "The row was corrected, renamed or taken out. The silence is worth deleting, or it hides the next mistake of this kind under an old reason.",
    failing: [
      {
        rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }],
        kept: '{"silences":[{"code":"LEN102","sheet":"Schedule","key":"B1 | 01","reason":"agreed with the site"}]}',
      },
    ],
    passing: [{ rows: [{ size: "H16", shape: "11", A: 500, B: 400, length: 875 }] }],
  },
  messages: {
    row: `the silence of {code} for {key} ("{reason}") no longer applies: delete it`,
    sheet: `the silence of {code} for the whole sheet ("{reason}") no longer applies: delete it`,
  },
  checkSettings({ outdated }, report) {
    for (const { silence, sheet, row } of outdated) {
      const { code, key, reason } = silence;
      const values = { code, reason, key: key ?? "" };
      report({ messageId: key === null ? "sheet" : "row", sheet, ...(row === null ? {} : { row }), values });
    }
  },
});
