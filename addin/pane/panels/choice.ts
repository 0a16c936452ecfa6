import type { Dropdown } from "@fluentui/web-components";
import { html, type TemplateResult } from "lit";
import { ref } from "lit/directives/ref.js";
import { repeat } from "lit/directives/repeat.js";

export interface Choice {
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly text: string }[];
  readonly value: string;
  choose(value: string): void;
}

/** ms until a component that is not drawn yet is looked at again */
const SOON = 16;

/** One out of several, by name. */
export function choice({ label, options, value, choose }: Choice): TemplateResult {
  const shown = options.find((option) => option.value === value)?.text ?? value;
  const onChange = (event: Event): void => {
    const chosen = (event.currentTarget as Dropdown).value;
    if (chosen !== null && chosen !== value) choose(chosen);
  };
  return html`
    <fluent-field label-position="above">
      <label slot="label">${label}</label>
      <fluent-dropdown slot="input" type="dropdown" @change=${onChange} ${ref((element) => follow(element, value, `${label}: ${shown}`))}>
        <fluent-listbox>
          ${repeat(
            options,
            (option) => option.value,
            (option) => html`<fluent-option value=${option.value}>${option.text}</fluent-option>`,
          )}
        </fluent-listbox>
      </fluent-dropdown>
    </fluent-field>
  `;
}

/** The component leaves its inner control unnamed and unexpanded until first opened, and takes a value only once its options stand. */
function follow(element: Element | undefined, value: string, name: string): void {
  if (element === undefined) return;
  const dropdown = element as Dropdown;
  const settle = (): void => {
    if (!dropdown.isConnected) return;
    // the component throws where a value comes before its control stands
    if ((dropdown.control as HTMLElement | undefined) === undefined) {
      setTimeout(settle, SOON);
      return;
    }
    if (dropdown.value !== value) dropdown.value = value;
    const control = dropdown.querySelector('[role="combobox"]');
    control?.setAttribute("aria-label", name);
    if (control?.hasAttribute("aria-expanded") === false) control.setAttribute("aria-expanded", "false");
  };
  void customElements.whenDefined("fluent-dropdown").then(() => setTimeout(settle));
}
