import { css } from "lit";

/** Looks of the pages that stand where the list does. */
export const pageStyles = css`
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
`;
