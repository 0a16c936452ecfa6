import { html, nothing, type TemplateResult } from "lit";
import { keyed } from "lit/directives/keyed.js";
import type { TicketView } from "../../engine/bench-view";
import type { BenchModel } from "../../model/bench-model";

/** "I bent to ... it came to ...": the trial log's row, with all filled in that is known. */
export function trialPart(
  model: BenchModel,
  { trial, bends, row, mark }: TicketView,
): TemplateResult | typeof nothing {
  if (trial === null) return nothing;
  const { learned } = model.state;
  const send = (event: Event): void => {
    event.preventDefault();
    const form = new FormData(event.currentTarget as HTMLFormElement);
    const text = (name: string): string => String(form.get(name) ?? "").trim();
    const number = (name: string): number => Number(text(name).replace(",", "."));
    void model.writeTrial({
      machine: text("machine"),
      former: text("former"),
      bentTo: number("bentTo"),
      released: number("released"),
      heat: text("heat"),
    });
  };
  const known = bends.find(({ bendTo }) => bendTo !== null)?.bendTo ?? bends[0]?.wanted ?? "";
  // what was typed stays when the log is fitted again; another mark has a form of its own
  const form = html`
    <form class="trial" aria-label="A trial of this bar" @submit=${send}>
      <p><strong>${trial.size}</strong> on ${one("machine", "Machine", trial.machines, trial.machine)} about ${one("former", "Former", trial.formers, null)}</p>
      <label>I bent to <input name="bentTo" inputmode="decimal" required value=${known.replace("\u00b0", "")} />&#176;</label>
      <label>it came to <input name="released" inputmode="decimal" required />&#176;</label>
      <label>heat <input name="heat" autocomplete="off" /></label>
      <button type="submit">Write the trial</button>
      ${learned === null ? nothing : html`<p class="learned" role="status">${learned}</p>`}
    </form>
  `;
  return html`${keyed(`${row} ${mark}`, form)}`;
}

/** What is known stands as words; what is not is chosen, or typed where nothing is on offer. */
function one(name: string, label: string, offered: readonly string[], known: string | null): TemplateResult {
  const only = known ?? (offered.length === 1 ? offered[0] : undefined);
  if (only !== undefined && offered.length <= 1)
    return html`<strong>${only}</strong><input type="hidden" name=${name} value=${only} />`;
  if (offered.length === 0) return html`<input name=${name} aria-label=${label} required />`;
  return html`<select name=${name} aria-label=${label}>
    ${offered.map((each) => html`<option ?selected=${each === only}>${each}</option>`)}
  </select>`;
}
