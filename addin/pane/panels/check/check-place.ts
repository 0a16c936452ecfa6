import { html, nothing, type TemplateResult } from "lit";
import type { PaneModel } from "../../model/pane-model";
import { barPart } from "./bar-part";
import { cautions } from "./cautions";
import type { CheckMemory } from "./check-memory";
import { columnsRead } from "./columns-read";
import { decisions } from "./decisions";
import { filters, listHead } from "./filters";
import { findingList } from "./finding-list";
import { passOn } from "./pass-on";
import { progress } from "./progress";
import { questions } from "./questions";
import { safeFixes } from "./safe-fixes";
import { setUp } from "./set-up";

/** px of a list that has room enough beside the open set-up */
const ROOM_OF_LIST = 200;

/** The check: which sheet, what was found in it, and the bar of the selected row. */
export function checkPlace(model: PaneModel, memory: CheckMemory): TemplateResult {
  const { view, isStale, needsCheck } = model.state;
  // whoever turns to a list that is pressed has chosen: it takes its room back
  const close = ({ currentTarget }: Event): void => {
    if (!memory.isSetUpOpen || (currentTarget as HTMLElement).clientHeight >= ROOM_OF_LIST) return;
    memory.isSetUpOpen = false;
    memory.redraw();
  };
  return html`
    <div class="top">${setUp(model, memory)} ${model.state.place === "check" ? progress(model) : nothing}</div>
    ${view === null ? nothing : html`<div class="list-head">${listHead(model, memory)} ${filters(model, memory)}</div>`}
    <section
      class="findings"
      aria-label="Findings"
      aria-busy=${isStale && !needsCheck ? "true" : "false"}
      @click=${close}
      @wheel=${close}
      @touchmove=${close}
    >
      ${view === null ? firstWords() : shown(model, memory)}
    </section>
    ${barPart(model, memory)}
  `;
}

function shown(model: PaneModel, memory: CheckMemory): TemplateResult | typeof nothing {
  const { view } = model.state;
  if (view === null) return nothing;
  switch (memory.show) {
    case "findings":
      return findingList(model, memory);
    case "alike":
      return page(safeFixes(model));
    case "questions":
      return page(questions(model, view));
    case "passOn":
      return page(passOn(model, view));
    case "decisions":
      return page(decisions(model, view, memory));
    case "reading":
      return page(columnsRead(model, view));
    case "cautions":
      return page(cautions());
  }
}

const page = (content: TemplateResult | typeof nothing) =>
  html`<div class="page" tabindex="0">${content}</div>`;

function firstWords(): TemplateResult {
  return html`<p class="empty">
    Choose the sheet that holds the schedule and the standard it was written to, then check. Nothing in the
    workbook changes but the colour of rows, and that can be taken away again.
  </p>`;
}
