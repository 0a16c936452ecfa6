import { html, nothing, type TemplateResult } from "lit";
import { decidedWords } from "../../../../core/audit/decided-words";
import type { ColumnKind, ColumnUnit } from "../../../../core/schedule/bar-row";
import { COLUMN_KINDS, columnWords } from "../../../../core/schedule/columns/column-words";
import type { AuditView, LimitView, WaiverView } from "../../engine/audit-view";
import type { PaneModel } from "../../model/pane-model";
import {
  changeLimit,
  confirmGuess,
  correctColumn,
  type SettingsEdit,
  takeLimitBack,
  turnRuleOn,
  unwaive,
} from "../../model/settings-edits";
import { choice } from "../choice";
import type { CheckMemory } from "./check-memory";
import { decideForm } from "./decide-form";

const AS_READ = "";
const UNITS: readonly ColumnUnit[] = ["mm", "cm", "m", "in", "ft", "kg", "t", "lb"];

/** Every decision of the user on the check, in one place, each with its way back. */
export function decisions(model: PaneModel, view: AuditView, memory: CheckMemory): TemplateResult {
  const { rulesOff, limits, waivers, corrections, confirmed, problem } = view.decisions;
  return html`
    <section class="decisions" aria-label="Accepted, limits and corrections">
      <p>By ${view.standard.title}. What is decided here is kept in the workbook.</p>
      ${problem === null ? nothing : html`<p class="trouble">Not all that is kept could be read: ${problem}.</p>`}
      <h2>Not asked in this workbook</h2>
      ${list(
        model,
        rulesOff.map(({ code, rule, hidden, ...decided }) => ({
          text: `${sentence(rule)}, ${decidedWords(decided)} (${hidden ?? "not obeyed: it finds what is unsafe"}) ${code}`,
          undo: turnRuleOn(code),
          said: `Asked again: ${rule}`,
          button: "Ask again",
        })),
        "Nothing: every question is asked.",
      )}
      <h2>Accepted</h2>
      ${list(
        model,
        waivers.map((waiver) => ({
          text: waiverWords(waiver),
          undo: unwaive(waiver),
          said: `Told again: ${waiver.rule}`,
          button: "Take back",
        })),
        "None. A finding is accepted under its own Why, accept.",
      )}
      <h2>Limits</h2>
      <div class="choices">${limits.map((limit) => limitField(model, memory, limit))}</div>
      <h2>Columns corrected</h2>
      ${list(
        model,
        corrections.map(({ column, kind, unit }) => ({
          text: `${column}: ${[kind === undefined ? null : columnWords(kind), unit].filter(Boolean).join(", ")}`,
          undo: correctColumn(view.sheet, column, null),
          said: `Column ${column} is read as found again`,
          button: "Take back",
        })),
        "None.",
      )}
      ${correctionForm(model, view, memory)}
      <h2>Guesses confirmed</h2>
      ${list(
        model,
        confirmed.map((guess) => ({
          text: guess.replaceAll("-", " "),
          undo: confirmGuess(view.sheet, guess, false),
          said: `The guess at ${guess} is open again`,
          button: "Take back",
        })),
        "None. A guess is confirmed under its finding's Why, accept.",
      )}
    </section>
  `;
}

interface Decision {
  readonly text: string;
  readonly undo: SettingsEdit;
  readonly said: string;
  readonly button: string;
}

function list(model: PaneModel, all: readonly Decision[], none: string): TemplateResult {
  if (all.length === 0) return html`<p class="empty">${none}</p>`;
  return html`<ul class="decided">
    ${all.map(
      ({ text, undo, said, button }) => html`<li>
        <span>${text}</span>
        <fluent-button size="small" aria-label="${button}: ${text}" @click=${() => void model.decide(undo, said)}
          >${button}</fluent-button
        >
      </li>`,
    )}
  </ul>`;
}

function waiverWords({ code, rule, sheet, key, cell, message, isElsewhere, ...decided }: WaiverView): string {
  const place = isElsewhere ? `${sheet}, ${key ?? "whole sheet"}` : (cell ?? key ?? "whole sheet");
  const applies = isElsewhere || message !== null ? "" : " It no longer applies.";
  return `${place}: ${rule}, ${decidedWords(decided)}.${applies} ${code}`;
}

function limitField(
  model: PaneModel,
  memory: CheckMemory,
  { name, words, unit, own, hidden, inForce, source }: LimitView,
): TemplateResult {
  const key = `limit ${name}`;
  const isOpen = memory.deciding === key;
  const turn = (): void => {
    memory.deciding = isOpen ? null : key;
    memory.redraw();
  };
  const said = own === null ? (source ?? "not asked") : `changed here, ${decidedWords(own)} (${hidden})`;
  return html`
    <div class="limit" data-limit=${name}>
      <p>${words}: <strong>${own?.value ?? inForce ?? "no limit"}${own === null && inForce === null ? "" : ` ${unit}`}</strong><br /><small>${said}</small></p>
      <div class="buttons">
        <button class="change-limit" aria-expanded=${isOpen ? "true" : "false"} aria-label="Change: ${words}" @click=${turn}>Change</button>
        ${
          own === null
            ? nothing
            : html`<button
                class="limit-back"
                aria-label="Take back: ${words}"
                @click=${() => void model.decide(takeLimitBack(name), `${words}: no limit of the workbook's own`)}
                >Take back</button
              >`
        }
      </div>
      ${isOpen ? limitForm(model, memory, name, words, unit) : nothing}
    </div>
  `;
}

function limitForm(
  model: PaneModel,
  memory: CheckMemory,
  name: LimitView["name"],
  words: string,
  unit: string,
): TemplateResult {
  const { ahead } = model.state;
  const look = ({ target }: Event): void => {
    const value = Number((target as HTMLInputElement).value);
    if (value > 0) void model.lookAhead({ kind: "limit", limit: name, value });
  };
  return decideForm({
    name: "change-limit-form",
    because: "Changed because",
    ahead: ahead?.about === `limit ${name}` ? ahead.words : "Type a limit to see what would not be told.",
    button: "Change",
    more: html`<label class="field">${words}, ${unit} <input name="value" type="number" min="0" step="any" required @input=${look} /></label>`,
    refuse: (problem) => model.report(problem),
    decide(decided, form) {
      const value = Number(form.get("value"));
      if (!(value > 0)) {
        model.report(
          new Error(`${words}: ${String(form.get("value"))} is no limit, give a number of ${unit} above 0`),
        );
        return;
      }
      memory.deciding = null;
      void model.decide(changeLimit(name, value, decided), `${words} ${value} ${unit}`);
    },
  });
}

const sentence = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

function correctionForm(model: PaneModel, view: AuditView, { draft, redraw }: CheckMemory) {
  const set = (part: keyof CheckMemory["draft"]) => (value: string) => {
    draft[part] = value;
    redraw();
  };
  const keep = (): void => {
    const { column, kind, unit } = draft;
    if (column === "" || (kind === AS_READ && unit === AS_READ)) {
      model.report(new Error("choose a column, and what it is or its unit, then keep the correction"));
      return;
    }
    const correction = {
      ...(kind === AS_READ ? {} : { kind: kind as ColumnKind }),
      ...(unit === AS_READ ? {} : { unit: unit as ColumnUnit }),
    };
    Object.assign(draft, { column: "", kind: AS_READ, unit: AS_READ });
    void model.decide(correctColumn(view.sheet, column, correction), `Column ${column} is read as corrected`);
  };
  return html`
    <div class="choices">
      ${choice({
        label: "Column",
        options: [
          { value: "", text: "choose" },
          ...view.columns.map(({ name, letter, header }) => ({ value: name, text: `${letter} ${header}` })),
        ],
        value: draft.column,
        choose: set("column"),
      })}
      ${choice({
        label: "Is",
        options: [
          { value: AS_READ, text: "as read" },
          ...COLUMN_KINDS.map((kind) => ({ value: kind, text: columnWords(kind) })),
        ],
        value: draft.kind,
        choose: set("kind"),
      })}
      ${choice({
        label: "Unit",
        options: [{ value: AS_READ, text: "as read" }, ...UNITS.map((unit) => ({ value: unit, text: unit }))],
        value: draft.unit,
        choose: set("unit"),
      })}
      <fluent-button class="correct" size="small" @click=${keep}>Keep correction</fluent-button>
    </div>
  `;
}
