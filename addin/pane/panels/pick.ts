import { html, type TemplateResult } from "lit";

export interface Pick {
  readonly label: string;
  readonly value: string;
  readonly options: readonly { readonly value: string; readonly text: string }[];
  choose(value: string): void;
}

/** One out of several in a line's height; the chosen one stays on offer when nothing else is of its kind. */
export function pick({ label, value, options, choose }: Pick): TemplateResult {
  const offered = options.some((option) => option.value === value)
    ? options
    : [...options, { value, text: value }];
  return html`<select
    class="pick"
    data-pick=${label}
    aria-label=${label}
    .value=${value}
    @change=${({ target }: Event) => choose((target as HTMLSelectElement).value)}
  >
    ${offered.map((option) => html`<option value=${option.value} ?selected=${option.value === value}>${option.text}</option>`)}
  </select>`;
}
