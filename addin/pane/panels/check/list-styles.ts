import { css } from "lit";

/** Looks of the list of findings and what narrows it. */
export const listStyles = css`
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
  .code a {
    color: var(--colorBrandForegroundLink);
  }
  .cite,
  .code,
  .hint {
    font-size: var(--fontSizeBase200);
    color: var(--colorNeutralForeground2);
    overflow-wrap: anywhere;
  }
`;
