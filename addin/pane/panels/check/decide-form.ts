import { html, nothing, type TemplateResult } from "lit";
import type { Decided } from "../../../../core/audit/audit-settings";
import { today } from "./today";

const KEPT_UNDER = "barwright.name";

/** The name that decisions were last taken under on this machine. */
function lastName(): string {
  try {
    return localStorage.getItem(KEPT_UNDER) ?? "";
  } catch {
    return "";
  }
}

function keepName(name: string): void {
  try {
    localStorage.setItem(KEPT_UNDER, name);
  } catch {
    // it is asked for again next time
  }
}

export interface DecideForm {
  /** class of the form */
  readonly name: string;
  /** what the reason is of: "Accepted for this row because" */
  readonly because: string;
  /** what stops being told, said before it is done; null while it is being found out */
  readonly ahead: string | null;
  /** words on the button */
  readonly button: string;
  /** further fields */
  readonly more?: TemplateResult;
  readonly refuse: (problem: Error) => void;
  decide(decided: Decided, form: FormData): void;
}

const MISSING = {
  reason: "say why: the reason goes with the schedule",
  by: "give the name of whoever decides: it goes with the schedule",
};

/** Asks why and who, and says beforehand what the decision keeps from being told. */
export function decideForm({
  name,
  because,
  ahead,
  button,
  more,
  refuse,
  decide,
}: DecideForm): TemplateResult {
  const send = (event: Event): void => {
    event.preventDefault();
    const element = event.currentTarget as HTMLFormElement;
    const form = new FormData(element);
    const said = (field: string): string => String(form.get(field) ?? "").trim();
    const decided = { reason: said("reason"), by: said("by"), date: today() };
    const missing = (["reason", "by"] as const).find((field) => decided[field] === "");
    if (missing !== undefined) {
      refuse(new Error(MISSING[missing]));
      element.querySelector<HTMLInputElement>(`[name="${missing}"]`)?.focus();
      return;
    }
    keepName(decided.by);
    decide(decided, form);
  };
  return html`
    <form class=${name} novalidate @submit=${send}>
      ${more ?? nothing}
      <label class="field">${because} <input name="reason" autocomplete="off" maxlength="200" required /></label>
      <label class="field">Decided by <input name="by" autocomplete="name" maxlength="80" required .value=${lastName()} /></label>
      <p class="ahead" role="status">${ahead ?? "Looking what would not be told ..."}</p>
      <button type="submit">${button}</button>
    </form>
  `;
}
