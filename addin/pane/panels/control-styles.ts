import { css } from "lit";

/** What every place of the pane does to the controls it is made of. */
export const controlStyles = css`
  /* a control that is free again looks so at once, so that no shade between is read as too faint */
  fluent-button {
    transition: none;
  }
  button,
  select {
    box-sizing: border-box;
    min-width: 0;
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
  input:focus-visible,
  select:focus-visible,
  summary:focus-visible {
    outline: 2px solid var(--colorStrokeFocus2);
    outline-offset: -2px;
  }
  .choice {
    display: flex;
    flex-direction: column;
    gap: 2px;
    min-width: 0;
    font-size: var(--fontSizeBase200);
  }
  .choice select {
    width: 100%;
    text-overflow: ellipsis;
    font-size: var(--fontSizeBase300);
  }
`;
