import { encodeXml } from "../../core/units/encode-xml";

/** Text that is markup already and is not escaped again. */
export class Markup {
  constructor(readonly text: string) {}
}

type Part = string | number | null | Markup | readonly Markup[];

/**
 * Markup from a template; every value is escaped unless it is markup itself.
 *
 * @example html`<td>${"A < B"}</td>`.text   // <td>A &lt; B</td>
 */
export function html(strings: TemplateStringsArray, ...parts: Part[]): Markup {
  return new Markup(strings.reduce((text, string, index) => text + printed(parts[index - 1] ?? "") + string));
}

function printed(part: Exclude<Part, null>): string {
  if (part instanceof Markup) return part.text;
  if (typeof part === "object") return part.map((markup) => markup.text).join("");
  return escapeText(String(part));
}

/** Text safe between tags and inside quoted attributes; control characters, which no page may hold, are left out. */
export function escapeText(text: string): string {
  return encodeXml(text).replaceAll("'", "&#39;");
}
