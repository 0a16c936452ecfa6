import { css } from "lit";

/** Looks of what is decided, and of what a change would do. */
export const decideStyles = css`
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
    align-items: end;
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
  .decisions h2 {
    position: static;
  }
  .scroll {
    max-height: 220px;
    overflow-y: auto;
    margin-bottom: 6px;
  }
`;
