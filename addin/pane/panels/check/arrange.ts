import { html, type TemplateResult } from "lit";
import type { FindingView } from "../../engine/audit-view";
import { type Arrangement, AS_CHECKED } from "../../model/arrange-findings";
import { findingsTable } from "../../model/findings-table";
import type { PaneModel } from "../../model/pane-model";
import { choice } from "../choice";
import { copyText } from "../copy-text";

const ALL = "";

/** How the list is grouped, sorted and filtered, and a button that copies what it shows. */
export function arrange(
  model: PaneModel,
  all: readonly FindingView[],
  listed: readonly FindingView[],
): TemplateResult {
  const { arrangement } = model.state;
  const set = (change: Partial<Arrangement>): void => model.arrange(change);
  const isAsChecked = JSON.stringify(arrangement) === JSON.stringify(AS_CHECKED);
  return html`
    <div class="list-line">
      <p class="listed" role="status">
        ${listed.length === all.length ? `All ${all.length} listed` : `${listed.length} of ${all.length} listed`}
      </p>
      <fluent-button
        class="copy-list"
        size="small"
        aria-label="Copy the ${listed.length} findings listed, tab-separated"
        @click=${() => copyText(model, findingsTable(listed), `Findings on the clipboard: ${listed.length}`)}
        >Copy list</fluent-button
      >
    </div>
    <fluent-accordion class="arrange">
      <fluent-accordion-item heading-level="3">
        <span slot="heading">Group, sort and filter${isAsChecked ? "" : ", changed"}</span>
        <div class="choices">
          ${choice({
            label: "Group by",
            options: ["severity", "rule", "member"].map((value) => ({ value, text: value })),
            value: arrangement.group,
            choose: (group) => set({ group: group as Arrangement["group"] }),
          })}
          ${choice({
            label: "Sort by",
            options: ["row", "severity"].map((value) => ({ value, text: value })),
            value: arrangement.sort,
            choose: (sort) => set({ sort: sort as Arrangement["sort"] }),
          })}
          ${choice({
            label: "Rule",
            options: [{ value: ALL, text: "all" }, ...rulesOf(all, arrangement.rule)],
            value: arrangement.rule ?? ALL,
            choose: (rule) => set({ rule: rule === ALL ? null : rule }),
          })}
          ${choice({
            label: "Member",
            options: [{ value: ALL, text: "all" }, ...membersOf(all, arrangement.member)],
            value: arrangement.member ?? ALL,
            choose: (member) => set({ member: member === ALL ? null : member }),
          })}
          <label class="field"
            >With the words
            <input
              class="words"
              type="search"
              .value=${arrangement.text}
              @input=${({ target }: Event) => set({ text: (target as HTMLInputElement).value })}
          /></label>
        </div>
      </fluent-accordion-item>
    </fluent-accordion>
  `;
}

/** The chosen one stays on offer when its last finding is mended. */
function rulesOf(all: readonly FindingView[], chosen: string | null) {
  const rules = new Map(all.map(({ code, rule }) => [code, `${code} ${rule}`]));
  if (chosen !== null && !rules.has(chosen)) rules.set(chosen, chosen);
  return [...rules].sort().map(([value, text]) => ({ value, text }));
}

function membersOf(all: readonly FindingView[], chosen: string | null) {
  const members = new Set(all.flatMap(({ member }) => (member === null ? [] : [member])));
  if (chosen !== null) members.add(chosen);
  return [...members].map((member) => ({ value: member, text: member }));
}
