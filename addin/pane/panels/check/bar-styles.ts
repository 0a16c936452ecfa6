import { css } from "lit";

/** Looks of the selected bar under the list. */
export const barStyles = css`
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
  .bar-title span:first-child::first-letter {
    text-transform: uppercase;
  }
  .bar-body {
    display: flex;
    gap: 10px;
    box-sizing: border-box;
    height: 84px;
    overflow-y: auto;
    padding: 0 10px 2px;
  }
  .drawing {
    flex: 0 0 50%;
    min-width: 0;
    height: 100%;
  }
  .drawing svg {
    display: block;
    width: 100%;
    max-width: 340px;
    height: 100%;
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
`;
