import { flow } from "@lit-labs/virtualizer/layouts/flow.js";
import { virtualize, virtualizerRef } from "@lit-labs/virtualizer/virtualize.js";
import { html, type TemplateResult } from "lit";
import type { FindingView } from "../../engine/audit-view";
import { type ListLine, listLines } from "../../model/arrange-findings";
import type { PaneModel } from "../../model/pane-model";
import type { CheckMemory } from "./check-memory";
import { findingItem } from "./finding-item";
import { severityIcon } from "./severity-icon";
import { SEVERITY_WORDS } from "./severity-words";

/** Findings in the order asked for; only those in sight are drawn, however many there are. */
export function findingList(model: PaneModel, memory: CheckMemory): TemplateResult {
  const { view, arrangement } = model.state;
  if (view?.noHeader != null) return html`<p class="empty">${view.noHeader}</p>`;
  if (view !== null && view.findings.length === 0) {
    return html`<p class="empty">Nothing was found in ${view.rows.bars} bars. That is no proof that the schedule is right.</p>`;
  }
  const listed = model.listed();
  if (listed.length === 0) return html`<p class="empty">No finding is listed: the filters leave none.</p>`;
  const lines = [...listLines(listed, arrangement, memory.unfolded)];
  memory.lines = lines;
  return html`
    <div
      class="list"
      role="list"
      aria-label="${listed.length} of ${view?.findings.length ?? 0} findings"
      @keydown=${(event: KeyboardEvent) => onKey(event, model, memory)}
    >
      ${virtualize({
        items: lines,
        keyFunction: (line: ListLine | undefined, at) => line?.key ?? `none ${at}`,
        renderItem: (line: ListLine | undefined) => lineItem(model, memory, line, lines),
        scroller: true,
        // else its code would be fetched once there is a list
        layout: flow(),
      })}
    </div>
  `;
}

function lineItem(
  model: PaneModel,
  memory: CheckMemory,
  line: ListLine | undefined,
  lines: readonly ListLine[],
): TemplateResult {
  // a list that has just become shorter is asked once more for what stood at its end
  if (line === undefined) return html``;
  if (line.kind === "member")
    return html`<div role="listitem" class="member">${line.name}, ${line.count}</div>`;
  if (line.kind === "alike") return alikeItem(memory, line);
  const { current } = model.state;
  const first = lines.find(({ kind }) => kind === "finding")?.key;
  const isStop = current === null ? line.key === first : line.key === current;
  return findingItem(model, memory, line.finding, isStop);
}

/** One rule in many rows. */
function alikeItem(
  memory: CheckMemory,
  { key, findings, isUnfolded }: Extract<ListLine, { kind: "alike" }>,
): TemplateResult {
  const [first] = findings as readonly [FindingView];
  const turn = (): void => {
    if (!memory.unfolded.delete(key)) memory.unfolded.add(key);
    memory.redraw();
  };
  const rows = new Set(findings.map(({ row }) => row)).size;
  return html`
    <div role="listitem" class="alike" data-severity=${first.severity} data-code=${first.code}>
      <button aria-expanded=${isUnfolded ? "true" : "false"} @click=${turn}>
        ${severityIcon(first.severity)}
        <span class="visually-hidden">${SEVERITY_WORDS[first.severity].word}: </span>
        <span class="alike-words">${sentence(first.rule)}${first.outcome === "unsure" ? ", not judged" : ""}</span>
        <span class="alike-rows">${rows} ${rows === 1 ? "row" : "rows"} <span aria-hidden="true">${isUnfolded ? "\u25b4" : "\u25be"}</span></span>
      </button>
    </div>
  `;
}

/** Arrows go from finding to finding. */
function onKey(event: KeyboardEvent, model: PaneModel, memory: CheckMemory): void {
  const isHead = (event.target as Element).classList.contains("head");
  if (!isHead || (event.key !== "ArrowDown" && event.key !== "ArrowUp")) return;
  event.preventDefault();
  memory.takesFocus = true;
  void model.step(event.key === "ArrowDown" ? 1 : -1);
}

interface Scroller extends Element {
  readonly [virtualizerRef]?: {
    readonly layoutComplete: Promise<void>;
    element(index: number): { scrollIntoView(options: ScrollIntoViewOptions): void } | undefined;
  };
}

/** Brings the current finding into sight, unfolding what it stands in, and gives it the focus where it is due. */
export async function showCurrent(root: ShadowRoot, model: PaneModel, memory: CheckMemory): Promise<void> {
  const { current } = model.state;
  const list = root.querySelector<Scroller>(".list");
  const index = memory.lines.findIndex(({ key }) => key === current);
  if (list === null || index < 0) return;
  const shown = root.querySelector(".finding.current");
  if (shown === null || !isWithin(shown, list)) {
    list[virtualizerRef]?.element(index)?.scrollIntoView({ block: "nearest" });
  }
  if (!memory.takesFocus) return;
  memory.takesFocus = false;
  await list[virtualizerRef]?.layoutComplete.catch(() => undefined);
  root.querySelector<HTMLElement>(".finding.current .head")?.focus();
}

/** Brings what has just been opened under the current finding into sight, from its first line on. */
export function showOpened(root: ShadowRoot): void {
  const opened = root.querySelector(".finding.current :is(.looked, .decide)");
  const list = root.querySelector(".list");
  if (opened === null || list === null || isWithin(opened, list)) return;
  const isTall = opened.clientHeight > list.clientHeight;
  opened.scrollIntoView({ block: isTall ? "start" : "nearest" });
}

function isWithin(item: Element, list: Element): boolean {
  const [inner, outer] = [item.getBoundingClientRect(), list.getBoundingClientRect()];
  return inner.top >= outer.top && inner.bottom <= outer.bottom;
}

const sentence = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
