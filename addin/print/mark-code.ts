import qrcode from "qrcode-generator";
import { html, Markup } from "./html";

/** modules of white around the code, which a scanner needs */
const QUIET = 4;
/** bytes that 57 modules hold at level M (ISO/IEC 18004 version 10, from memory): in 17 mm a finer one is not scanned */
const ROOM = 213;

/**
 * The first of these texts that a code on a ticket has room for, to be scanned: black squares on white, a
 * path of its own. Its bytes are UTF-8.
 */
export function markCode(texts: readonly string[]): Markup {
  const bytes = texts.map((text) => new TextEncoder().encode(text)).find(({ length }) => length <= ROOM);
  if (bytes === undefined) return html`<span class="code">No code: long mark</span>`;
  const code = qrcode(0, "M");
  // the library takes the low byte of each character
  code.addData(String.fromCharCode(...bytes), "Byte");
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
