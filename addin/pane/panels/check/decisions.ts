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
import { today } from "./today";

/** A correction that the user is putting together. */
export interface CorrectionDraft {
  column: string;
  kind: string;
  unit: string;
}

const AS_READ = "";
const UNITS: readonly ColumnUnit[] = ["mm", "cm", "m", "in", "ft", "kg", "t", "lb"];

/** Every decision of the user on the check, in one place, each with its way back. */
export function decisions(model: PaneModel, view: AuditView, draft: CorrectionDraft, redraw: () => void) {
  const { rulesOff, limits, waivers, corrections, confirmed, problem } = view.decisions;
  const changed = limits.filter(({ own }) => own !== null).length;
  const count = rulesOff.length + changed + waivers.length + corrections.length + confirmed.length;
  return html`
    <fluent-accordion-item heading-level="2" class="decisions">
      <span slot="heading">How this workbook is checked${count > 0 ? `, ${count} decided` : ""}</span>
      <p>By ${view.standard.title}. What is decided here is kept in the workbook.</p>
      ${problem === null ? nothing : html`<p class="trouble">Not all that is kept could be read: ${problem}.</p>`}
      <h3>Limits</h3>
      <div class="choices">${limits.map((limit) => limitField(model, limit))}</div>
      <h3>Rules turned off</h3>
      ${list(
        model,
        rulesOff.map(({ code, rule, hidden, ...decided }) => ({
          text: `${code} ${rule}, ${decidedWords(decided)} (${hidden ?? "not obeyed: it finds what is unsafe"})`,
          undo: turnRuleOn(code),
          said: `Rule ${code} is on again`,
          button: "Turn on",
        })),
        "None: every rule is run.",
      )}
      <h3>Findings waived</h3>
      ${list(
        model,
        waivers.map((waiver) => ({
          text: waiverWords(waiver),
          undo: unwaive(waiver),
          said: `${waiver.code} is told again`,
          button: "Take back",
        })),
        "None. Waive a finding under its More button.",
      )}
      <h3>Columns corrected</h3>
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
      ${correctionForm(model, view, draft, redraw)}
      <h3>Guesses confirmed</h3>
      ${list(
        model,
        confirmed.map((guess) => ({
          text: guess.replaceAll("-", " "),
          undo: confirmGuess(view.sheet, guess, false),
          said: `The guess at ${guess} is open again`,
          button: "Take back",
        })),
        "None. Confirm a guess under its More button.",
      )}
    </fluent-accordion-item>
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
  return `${place}: ${code} ${rule}, ${decidedWords(decided)}.${applies}`;
}

function limitField(model: PaneModel, { name, words, unit, own, hidden, inForce, source }: LimitView) {
  const change = ({ target }: Event): void => {
    const { value } = target as HTMLInputElement;
    const limit = value.trim() === "" ? null : Number(value);
    if (limit !== null && !(limit > 0)) {
      model.report(
        new Error(`${words}: ${value} is no limit, give a number of ${unit} above 0 or leave it blank`),
      );
      return;
    }
    const said = limit === null ? `${words}: no limit of the workbook's own` : `${words} ${limit} ${unit}`;
    void model.decide(
      limit === null ? takeLimitBack(name) : changeLimit(name, limit, { reason: "", by: "", date: today() }),
      said,
    );
  };
  return html`<label class="field"
    >${words}, ${unit}
    <input
      type="number"
      min="0"
      step="any"
      data-limit=${name}
      placeholder=${inForce === null ? "none" : `${inForce}`}
      .value=${own === null ? "" : `${own.value}`}
      @change=${change}
    /><small>${own === null && source !== null ? source : own === null ? "not asked" : `changed here, ${decidedWords(own)} (${hidden})`}</small></label
  >`;
}

function correctionForm(model: PaneModel, view: AuditView, draft: CorrectionDraft, redraw: () => void) {
  const set = (part: keyof CorrectionDraft) => (value: string) => {
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
