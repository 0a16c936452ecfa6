import { html, LitElement, type TemplateResult } from "lit";
import type { PaneModel } from "../model/pane-model";
import { controls } from "./check/controls";
import { counts } from "./check/counts";
import { type FindingsMemory, findings } from "./check/findings";
import { more } from "./check/more";
import { lineToPassOn } from "./check/pass-on";
import { progress } from "./check/progress";
import { selectedBar } from "./check/selected-bar";
import { paneStyles } from "./pane-styles";
import { seriesColours } from "./series-colours";

/** `<barwright-pane>`: the task pane, wherever it stands. Give it a `model`. */
export class PaneElement extends LitElement {
  static override styles = [paneStyles, seriesColours];
  static override properties = { model: { attribute: false } };

  declare model: PaneModel | undefined;
  #stop: (() => void) | undefined;
  readonly #memory: FindingsMemory = {
    draft: { column: "", kind: "", unit: "" },
    openSources: new Set<string>(),
    limits: new Map<string, number>(),
    redraw: () => this.requestUpdate(),
  };

  override willUpdate(changed: Map<string, unknown>): void {
    if (!changed.has("model")) return;
    this.#stop?.();
    this.#stop = this.model?.subscribe(() => this.requestUpdate());
  }

  /** What has the focus may be mended away by an edit or a fix: the focus goes to what took its place. */
  override update(changed: Map<string, unknown>): void {
    const focused = this.shadowRoot?.activeElement?.closest(".finding") ?? null;
    const place = focused === null ? -1 : this.#items().indexOf(focused);
    super.update(changed);
    if (place < 0 || this.shadowRoot?.activeElement) return;
    const items = this.#items();
    const next = items[Math.min(place, items.length - 1)];
    next?.querySelector<HTMLElement>("fluent-button")?.focus();
  }

  #items(): Element[] {
    return [...(this.shadowRoot?.querySelectorAll(".finding") ?? [])];
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#stop?.();
    this.#stop = undefined;
  }

  override render(): TemplateResult {
    const { model } = this;
    if (model === undefined) return html``;
    const last = model.state.fixes.at(-1);
    return html`
      <div class="top">
        <h1>Barwright</h1>
        ${controls(model)} ${progress(model)}
        ${
          last === undefined
            ? ""
            : html`<fluent-button class="undo" size="small" @click=${() => void model.undoFix()}
              >Take back: ${last.cells}</fluent-button
            >`
        }
        ${counts(model)}
      </div>
      <div class="middle">
        ${lineToPassOn(model)}
        <section
          class="findings"
          aria-labelledby="findings-heading"
          aria-busy=${model.state.isStale && !model.state.needsCheck ? "true" : "false"}
        >
          <h2 id="findings-heading" class=${model.state.view === null ? "visually-hidden" : ""}>Findings</h2>
          ${model.state.view === null ? firstWords() : findings(model, this.#memory)}
        </section>
        ${more(model, this.#memory)}
        <slot name="yard"></slot>
      </div>
      ${selectedBar(model.state)}
    `;
  }
}

function firstWords(): TemplateResult {
  return html`<p class="empty">
    Choose the sheet that holds the schedule and the standard it was written to, then check. Nothing in the
    workbook changes but the colour of rows, and that can be taken away again.
  </p>`;
}

customElements.define("barwright-pane", PaneElement);
