import { css, unsafeCSS } from "lit";

const SERIES = Array.from({ length: 16 }, (_, series) => series);
const fills = unsafeCSS(SERIES.map((at) => `.chart .series-${at} { fill: var(--series-${at}); }`).join("\n"));

/** Looks of the yard's side over the theme's tokens; colours of series come from the pane. */
export const poursStyles = css`
  :host {
    display: flex;
    flex-direction: column;
    height: 100%;
    min-height: 0;
    font: var(--fontSizeBase300) / 1.4 var(--fontFamilyBase);
    color: var(--colorNeutralForeground1);
  }
  .pours {
    display: flex;
    flex-direction: column;
    flex: 1;
    min-height: 0;
  }
  .head {
    padding: 8px 12px;
    border-bottom: 1px solid var(--colorNeutralStroke2);
  }
  .total strong {
    font-size: var(--fontSizeBase500);
  }
  .body {
    flex: 1;
    min-height: 0;
    overflow-y: auto;
    padding: 4px 12px 12px;
  }
  .body:focus-visible {
    outline: 2px solid var(--colorStrokeFocus2);
    outline-offset: -2px;
  }
  tbody th {
    display: flex;
    justify-content: space-between;
    align-items: center;
    gap: 8px;
    padding-right: 8px;
  }
  tbody td {
    vertical-align: middle;
  }
  tbody th label {
    min-width: 0;
    min-width: 74px;
    max-width: 170px;
    white-space: normal;
    overflow-wrap: anywhere;
  }
  .only-pour {
    flex: none;
    min-height: 24px;
    padding: 0 6px;
  }
  input[type="checkbox"] {
    width: 18px;
    height: 18px;
    vertical-align: -4px;
  }
  summary {
    min-height: 28px;
    cursor: pointer;
  }
  h2,
  p,
  ul {
    margin: 0;
    padding: 0;
  }
  h2 {
    padding-top: 8px;
    font-size: var(--fontSizeBase300);
    font-weight: var(--fontWeightSemibold);
    overflow-wrap: anywhere;
  }
  ul {
    list-style: none;
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    gap: 6px;
    padding: 6px 0;
  }
  .doing:not(:empty),
  .hint,
  .against {
    padding: 4px 0;
    color: var(--colorNeutralForeground2);
  }
  .question,
  .ready {
    margin: 6px 0;
    padding: 8px;
    border-left: 3px solid var(--doubtful);
    background: var(--colorNeutralBackground3);
  }
  .ready {
    border-left-color: var(--colorBrandStroke1);
  }
  .ready-title {
    font-weight: var(--fontWeightSemibold);
  }
  .notes {
    list-style: disc;
    padding: 2px 0 2px 18px;
    font-size: var(--fontSizeBase200);
    color: var(--colorNeutralForeground2);
  }
  .chart svg {
    display: block;
    width: 100%;
    max-width: 520px;
    height: auto;
    font-size: 12px;
    font-family: inherit;
  }
  .chart text {
    fill: currentColor;
  }
  .chart .in-bar {
    fill: var(--on-series);
  }
  .chart .in-bar.other {
    fill: var(--on-other);
  }
  .chart rect.other {
    stroke: var(--colorNeutralForeground1);
    stroke-width: 0.5;
  }
  ${fills}
  .wide {
    overflow-x: auto;
  }
  .wide:focus-visible {
    outline: 2px solid var(--colorStrokeFocus2);
  }
  table {
    width: 100%;
    border-collapse: collapse;
    font-size: var(--fontSizeBase200);
    font-variant-numeric: tabular-nums;
  }
  caption {
    padding: 4px 0;
    text-align: left;
    white-space: normal;
    color: var(--colorNeutralForeground2);
  }
  th,
  td {
    padding: 3px 6px 3px 0;
    text-align: left;
    vertical-align: top;
    border-bottom: 1px solid var(--colorNeutralStroke3);
    white-space: nowrap;
  }
  tfoot th,
  tfoot td {
    font-weight: var(--fontWeightSemibold);
  }
  .number {
    text-align: right;
  }
  .left-out {
    padding-top: 4px;
    color: var(--unbendable);
    font-weight: var(--fontWeightSemibold);
  }
  .left-out .icon {
    color: inherit;
  }
  .scroll {
    max-height: 180px;
    overflow-y: auto;
  }
  .scroll:focus-visible {
    outline: 2px solid var(--colorStrokeFocus2);
  }
  .refused {
    list-style: disc;
    padding: 2px 0 2px 18px;
    font-size: var(--fontSizeBase200);
    overflow-wrap: anywhere;
  }
  .remnants {
    margin-top: 4px;
    border-top: 1px solid var(--colorNeutralStroke3);
  }
  .twice {
    margin: 4px 0;
    padding-left: 6px;
    border-left: 3px solid var(--doubtful);
  }
  .released {
    margin: 4px 0;
    padding-left: 6px;
    border-left: 3px solid var(--unsafe);
  }
  .alarm {
    color: var(--unsafe);
    font-weight: var(--fontWeightSemibold);
  }
  .change {
    display: flex;
    gap: 6px;
    align-items: flex-start;
    padding: 3px 0;
    border-bottom: 1px solid var(--colorNeutralStroke3);
  }
  .change-place {
    flex: none;
    min-width: 46px;
  }
  .change-words {
    min-width: 0;
    overflow-wrap: anywhere;
  }
  .cell-change {
    display: block;
  }
`;
