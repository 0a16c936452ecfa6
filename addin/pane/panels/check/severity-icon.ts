import { svg, type TemplateResult } from "lit";
import type { Severity } from "../../../../core/audit/finding";

const SHAPES: Readonly<Record<Severity, string>> = {
  unsafe: "M5.2 1h5.6L15 5.2v5.6L10.8 15H5.2L1 10.8V5.2z",
  unbendable:
    "M2.5 1h11A1.5 1.5 0 0 1 15 2.5v11a1.5 1.5 0 0 1-1.5 1.5h-11A1.5 1.5 0 0 1 1 13.5v-11A1.5 1.5 0 0 1 2.5 1z",
  "off-standard": "M8 .6 15.4 8 8 15.4.6 8z",
  doubtful: "M8 1 15.5 14.5H.5z",
  note: "M8 1a7 7 0 1 1 0 14A7 7 0 0 1 8 1z",
};

const MARKS: Readonly<Record<Severity, string>> = {
  unsafe: "M8 4v5M8 11.2v1",
  unbendable: "M5 5l6 6M11 5l-6 6",
  "off-standard": "M5.2 6.8h5.6M5.2 9.4h5.6",
  doubtful: "M8 6v4M8 11.7v1",
  note: "M8 7.2v4.4M8 4.4v1",
};

/** A shape of its own for each severity: octagon, square, diamond, triangle, circle. */
export function severityIcon(severity: Severity): TemplateResult {
  return svg`<svg class="icon ${severity}" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
    <path class="icon-shape" d=${SHAPES[severity]} />
    <path class="icon-mark" d=${MARKS[severity]} />
  </svg>`;
}
