import { css, unsafeCSS } from "lit";
import { LIGHT_SERIES_COLOURS, ON_LIGHT_SERIES, SERIES_COLOURS } from "../../workbook/series-colours";

/** Colours of a chart's series, each with enough contrast to the words on it; those that stand out come first. */
export const seriesColours = css`
  :host {
    ${named([...SERIES_COLOURS, ...LIGHT_SERIES_COLOURS])}
    --on-series: #fff;
    --on-other: #${unsafeCSS(ON_LIGHT_SERIES)};
  }
  :host([dark]) {
    ${named([...LIGHT_SERIES_COLOURS, ...SERIES_COLOURS])}
    --on-series: #${unsafeCSS(ON_LIGHT_SERIES)};
    --on-other: #fff;
  }
`;

function named(colours: readonly string[]) {
  return unsafeCSS(colours.map((colour, series) => `--series-${series}: #${colour};`).join(" "));
}
