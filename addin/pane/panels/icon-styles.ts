import { css } from "lit";

/** Looks of the severities, each a colour and a shape. */
export const iconStyles = css`
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
  @media (forced-colors: active) {
    .icon-shape {
      fill: CanvasText;
    }
    .icon-mark {
      stroke: Canvas;
    }
  }
`;
