import { css } from "lit";

/** Looks of the pane over the theme's tokens; severities have a colour, a shape and a word each. */
export const paneStyles = css`
  :host {
    display: flex;
    flex-direction: column;
    height: 100%;
    min-width: 0;
    box-sizing: border-box;
    overflow: hidden;
    background: var(--colorNeutralBackground1);
    color: var(--colorNeutralForeground1);
    font: var(--fontSizeBase300) / 1.4 var(--fontFamilyBase);
    container-type: inline-size;
    --unsafe: #b3261e;
    --unbendable: #a64500;
    --off-standard: #7a6400;
    --doubtful: #1f5f99;
    --note: #5b6064;
    --mark: #fff;
  }
  :host([dark]) {
    --unsafe: #ff9389;
    --unbendable: #ffb173;
    --off-standard: #efd35c;
    --doubtful: #8cc4f5;
    --note: #bfc4c8;
    --mark: #1c1c1c;
  }
  h1,
  h2,
  h3,
  p,
  ul,
  dl,
  dd {
    margin: 0;
    padding: 0;
  }
  h1 {
    font-size: var(--fontSizeBase400);
    font-weight: var(--fontWeightSemibold);
  }
  h2 {
    font-size: var(--fontSizeBase300);
    font-weight: var(--fontWeightSemibold);
  }
  h3 {
    display: flex;
    align-items: center;
    gap: 6px;
    padding: 6px 0;
    font-size: var(--fontSizeBase300);
    font-weight: var(--fontWeightSemibold);
    position: sticky;
    top: 0;
    z-index: 1;
    background: var(--colorNeutralBackground1);
  }
  ul {
    list-style: none;
  }
  .visually-hidden {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
  }
  .top {
    display: flex;
    flex-direction: column;
    gap: 8px;
    padding: 12px 14px 10px;
    border-bottom: 1px solid var(--colorNeutralStroke2);
  }
  .controls {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
    gap: 8px 10px;
  }
  .controls fluent-dropdown {
    min-width: 0;
    width: 100%;
  }
  .buttons {
    grid-column: 1 / -1;
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
  }
  .hidden-sheets {
    grid-column: 1 / -1;
    overflow-wrap: anywhere;
  }
  .buttons .check {
    flex: 1 1 auto;
  }
  .status {
    display: flex;
    flex-direction: column;
    gap: 4px;
  }
  .said {
    min-height: 1.4em;
    color: var(--colorNeutralForeground2);
  }
  .said.problem {
    color: var(--unsafe);
    font-weight: var(--fontWeightSemibold);
  }
  .stale {
    padding: 4px 8px;
    border-left: 3px solid var(--doubtful);
    background: var(--colorNeutralBackground3);
  }
  .stop,
  .undo {
    align-self: start;
  }
  .counts {
    display: flex;
    flex-wrap: wrap;
    gap: 6px;
  }
  .count {
    min-width: 0;
    gap: 4px;
  }
  .count::part(content) {
    display: flex;
    gap: 4px;
  }
  .count .number {
    font-weight: var(--fontWeightSemibold);
  }
  .icon {
    flex: none;
    vertical-align: -3px;
  }
  .icon-shape {
    fill: currentColor;
  }
  .icon-mark {
    fill: none;
    stroke: var(--mark);
    stroke-width: 1.7;
    stroke-linecap: round;
  }
  .icon.unsafe {
    color: var(--unsafe);
  }
  .icon.unbendable {
    color: var(--unbendable);
  }
  .icon.off-standard {
    color: var(--off-standard);
  }
  .icon.doubtful {
    color: var(--doubtful);
  }
  .icon.note {
    color: var(--note);
  }
  .middle {
    flex: 1 1 auto;
    min-height: 120px;
    overflow-y: auto;
    padding: 4px 14px 14px;
  }
  .findings h2 {
    padding-top: 6px;
  }
  .empty {
    padding: 8px 0;
    color: var(--colorNeutralForeground2);
  }
  .finding {
    padding: 4px 0 4px 4px;
    border-left: 3px solid transparent;
    border-bottom: 1px solid var(--colorNeutralStroke3);
  }
  .finding[data-severity="unsafe"] {
    border-left-color: var(--unsafe);
  }
  .finding[data-severity="unbendable"] {
    border-left-color: var(--unbendable);
  }
  .finding[data-severity="off-standard"] {
    border-left-color: var(--off-standard);
  }
  .finding[data-severity="doubtful"] {
    border-left-color: var(--doubtful);
  }
  .finding[data-severity="note"] {
    border-left-color: var(--note);
  }
  .finding.current {
    background: var(--colorNeutralBackground3);
  }
  .line {
    display: flex;
    gap: 6px;
    align-items: flex-start;
  }
  .place {
    flex: none;
    min-width: 46px;
    padding: 0 6px;
    font-weight: var(--fontWeightSemibold);
    font-variant-numeric: tabular-nums;
  }
  span.place {
    font-size: var(--fontSizeBase200);
    line-height: 24px;
  }
  .message {
    flex: 1;
    min-width: 0;
    padding-top: 2px;
    overflow-wrap: anywhere;
    cursor: pointer;
  }
  .unsure {
    font-style: italic;
  }
  .under {
    display: flex;
    flex-wrap: wrap;
    gap: 2px 6px;
    align-items: center;
    padding-left: 52px;
    color: var(--colorNeutralForeground2);
  }
  .remedy {
    flex: 1 1 auto;
  }
  .under .source {
    min-width: 0;
    padding: 0 4px;
    margin-left: auto;
  }
  .cite {
    padding: 2px 0 4px 52px;
    font-size: var(--fontSizeBase200);
    color: var(--colorNeutralForeground2);
    overflow-wrap: anywhere;
  }
  .list-line {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    justify-content: space-between;
    gap: 4px 8px;
  }
  .listed {
    color: var(--colorNeutralForeground2);
  }
  .choices {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(130px, 1fr));
    gap: 8px 10px;
    align-items: start;
  }
  .choices fluent-dropdown {
    min-width: 0;
    width: 100%;
  }
  .field {
    display: flex;
    flex-direction: column;
    gap: 4px;
  }
  input {
    box-sizing: border-box;
    width: 100%;
    min-height: 32px;
    padding: 0 10px;
    border: 1px solid var(--colorNeutralStrokeAccessible);
    border-radius: var(--borderRadiusMedium);
    background: var(--colorNeutralBackground1);
    color: inherit;
    font: inherit;
  }
  input:focus-visible,
  .waive button:focus-visible {
    outline: 2px solid var(--colorStrokeFocus2);
  }
  .decide {
    display: flex;
    flex-direction: column;
    align-items: start;
    gap: 6px;
    padding: 2px 4px 6px 52px;
    font-size: var(--fontSizeBase200);
  }
  .decide .cite {
    padding: 0;
  }
  .waive {
    display: flex;
    flex-wrap: wrap;
    align-items: end;
    gap: 6px;
    width: 100%;
  }
  .waive .field {
    flex: 1 1 120px;
    min-width: 0;
  }
  .waive button {
    min-height: 32px;
    padding: 0 10px;
    border: 1px solid var(--colorNeutralStrokeAccessible);
    border-radius: var(--borderRadiusMedium);
    background: var(--colorNeutralBackground1);
    color: inherit;
    font: inherit;
    cursor: pointer;
  }
  .decided li {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    gap: 4px 8px;
    padding: 3px 0;
    overflow-wrap: anywhere;
  }
  .decided span {
    flex: 1 1 140px;
  }
  .field small {
    min-height: 1.4em;
    color: var(--colorNeutralForeground2);
    overflow-wrap: anywhere;
  }
  .decisions h3 {
    position: static;
  }
  .looked {
    margin: 4px 0 4px 52px;
    padding: 6px 8px;
    border-left: 3px solid var(--unbendable);
    background: var(--colorNeutralBackground3);
  }
  .looked p {
    padding: 4px 0;
  }
  .scroll {
    max-height: 220px;
    overflow-y: auto;
    margin-bottom: 6px;
  }
  .bar {
    flex: none;
    max-height: 45%;
    overflow-y: auto;
    padding: 8px 14px 10px;
    border-top: 1px solid var(--colorNeutralStroke2);
    background: var(--colorNeutralBackground2);
  }
  .shape {
    color: var(--colorNeutralForeground2);
  }
  .drawing {
    display: flex;
    justify-content: center;
    padding: 6px 0;
  }
  .drawing svg {
    width: 100%;
    max-width: 340px;
    height: auto;
    max-height: 140px;
    font-family: inherit;
  }
  .bar-drawing-bar {
    color: var(--colorBrandForeground1);
  }
  .bar-drawing-text,
  .bar-drawing-note {
    fill: currentColor;
  }
  .trouble {
    padding: 4px 8px;
    border-left: 3px solid var(--unbendable);
  }
  dl {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(150px, 1fr));
    gap: 2px 16px;
    padding-top: 4px;
    font-size: var(--fontSizeBase200);
  }
  dl div {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    gap: 0 8px;
  }
  dt {
    color: var(--colorNeutralForeground2);
  }
  dd {
    font-weight: var(--fontWeightSemibold);
    font-variant-numeric: tabular-nums;
  }
  fluent-accordion {
    display: block;
    margin-top: 8px;
  }
  fluent-accordion-item ul:not(.decided) {
    list-style: disc;
    padding-left: 18px;
  }
  table {
    width: 100%;
    border-collapse: collapse;
    font-size: var(--fontSizeBase200);
  }
  th,
  td {
    padding: 3px 6px 3px 0;
    text-align: left;
    vertical-align: top;
    border-bottom: 1px solid var(--colorNeutralStroke3);
    overflow-wrap: anywhere;
  }
  .pass-on {
    display: flex;
    gap: 8px;
    align-items: flex-start;
    margin: 6px 0;
    padding: 8px;
    border-radius: var(--borderRadiusMedium);
    background: var(--colorNeutralBackground3);
  }
  .summary {
    flex: 1;
    font-size: var(--fontSizeBase200);
    user-select: all;
  }
  @container (max-width: 340px) {
    .controls {
      grid-template-columns: minmax(0, 1fr);
    }
  }
  @media (max-height: 620px) {
    :host {
      overflow-y: auto;
    }
    .middle,
    .bar {
      flex: none;
      max-height: none;
      overflow: visible;
    }
  }
  @media (forced-colors: active) {
    .icon-shape {
      fill: CanvasText;
    }
    .icon-mark {
      stroke: Canvas;
    }
  }
`;
