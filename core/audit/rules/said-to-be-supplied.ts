import { shortened } from "../../schedule/cells/longest-text";
import { remember } from "../../schedule/cells/remember";
import { holdsWord, plainWords } from "../../schedule/cells/row-words";
import { defineRule } from "../rule";

const saysSupplied = remember<string, boolean>(
  (remark) => holdsWord("supplied", plainWords(remark)),
  () => false,
);

export default defineRule({
  code: "REV103",
  name: "said-to-be-supplied",
  severity: "note",
  needs: "remark",
  docs: {
    summary:
      "The row's remark says that the bar was delivered, or that others supply it; it counts all the same.",
    why: "A remark takes no bar out of a total unless it says so alone. Steel that is on site already, or that others bring, is made once more.",
    failing: [
      { rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, remark: "already supplied" }] },
      { rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, remark: "by others" }] },
    ],
    passing: [{ rows: [{ size: "H16", shape: "00", A: 1000, length: 1000, remark: "deliver with P2" }] }],
  },
  messages: {
    supplied:
      'the bar counts, though its remark "{remark}" says that it is supplied: ask, and strike the row through where it is not to be made',
  },
  checkRow({ row }, _context, report) {
    const { remark } = row;
    if (remark === null || row.superseded === true || row.struckThrough || !saysSupplied(remark)) return;
    report({ messageId: "supplied", outcome: "unsure", at: "remark", values: { remark: shortened(remark) } });
  },
});
