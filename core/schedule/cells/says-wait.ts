import { Memo } from "../../units/memo";
import { holdsWord, plainWords } from "./row-words";

/** "hold-down bolt": the word in another use */
const OTHER_USE = /\bhold(?:ing)?[- ]?(?:down|up|fast)\b/g;

/** True of a remark by which the bar is to wait: "HOLD - awaiting RFI", "do not make". */
export function saysWait(remark: string): boolean {
  return said.of(remark, () => readsWait(remark));
}

const said = new Memo<string, boolean>();

function readsWait(remark: string): boolean {
  const plain = plainWords(remark).replaceAll("\u2019", "'");
  return holdsWord("to-wait", plain.replace(OTHER_USE, ""));
}
