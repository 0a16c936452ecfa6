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
    padding: 10px 0 4px;
    font-size: var(--fontSizeBase300);
    font-weight: var(--fontWeightSemibold);
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
  .places {
    flex: none;
    padding: 0 6px;
    border-bottom: 1px solid var(--colorNeutralStroke2);
  }
  .place-panel {
    display: flex;
    flex-direction: column;
    flex: 1;
    min-height: 0;
  }
  .place-panel[hidden] {
    display: none;
  }
  .place-panel > slot {
    display: contents;
  }
  ::slotted(*) {
    flex: 1;
    min-height: 0;
  }
  button,
  select,
  .page button {
    box-sizing: border-box;
    min-height: 28px;
    padding: 0 8px;
    border: 1px solid var(--colorNeutralStroke1);
    border-radius: var(--borderRadiusMedium);
    background: var(--colorNeutralBackground1);
    color: inherit;
    font: inherit;
    cursor: pointer;
  }
  button:hover {
    background: var(--colorNeutralBackground1Hover);
  }
  button:focus-visible,
  select:focus-visible,
  input:focus-visible,
  .page:focus-visible,
  .bar-body:focus-visible,
  .scroll:focus-visible,
  .bar-divider:focus-visible {
    outline: 2px solid var(--colorStrokeFocus2);
    outline-offset: -2px;
  }
  .top {
    display: flex;
    flex-direction: column;
    gap: 4px;
    padding: 6px 10px 4px;
  }
  .set-up {
    display: flex;
    gap: 6px;
  }
  .set-up-line {
    display: flex;
    flex: 1;
    gap: 8px;
    align-items: center;
    min-width: 0;
    text-align: left;
  }
  .set-up-line:disabled {
    cursor: default;
  }
  .sheet-name {
    min-width: 0;
    overflow: hidden;
    font-weight: var(--fontWeightSemibold);
    text-overflow: ellipsis;
    white-space: nowrap;
  }
  .standard-name {
    flex: 1;
    min-width: 0;
    overflow: hidden;
    color: var(--colorNeutralForeground2);
    text-overflow: ellipsis;
    white-space: nowrap;
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
  .controls > .buttons,
  .hidden-sheets {
    grid-column: 1 / -1;
    overflow-wrap: anywhere;
  }
  .buttons {
    display: flex;
    flex-wrap: wrap;
    gap: 6px;
  }
  .status {
    display: flex;
    flex-wrap: wrap;
    gap: 2px 8px;
    align-items: center;
    min-height: 20px;
  }
  .status fluent-progress-bar {
    flex-basis: 100%;
  }
  .said {
    flex: 1;
    min-width: 0;
    overflow-wrap: anywhere;
    font-size: var(--fontSizeBase200);
    color: var(--colorNeutralForeground2);
  }
  .said.problem {
    color: var(--unsafe);
    font-weight: var(--fontWeightSemibold);
  }
  .stale {
    padding: 2px 8px;
    border-left: 3px solid var(--doubtful);
    background: var(--colorNeutralBackground3);
  }
  .list-head {
    display: flex;
    flex-direction: column;
    gap: 4px;
    padding: 0 10px 4px;
    border-bottom: 1px solid var(--colorNeutralStroke2);
  }
  .list-line,
  .filters,
  .counts {
    display: flex;
    gap: 4px;
    align-items: center;
  }
  .list-line .pick {
    flex: 1;
    min-width: 0;
    font-weight: var(--fontWeightSemibold);
  }
  .filters .pick,
  .filters input {
    flex: 1 1 0;
    min-width: 0;
    padding: 0 2px;
    min-height: 28px;
    font-size: var(--fontSizeBase200);
  }
  .steps {
    display: flex;
    gap: 2px;
  }
  .count {
    display: flex;
    flex: 1 1 auto;
    gap: 4px;
    align-items: center;
    justify-content: center;
    min-width: 0;
    padding: 0 4px;
  }
  .count[aria-pressed="false"] {
    opacity: 1;
    border-style: dashed;
    color: var(--colorNeutralForeground3);
  }
  .count[aria-pressed="false"] .icon {
    color: inherit;
  }
  .count .number {
    font-weight: var(--fontWeightSemibold);
  }
  .count .word {
    display: none;
    overflow: hidden;
    text-overflow: ellipsis;
    white-space: nowrap;
  }
  @container (min-width: 480px) {
    .count .word {
      display: inline;
    }
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
  .findings {
    display: flex;
    flex-direction: column;
    flex: 1;
    min-height: 0;
  }
  .list,
  .page {
    flex: 1;
    min-height: 0;
    overflow-y: auto;
  }
  .list {
    width: 100%;
  }
  .page {
    padding: 6px 10px 12px;
  }
  .empty {
    padding: 8px 10px;
    color: var(--colorNeutralForeground2);
  }
  .finding,
  .alike,
  .member {
    box-sizing: border-box;
    width: 100%;
    border-left: 3px solid transparent;
    border-bottom: 1px solid var(--colorNeutralStroke3);
  }
  .member {
    padding: 4px 8px;
    font-weight: var(--fontWeightSemibold);
    overflow-wrap: anywhere;
    background: var(--colorNeutralBackground2);
  }
  .head,
  .alike > button {
    display: flex;
    gap: 6px;
    align-items: flex-start;
    width: 100%;
    min-height: 32px;
    padding: 5px 8px;
    border: 0;
    border-radius: 0;
    text-align: left;
  }
  .finding.current,
  .finding.current .head {
    background: var(--colorNeutralBackground3);
  }
  .alike-words {
    flex: 1;
    min-width: 0;
    font-weight: var(--fontWeightSemibold);
    overflow-wrap: anywhere;
  }
  .alike-rows {
    flex: none;
    color: var(--colorNeutralForeground2);
  }
  .alike[data-severity="unsafe"],
  .finding[data-severity="unsafe"] {
    border-left-color: var(--unsafe);
  }
  .alike[data-severity="unbendable"],
  .finding[data-severity="unbendable"] {
    border-left-color: var(--unbendable);
  }
  .alike[data-severity="off-standard"],
  .finding[data-severity="off-standard"] {
    border-left-color: var(--off-standard);
  }
  .alike[data-severity="doubtful"],
  .finding[data-severity="doubtful"] {
    border-left-color: var(--doubtful);
  }
  .alike[data-severity="note"],
  .finding[data-severity="note"] {
    border-left-color: var(--note);
  }
  .place {
    flex: none;
    min-width: 34px;
    font-weight: var(--fontWeightSemibold);
    font-variant-numeric: tabular-nums;
  }
  .message {
    flex: 1;
    min-width: 0;
    overflow-wrap: anywhere;
  }
  .unsure {
    font-style: italic;
  }
  .under {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 6px;
    align-items: center;
    padding: 0 8px 6px 30px;
    color: var(--colorNeutralForeground2);
  }
  .remedy {
    flex: 1 1 100%;
    overflow-wrap: anywhere;
  }
  .cite,
  .code,
  .hint {
    font-size: var(--fontSizeBase200);
    color: var(--colorNeutralForeground2);
    overflow-wrap: anywhere;
  }
  .decide,
  .looked {
    display: flex;
    flex-direction: column;
    gap: 6px;
    align-items: start;
    margin: 0 8px 8px 30px;
    padding: 6px 8px;
    border-left: 3px solid var(--colorNeutralStroke1);
    background: var(--colorNeutralBackground2);
  }
  .looked {
    align-items: stretch;
    border-left-color: var(--unbendable);
  }
  form {
    display: flex;
    flex-direction: column;
    gap: 6px;
    width: 100%;
  }
  form button {
    align-self: start;
  }
  .ahead {
    padding: 2px 8px;
    border-left: 3px solid var(--doubtful);
  }
  .limit {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 8px;
    justify-content: space-between;
    padding: 4px 0;
    border-bottom: 1px solid var(--colorNeutralStroke3);
  }
  .limit > p {
    flex: 1 1 160px;
    min-width: 0;
    overflow-wrap: anywhere;
  }
  .question {
    padding: 6px 8px;
    border-left: 3px solid var(--doubtful);
    background: var(--colorNeutralBackground3);
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
  .scroll {
    max-height: 220px;
    overflow-y: auto;
    margin-bottom: 6px;
  }
  .bar-divider {
    flex: none;
    height: 7px;
    border-top: 1px solid var(--colorNeutralStroke1);
    background: var(--colorNeutralBackground3);
    cursor: row-resize;
    touch-action: none;
  }
  .bar {
    flex: none;
    border-top: 1px solid var(--colorNeutralStroke2);
    background: var(--colorNeutralBackground2);
  }
  .bar-title {
    display: flex;
    gap: 8px;
    justify-content: space-between;
    box-sizing: border-box;
    width: 100%;
    padding: 4px 10px;
    border: 0;
    border-radius: 0;
    background: none;
    font-weight: var(--fontWeightSemibold);
    text-align: left;
  }
  p.bar-title {
    font-weight: inherit;
    color: var(--colorNeutralForeground2);
  }
  .bar-title span:first-child {
    min-width: 0;
    overflow: hidden;
    text-overflow: ellipsis;
    white-space: nowrap;
  }
  .bar-body {
    display: flex;
    gap: 10px;
    box-sizing: border-box;
    height: 100px;
    overflow-y: auto;
    padding: 0 10px 6px;
  }
  .drawing {
    flex: 0 1 46%;
    min-width: 0;
  }
  .drawing svg {
    display: block;
    width: 100%;
    max-width: 340px;
    height: auto;
    max-height: 100%;
    font-family: inherit;
  }
  .figures {
    flex: 1;
    min-width: 0;
  }
  .shape {
    font-size: var(--fontSizeBase200);
    color: var(--colorNeutralForeground2);
    overflow-wrap: anywhere;
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
    grid-template-columns: repeat(auto-fill, minmax(130px, 1fr));
    gap: 0 16px;
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
  .page ul:not(.decided) {
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
  .summary {
    margin-bottom: 8px;
    padding: 8px;
    border-radius: var(--borderRadiusMedium);
    background: var(--colorNeutralBackground3);
    font-size: var(--fontSizeBase200);
    user-select: all;
  }
  @container (max-width: 340px) {
    .controls {
      grid-template-columns: minmax(0, 1fr);
    }
  }
  @media (max-height: 420px) {
    :host {
      overflow-y: auto;
    }
    .place-panel {
      flex: none;
    }
    .findings {
      flex: none;
      height: 60vh;
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
