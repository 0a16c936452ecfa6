import { html, nothing, type TemplateResult } from "lit";
import type { BenchModel } from "../../model/bench-model";

/** What nobody has written down of the machine, asked one by one. */
export function machinePart(model: BenchModel): TemplateResult | typeof nothing {
  const { missing } = model.state;
  const [first] = missing;
  if (first === undefined) return nothing;
  const send = (event: Event): void => {
    event.preventDefault();
    const form = event.currentTarget as HTMLFormElement;
    void model.answer(first, String(new FormData(form).get("answer") ?? "")).then(() => form.reset());
  };
  return html`
    <form class="machine" aria-label="What is not known of ${first.machine}" @submit=${send}>
      <label>
        <strong>${first.machine}</strong>: ${first.question}
        <small>${first.hint}</small>
        <input name="answer" autocomplete="off" inputmode=${first.isList ? "text" : "decimal"} required />
      </label>
      <button type="submit">Write it on ${first.machine}'s row</button>
      <small>${missing.length === 1 ? "the last one" : `${missing.length} are open`}; what stays open is unsure, never a pass</small>
    </form>
  `;
}
