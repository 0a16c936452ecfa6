import { html, nothing, type TemplateResult } from "lit";
import type { PaneModel } from "../../model/pane-model";
import { svgElement } from "../svg-element";
import type { CheckMemory } from "./check-memory";

/** px */
const LEAST = 60;
const STEP = 24;

/** The bar of the selected row under the list: its drawing, and what it takes; to be folded and sized. */
export function barPart(model: PaneModel, memory: CheckMemory): TemplateResult | typeof nothing {
  const { bar, view } = model.state;
  if (view === null) return nothing;
  const fold = (): void => {
    memory.isBarFolded = !memory.isBarFolded;
    memory.redraw();
  };
  const isOpen = bar !== null && !memory.isBarFolded;
  const height = memory.barHeight === null ? "" : `height: ${memory.barHeight}px`;
  return html`
    ${isOpen ? divider(memory) : nothing}
    <section class="bar" aria-label="Selected bar">
      ${
        bar === null
          ? html`<p class="bar-title">Select a row of the schedule to see its bar.</p>`
          : html`<button class="bar-title" aria-expanded=${isOpen ? "true" : "false"} @click=${fold}>
            <span>${bar.place}: ${bar.title}</span><span aria-hidden="true">${isOpen ? "\u25be" : "\u25b4"}</span>
          </button>`
      }
      ${
        isOpen
          ? html`<div class="bar-body" tabindex="0" role="group" aria-label="Drawing and figures" .style=${height}>
            ${bar.svg === null ? nothing : html`<div class="drawing">${svgElement(bar.svg)}</div>`}
            <div class="figures">
              ${bar.shape === null ? nothing : html`<p class="shape">${bar.shape}</p>`}
              ${bar.trouble === null ? nothing : html`<p class="trouble">${bar.trouble}</p>`}
              <dl>
                ${bar.facts.map(({ name, value }) => html`<div><dt>${name}</dt><dd>${value}</dd></div>`)}
              </dl>
              ${bar.notes.length === 0 ? nothing : html`<p class="shape">${bar.notes.join("; ")}</p>`}
            </div>
          </div>`
          : nothing
      }
    </section>
  `;
}

/** Dragged, or moved by arrow keys, it sizes the bar under it. */
function divider(memory: CheckMemory): TemplateResult {
  const now = (handle: Element): number =>
    handle.parentElement?.querySelector(".bar-body")?.getBoundingClientRect().height ?? LEAST;
  const size = (handle: Element, height: number): void => {
    const most = (handle.parentElement?.getBoundingClientRect().height ?? 0) / 2;
    memory.barHeight = Math.round(Math.max(LEAST, Math.min(most, height)));
    memory.redraw();
  };
  const onKey = (event: KeyboardEvent): void => {
    if (event.key !== "ArrowUp" && event.key !== "ArrowDown") return;
    event.preventDefault();
    const handle = event.currentTarget as Element;
    size(handle, now(handle) + (event.key === "ArrowUp" ? STEP : -STEP));
  };
  const onDown = (event: PointerEvent): void => {
    const handle = event.currentTarget as HTMLElement;
    const from = { y: event.clientY, height: now(handle) };
    handle.setPointerCapture(event.pointerId);
    const move = ({ clientY }: PointerEvent): void => size(handle, from.height + from.y - clientY);
    const end = (): void => handle.removeEventListener("pointermove", move);
    handle.addEventListener("pointermove", move);
    handle.addEventListener("lostpointercapture", end, { once: true });
  };
  return html`<div
    class="bar-divider"
    role="separator"
    aria-orientation="horizontal"
    aria-label="Room for the selected bar"
    aria-valuenow=${memory.barHeight ?? 130}
    tabindex="0"
    @keydown=${onKey}
    @pointerdown=${onDown}
  ></div>`;
}
