import { html, type TemplateResult } from "lit";
import { type Pick, pick } from "./pick";

/** One out of several, under its own name: names of any length are read in full where the list opens. */
export function choice(one: Pick): TemplateResult {
  return html`<label class="choice"><span>${one.label}</span>${pick(one)}</label>`;
}
