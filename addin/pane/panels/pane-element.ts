import { html, nothing, type TemplateResult } from "lit";
import type { PaneModel } from "../model/pane-model";
import { PLACES, type Place } from "../model/place";
import { type CheckMemory, newCheckMemory, turnTo } from "./check/check-memory";
import { checkPlace } from "./check/check-place";
import { showCurrent, showOpened } from "./check/finding-list";
import { progress } from "./check/progress";
import { ModelElement } from "./model-element";
import { paneStyles } from "./pane-styles";
import { places } from "./places";
import { seriesColours } from "./series-colours";

/** px of a pane in which list and bar do not both fit */
const LOW = 480;

/** `<barwright-pane>`: the task pane, wherever it stands. Give it a `model`. */
export class PaneElement extends ModelElement<PaneModel> {
  static override styles = [...paneStyles, seriesColours];

  #current: string | null = null;
  /** what stood open under the current finding when it was drawn last */
  #opened = "";
  readonly #memory: CheckMemory = newCheckMemory(() => this.requestUpdate());

  /** In a low pane, as one that was just enlarged, the list comes first: the bar opens when it is asked for. */
  override firstUpdated(): void {
    let wasLow: boolean | null = null;
    const turn = (): void => {
      const isLow = this.clientHeight < LOW;
      if (isLow === wasLow) return;
      wasLow = isLow;
      this.#memory.isBarFolded = isLow;
      this.requestUpdate();
    };
    turn();
    new ResizeObserver(turn).observe(this);
  }

  override updated(): void {
    const { model } = this;
    if (model === undefined) return;
    const { place, current, looked, follows } = model.state;
    this.setAttribute("place", place);
    const opened = `${looked?.join() ?? ""} ${follows !== null} ${this.#memory.opened} ${this.#memory.deciding}`;
    const isOther = opened !== this.#opened;
    this.#opened = opened;
    if (this.shadowRoot !== null && isOther) showOpened(this.shadowRoot);
    if (current === this.#current) return;
    this.#current = current;
    if (this.shadowRoot !== null) void showCurrent(this.shadowRoot, model, this.#memory);
  }

  override render(): TemplateResult {
    const { model } = this;
    if (model === undefined) return html``;
    turnTo(this.#memory, model.state.book);
    return html`
      ${places(model)}
      ${PLACES.map(
        (place) => html`
          <div
            id="place-${place}"
            class="place-panel"
            role="tabpanel"
            aria-labelledby="tab-${place}"
            ?hidden=${model.state.place !== place}
          >
            ${place === "check" ? checkPlace(model, this.#memory) : html`${said(model, place)}<slot name=${place}></slot>`}
          </div>
        `,
      )}
    `;
  }
}

/** What is going on stands in the place that is in sight, with the way back. */
function said(model: PaneModel, place: Place): TemplateResult | typeof nothing {
  const { work, notice, fixes, needsCheck } = model.state;
  const isQuiet = work === null && notice === null && fixes.length === 0 && !needsCheck;
  return model.state.place === place
    ? html`<div class="top ${isQuiet ? "quiet" : ""}">${progress(model)}</div>`
    : nothing;
}

customElements.define("barwright-pane", PaneElement);
