import type { Tablist } from "@fluentui/web-components";
import { html, type TemplateResult } from "lit";
import type { PaneModel } from "../model/pane-model";
import { PLACES, type Place } from "../model/place";

const NAMES: Readonly<Record<Place, string>> = { check: "Check", pours: "Pours", bench: "Bench" };

/** The tabs at the top of the pane. */
export function places(model: PaneModel): TemplateResult {
  const turn = ({ currentTarget }: Event): void => {
    const place = PLACES.find((each) => `tab-${each}` === (currentTarget as Tablist).activeid);
    if (place !== undefined) model.choosePlace(place);
  };
  return html`
    <fluent-tablist
      class="places"
      size="small"
      aria-label="What the pane shows"
      activeid="tab-${model.state.place}"
      @change=${turn}
    >
      ${PLACES.map(
        (place) =>
          html`<fluent-tab id="tab-${place}" aria-controls="place-${place}">${NAMES[place]}</fluent-tab>`,
      )}
    </fluent-tablist>
  `;
}
