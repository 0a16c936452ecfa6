import { css } from "lit";
import { barStyles } from "./check/bar-styles";
import { decideStyles } from "./check/decide-styles";
import { listStyles } from "./check/list-styles";
import { pageStyles } from "./check/page-styles";
import { controlStyles } from "./control-styles";
import { iconStyles } from "./icon-styles";

const frameStyles = css`
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
  .decisions h2,
  .safe-fixes h2 {
    padding: 10px 0 4px;
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
    display: flex;
    flex-direction: column;
    gap: 6px;
  }
  .hidden-sheets {
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
  }
  .under-way {
    flex-basis: 100%;
    height: 2px;
    overflow: hidden;
    background: var(--colorNeutralBackground6);
    contain: strict;
  }
  /* moved by the compositor alone: what is waited for needs the processor */
  .under-way::after {
    content: "";
    display: block;
    height: 100%;
    background: var(--colorCompoundBrandBackground);
    transform: scaleX(var(--done, 1));
    transform-origin: left;
  }
  .under-way:not([aria-valuenow])::after {
    width: 33%;
    animation: pass 2s linear infinite;
    will-change: transform;
  }
  @keyframes pass {
    from {
      transform: translateX(-100%);
    }
    to {
      transform: translateX(300%);
    }
  }
  @media (prefers-reduced-motion: reduce) {
    .under-way:not([aria-valuenow])::after {
      width: 100%;
      animation: none;
    }
  }
  @media (forced-colors: active) {
    fluent-tab[aria-selected="true"] {
      text-decoration: underline 3px;
      text-underline-offset: 8px;
    }
    .under-way {
      background: CanvasText;
    }
    .under-way::after {
      background: Highlight;
    }
  }
  .top.quiet {
    padding: 0;
  }
  .said {
    flex: auto;
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
  .drawing svg {
    display: block;
    width: 100%;
    max-width: 340px;
    height: auto;
    max-height: 100%;
    font-family: inherit;
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
    .place-panel > .findings {
      flex: none;
      height: 60vh;
    }
  }
`;

/** Looks of the pane over the theme's tokens; severities have a colour, a shape and a word each. */
export const paneStyles = [
  controlStyles,
  frameStyles,
  iconStyles,
  listStyles,
  decideStyles,
  barStyles,
  pageStyles,
];
