import { html, nothing, type TemplateResult } from "lit";
import { SEVERITIES } from "../../../../core/audit/finding";
import type { Arrangement } from "../../model/arrange-findings";
import type { PaneModel } from "../../model/pane-model";
import { pick } from "../pick";
import { type CheckMemory, SHOWS, type Show } from "./check-memory";
import { questionsOf } from "./questions";
import { severityIcon } from "./severity-icon";
import { SEVERITY_WORDS } from "./severity-words";

const ALL = "";

/** What is shown, by severity, and the way from one finding to the next. */
export function listHead(model: PaneModel, memory: CheckMemory): TemplateResult | typeof nothing {
  const { view } = model.state;
  if (view === null) return nothing;
  const turn = (): void => {
    memory.areFiltersOpen = !memory.areFiltersOpen;
    memory.redraw();
  };
  return html`
    <div class="list-line">
      ${pick({
        label: "Show",
        value: memory.show,
        options: showOptions(model),
        choose: (show) => {
          memory.show = show as Show;
          memory.redraw();
        },
      })}
      ${
        memory.show === "findings"
          ? html`
            <span class="steps" role="group" aria-label="Findings one by one">
              <button class="step previous" tabindex="-1" aria-label="Previous finding" @click=${() => void model.step(-1)}>&#8593;</button>
              <button class="step next" tabindex="-1" aria-label="Next finding" @click=${() => void model.step(1)}>&#8595;</button>
            </span>
            <button class="filter" aria-expanded=${memory.areFiltersOpen ? "true" : "false"} @click=${turn}
              >Filter${isFiltered(model.state.arrangement) ? ", on" : ""}</button
            >
          `
          : nothing
      }
    </div>
    ${memory.show === "findings" ? counts(model) : nothing}
  `;
}

function showOptions(model: PaneModel) {
  const { view } = model.state;
  const questions = view === null ? 0 : questionsOf(view).length;
  const safe = view?.findings.filter(({ fix }) => fix?.safety === "safe").length ?? 0;
  const { rulesOff, waivers } = view?.decisions ?? { rulesOff: [], waivers: [] };
  const count: Partial<Record<Show, number>> = {
    findings: view?.findings.length ?? 0,
    alike: safe,
    questions,
    decisions: rulesOff.length + waivers.length,
  };
  return (Object.keys(SHOWS) as Show[]).map((show) => {
    const number = count[show];
    return { value: show, text: number === undefined ? SHOWS[show] : `${SHOWS[show]}, ${number}` };
  });
}

/** How many findings of each severity; each count shows or hides its own. */
function counts(model: PaneModel): TemplateResult | typeof nothing {
  const { view, shown } = model.state;
  if (view === null) return nothing;
  return html`
    <div class="counts" role="toolbar" aria-label="Findings shown" @keydown=${turnFocus}>
      ${SEVERITIES.map((severity, index) => {
        const count = view.findings.filter((finding) => finding.severity === severity).length;
        const { word, meaning } = SEVERITY_WORDS[severity];
        return html`<button
          class="count"
          tabindex=${index === 0 ? "0" : "-1"}
          data-severity=${severity}
          aria-pressed=${shown.has(severity) ? "true" : "false"}
          aria-label="${count} ${word}"
          title="${word}: ${meaning}"
          @click=${() => model.toggleSeverity(severity)}
        >
          ${severityIcon(severity)}<span class="number">${count}</span> <span class="word">${word}</span>
        </button>`;
      })}
    </div>
  `;
}

/** One stop of Tab for all counts: arrows go from one to the next. */
function turnFocus({ key, target, currentTarget }: KeyboardEvent): void {
  const by = key === "ArrowRight" ? 1 : key === "ArrowLeft" ? -1 : 0;
  const all = [...(currentTarget as Element).querySelectorAll<HTMLElement>(".count")];
  all[all.indexOf(target as HTMLElement) + by]?.focus();
}

const isFiltered = ({ rule, member, pour, text }: Arrangement): boolean =>
  rule !== null || member !== null || pour !== null || text !== "";

/** Rule, member, pour and words, in one line that opens. */
export function filters(model: PaneModel, memory: CheckMemory): TemplateResult | typeof nothing {
  const { view, arrangement } = model.state;
  if (view === null || memory.show !== "findings" || !memory.areFiltersOpen) return nothing;
  const set = (change: Partial<Arrangement>): void => model.arrange(change);
  const chosen = (value: string): string | null => (value === ALL ? null : value);
  const rules = new Map(view.findings.map(({ code, rule }) => [code, rule]));
  return html`
    <div class="filters" role="group" aria-label="Findings listed">
      ${pick({
        label: "Rule",
        value: arrangement.rule ?? ALL,
        options: [{ value: ALL, text: "Rule" }, ...named([...rules])],
        choose: (value) => set({ rule: chosen(value) }),
      })}
      ${pick({
        label: "Member",
        value: arrangement.member ?? ALL,
        options: [{ value: ALL, text: "Member" }, ...alike(view.findings.map(({ member }) => member))],
        choose: (value) => set({ member: chosen(value) }),
      })}
      ${pick({
        label: "Pour",
        value: arrangement.pour ?? ALL,
        options: [{ value: ALL, text: "Pour" }, ...alike(view.findings.map(({ pour }) => pour))],
        choose: (value) => set({ pour: chosen(value) }),
      })}
      ${pick({
        label: "Order",
        value: arrangement.group,
        options: [
          { value: "severity", text: "worst first" },
          { value: "row", text: "row by row" },
          { value: "member", text: "by member" },
        ],
        choose: (group) => set({ group: group as Arrangement["group"] }),
      })}
      <input
        class="words"
        type="search"
        aria-label="With the words"
        placeholder="words"
        .value=${arrangement.text}
        @input=${({ target }: Event) => set({ text: (target as HTMLInputElement).value })}
      />
      <span class="visually-hidden" role="status">${model.listed().length} of ${view.findings.length} listed</span>
    </div>
  `;
}

function named(rules: readonly (readonly [string, string])[]) {
  return [...rules].sort(([, a], [, b]) => a.localeCompare(b)).map(([value, text]) => ({ value, text }));
}

function alike(names: readonly (string | null)[]) {
  const held = new Set(names.filter((name) => name !== null));
  return [...held].map((name) => ({ value: name, text: name }));
}
