import { html, type TemplateResult } from "lit";

/** What no check takes away. */
export function cautions(): TemplateResult {
  return html`
    <section class="cautions" aria-label="Cautions">
      <ul>
        <li>The machine's rating plate and manual come before anything shown here.</li>
        <li>What the designer must decide is never changed: ask the designer.</li>
        <li>Local codes and licensed practice hold where they differ.</li>
        <li>A released bar springs back: make a trial bend before a run.</li>
        <li>A check finds slips; it does not prove a schedule right.</li>
      </ul>
    </section>
  `;
}
