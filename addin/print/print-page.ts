import { isLetterPaper } from "../workbook/is-letter-paper";
import { html, Markup } from "./html";
import { PRINT_STYLE } from "./print-style";

/** What a schedule calls itself, as far as its sheet says. */
export interface PageHead {
  readonly job: string | null;
  readonly schedule: string | null;
  readonly revision: string | null;
  readonly standard: string;
  /** what is not told because somebody said so, one line a decision */
  readonly notTold?: readonly string[];
  /** what is left out although a sheet holds it, and what else the page rests on, one line each */
  readonly leftOut?: readonly string[];
}

/** A whole page of its own: no script, no outside address, style inside, so that it can be kept and printed anywhere. */
export function printPage(title: string, head: PageHead, body: readonly Markup[]): string {
  const named = [
    head.job,
    head.schedule,
    head.revision === null ? null : `revision ${head.revision}`,
    head.standard,
  ];
  const line = named.filter((part) => part !== null).join(" · ");
  return `<!doctype html>
${
  html`<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${title}</title>
<style>${pageSize(head)}${PRINT_STYLE}</style>
</head>
<body>
<header><h1>${title}</h1><p>${line}</p>${list(LEFT_OUT, head.leftOut ?? [])}${list(NOT_TOLD, head.notTold ?? [])}</header>
<main>${body}</main>
</body>
</html>`.text
}
`;
}

/** The paper of the country whose standard is in force. */
export const pageSize = ({ standard }: Pick<PageHead, "standard">, side = ""): Markup =>
  new Markup(`@page { size: ${isLetterPaper(standard) ? "letter" : "A4"}${side}; }`);

const LEFT_OUT = "Left out, and what this rests on:";
const NOT_TOLD = "Not told in what follows, because somebody said so:";

function list(title: string, lines: readonly string[]): Markup {
  if (lines.length === 0) return html``;
  return html`<ul class="not-told"><li><strong>${title}</strong></li>${[...new Set(lines)].map((each) => html`<li>${each}</li>`)}</ul>`;
}
