import { css } from "lit";

/** Colours of a chart's series, each with enough contrast to the words that stand on it. */
export const seriesColours = css`
  :host {
    --series-0: #1f5f99;
    --series-1: #8a4b00;
    --series-2: #2b6e3f;
    --series-3: #7a3b8f;
    --series-4: #9c2f4a;
    --series-5: #3f5560;
    --series-6: #6b5b00;
    --series-7: #00696b;
    --on-series: #fff;
  }
  :host([dark]) {
    --series-0: #8cc4f5;
    --series-1: #ffb173;
    --series-2: #8fd6a4;
    --series-3: #d9a8ec;
    --series-4: #ffa3b5;
    --series-5: #b7c9d2;
    --series-6: #e6d35f;
    --series-7: #7fdadb;
    --on-series: #1c1c1c;
  }
`;
