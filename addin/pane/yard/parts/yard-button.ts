import { html, type TemplateResult } from "lit";
import type { YardModel } from "../yard-model";

/** A button that waits while the yard is at work. */
export function yardButton(
  model: YardModel,
  name: string,
  words: string,
  act: () => void,
  isPrimary = false,
): TemplateResult {
  const isBusy = model.state.doing !== null;
  return html`<fluent-button
    class=${name}
    size="small"
    appearance=${isPrimary ? "primary" : "outline"}
    ?disabled-focusable=${isBusy}
    @click=${() => !isBusy && act()}
    >${words}</fluent-button
  >`;
}
