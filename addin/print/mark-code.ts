import qrcode from "qrcode-generator";
import { Markup } from "./html";

/** modules of white around the code, which a scanner needs */
const QUIET = 4;

/** A text as a code to scan: black squares on white, a path of its own. */
export function markCode(text: string): Markup {
  const code = qrcode(0, "M");
  code.addData(text, "Byte");
  code.make();
  const size = code.getModuleCount();
  let path = "";
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column < size; column += 1) {
      if (code.isDark(row, column)) path += `M${column + QUIET} ${row + QUIET}h1v1h-1z`;
    }
  }
  const whole = size + 2 * QUIET;
  return new Markup(
    `<svg class="code" viewBox="0 0 ${whole} ${whole}" role="img" aria-label="Code to scan for this mark"><path fill="#fff" d="M0 0h${whole}v${whole}H0z"/><path fill="#000" d="${path}"/></svg>`,
  );
}
