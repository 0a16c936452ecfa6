import { css } from "lit";

/** Looks of the bench: large figures, and buttons for a gloved finger. */
export const benchStyles = css`
  :host {
    display: flex;
    flex-direction: column;
    height: 100%;
    min-height: 0;
    font: var(--fontSizeBase400) / 1.35 var(--fontFamilyBase);
    color: var(--colorNeutralForeground1);
  }
  .bench {
    display: flex;
    flex-direction: column;
    flex: 1;
    min-height: 0;
  }
  p,
  ul,
  ol,
  dl,
  dd {
    margin: 0;
    padding: 0;
  }
  .scroll {
    flex: 1;
    min-height: 0;
    overflow-y: auto;
    padding: 0 12px 12px;
  }
  .chooser {
    display: flex;
    gap: 6px;
    padding: 8px 12px 4px;
  }
  button,
  input,
  select {
    box-sizing: border-box;
    min-width: 44px;
    min-height: 44px;
    padding: 0 10px;
    border: 1px solid var(--colorNeutralStrokeAccessible);
  }
  input {
    border-radius: var(--borderRadiusMedium);
    background: var(--colorNeutralBackground1);
    color: inherit;
    font: inherit;
  }
  .scroll:focus-visible {
    outline: 2px solid var(--colorStrokeFocus2);
    outline-offset: -2px;
  }
  .chooser input {
    flex: 1;
    min-width: 0;
    font-weight: var(--fontWeightSemibold);
  }
  .made:disabled {
    opacity: 0.4;
  }
  .made[aria-pressed="true"] {
    background: var(--colorBrandBackground);
    color: var(--colorNeutralForegroundOnBrand);
  }
  .progress,
  .hint,
  .where,
  small {
    color: var(--colorNeutralForeground2);
  }
  .progress {
    padding: 0 12px 4px;
    font-size: var(--fontSizeBase200);
  }
  .heard {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
  }
  .remark,
  .where {
    overflow-wrap: anywhere;
  }
  .alike {
    display: flex;
    flex-direction: column;
    gap: 6px;
    padding: 4px 0 8px;
  }
  .strip {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 2px 14px;
  }
  .strip .mark {
    font-size: 2em;
    line-height: 1.1;
    overflow-wrap: anywhere;
  }
  .strip .what,
  .strip .cut strong {
    font-size: 1.35em;
    font-weight: var(--fontWeightSemibold);
  }
  .holds {
    margin: 6px 0;
    padding: 8px;
    border: 3px solid var(--unsafe);
    overflow-wrap: anywhere;
  }
  ul {
    padding-left: 18px;
  }
  .drawing svg {
    display: block;
    width: 100%;
    max-width: 520px;
    height: auto;
    max-height: 220px;
    font-family: inherit;
  }
  .bar-drawing-bar {
    color: var(--colorBrandForeground1);
  }
  .bar-drawing-text,
  .bar-drawing-note {
    fill: currentColor;
  }
  .bends {
    list-style: none;
  }
  .bends li {
    display: grid;
    grid-template-columns: 1.6em 1fr;
    gap: 0 8px;
    padding: 6px 0;
    border-top: 1px solid var(--colorNeutralStroke2);
  }
  .bends .step {
    grid-row: span 2;
    font-size: 1.5em;
    font-weight: var(--fontWeightSemibold);
  }
  .bends .angle strong {
    font-size: 1.5em;
  }
  .bends small {
    display: block;
  }
  dl div {
    display: flex;
    gap: 8px;
    padding: 2px 0;
  }
  dt {
    flex: none;
    width: 6.5em;
    color: var(--colorNeutralForeground2);
  }
  dd {
    min-width: 0;
    font-weight: var(--fontWeightSemibold);
    overflow-wrap: anywhere;
  }
  .words,
  .warnings {
    padding-top: 4px;
    font-size: var(--fontSizeBase300);
    overflow-wrap: anywhere;
  }
  .warnings {
    padding-left: 18px;
  }
  summary {
    min-height: 44px;
    line-height: 44px;
    cursor: pointer;
  }
  .trial,
  .machine {
    display: flex;
    flex-wrap: wrap;
    gap: 8px 12px;
    align-items: end;
    margin-top: 12px;
    padding: 10px;
    border-left: 3px solid var(--colorBrandStroke1);
    background: var(--colorNeutralBackground2);
  }
  .trial > p,
  .machine > label,
  .machine > small {
    flex-basis: 100%;
  }
  .trial label input {
    width: 5.2em;
  }
  .trial input[name="heat"] {
    width: 7em;
  }
  .machine label small,
  .machine label input {
    display: block;
    width: 100%;
  }
  .row {
    padding-top: 12px;
  }
  .learned {
    overflow-wrap: anywhere;
  }
`;
