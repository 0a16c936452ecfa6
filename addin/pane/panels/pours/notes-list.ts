import { html, nothing, type TemplateResult } from "lit";

/** What a result leaves out or rests on. */
export function notesList(notes: readonly string[]): TemplateResult | typeof nothing {
  return notes.length === 0
    ? nothing
    : html`<ul class="notes">${notes.map((note) => html`<li>${note}</li>`)}</ul>`;
}
