import { css } from "lit";

/** What every place of the pane does to the controls it is made of. */
export const controlStyles = css`
  /* a control that is free again looks so at once, so that no shade between is read as too faint */
  fluent-button {
    transition: none;
  }
`;
