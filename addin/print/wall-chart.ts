import { barOnFormer } from "../../core/bending/calibrate";
import type { Workshop } from "../../core/shop";
import { type CompensationLine, compensationLines } from "../../core/tickets";
import type { LengthUnit } from "../../core/units/length-unit";
import { printLength } from "../../core/units/print-length";
import { html, Markup } from "./html";
import { svgText } from "./svg-text";

type Point = CompensationLine["points"][number];

const LABEL = 175;
const PANEL = 110;
const GAP = 26;
const ROW = 34;
const TOP = 40;
const FOOT = 34;

/**
 * What to add at each common bend angle, by size and former, with the 90 % interval of the released angle
 * as a line through it and the plain rule as a ring; the angles themselves stand in a table below it. Where
 * the trials do not bear an angle there is none.
 */
export function wallChart(workshop: Workshop): Markup {
  const lines = compensationLines(workshop);
  const { unit } = workshop.log.calibration;
  if (lines.length === 0) {
    return html`<section><p class="warning">Make a trial bend first: the trial log is empty, so there is no angle to bend to.</p></section>`;
  }
  return html`<section class="chart">
<p class="note">Angle to bend to so that the released bar has the angle wanted. It holds for these machines, formers and steels only: check one bar of each new heat. The machine's plate and manual govern.</p>
${plot(lines, unit)}
${table(lines, unit)}
</section>
`;
}

function plot(lines: readonly CompensationLine[], unit: LengthUnit): Markup {
  const wanted = lines[0]!.points.map((point) => point.wanted);
  const borne = lines.flatMap((line) => line.points).filter(isBorne);
  const high = Math.max(5, ...borne.map((point) => added(point) + point.half));
  const low = Math.min(0, ...borne.map((point) => added(point) - point.half));
  const step = high - low > 20 ? 10 : 5;
  const from = Math.floor(low / step) * step;
  const to = Math.ceil(high / step) * step;
  const width = LABEL + wanted.length * (PANEL + GAP);
  const bottom = TOP + lines.length * ROW;
  const x = (panel: number, degrees: number): number =>
    LABEL + panel * (PANEL + GAP) + ((degrees - from) / (to - from)) * PANEL;
  const grid = wanted.flatMap((angle, panel) => {
    const ticks: string[] = [svgText(x(panel, (from + to) / 2), 14, "head", "middle", `wanted ${angle}°`)];
    for (let at = from; at <= to; at += step) {
      ticks.push(
        `<line class="${at === 0 ? "axis" : "grid"}" x1="${x(panel, at)}" y1="${TOP - 8}" x2="${x(panel, at)}" y2="${bottom}"/>`,
        svgText(x(panel, at), bottom + 12, "tick", "middle", at > 0 ? `+${at}°` : `${at}°`),
      );
    }
    return ticks;
  });
  const rows = lines.flatMap((line, row) => {
    const y = TOP + row * ROW + ROW / 2;
    const { group, points } = line;
    return [
      row % 2 === 1 ? `<rect class="band" x="0" y="${y - ROW / 2}" width="${width}" height="${ROW}"/>` : "",
      svgText(0, y - 7, "name", "start", barOnFormer(group, unit)),
      svgText(0, y + 8, "detail", "start", groupDetail(group)),
      ...points.map((point, panel) => mark(point, panel, y, x)),
    ];
  });
  const title = "Degrees to add at each wanted angle, by size and former, with 90 % intervals";
  return new Markup(
    `<svg class="plot" viewBox="0 0 ${width} ${bottom + FOOT}" role="img" aria-label="${title}" xmlns="http://www.w3.org/2000/svg"><title>${title}</title>${rows.filter((part) => part.startsWith("<rect")).join("")}${grid.join("")}${rows.filter((part) => !part.startsWith("<rect")).join("")}${svgText(LABEL, bottom + 28, "tick", "start", "degrees to add; dot: fit, line: 90 % of released bars, ring: plain rule")}</svg>`,
  );
}

function mark(point: Point, panel: number, y: number, x: (panel: number, degrees: number) => number): string {
  if (!isBorne(point)) {
    const middle = LABEL + panel * (PANEL + GAP) + PANEL / 2;
    return svgText(middle, y, "none", "middle", reason(point));
  }
  const at = added(point);
  const ring =
    point.plain === null
      ? ""
      : `<circle class="ring" cx="${x(panel, point.plain - point.wanted).toFixed(1)}" cy="${y}" r="5"/>`;
  const [left, right] = [x(panel, at - point.half).toFixed(1), x(panel, at + point.half).toFixed(1)];
  return (
    `<path class="interval" d="M${left} ${y - 4}v8M${left} ${y}H${right}M${right} ${y - 4}v8"/>` +
    `<circle class="dot" cx="${x(panel, at).toFixed(1)}" cy="${y}" r="3"/>${ring}`
  );
}

function table(lines: readonly CompensationLine[], unit: LengthUnit): Markup {
  const wanted = lines[0]!.points.map((point) => point.wanted);
  const ofUnit = unit === "mm" ? " mm" : "";
  const body = lines.map(({ group, points }) => {
    const cells = points.map((point) =>
      isBorne(point)
        ? html`<td class="number"><strong>${point.angle.toFixed(1)}°</strong> ±${point.half.toFixed(1)}<br><small>plain ${point.plain === null ? "-" : `${point.plain.toFixed(1)}°`}</small></td>`
        : html`<td>${reason(point)}</td>`,
    );
    return html`<tr><td>${diameterWords(group.diameter, unit)}</td><td>${diameterWords(group.former, unit)}</td><td>${group.grade ?? "-"}</td><td>${group.form ?? "-"}</td><td>${group.machine ?? "-"}</td><td class="number">${group.trials.length}</td>${cells}</tr>
`;
  });
  return html`<table class="angles">
<thead><tr><th>Size${ofUnit}</th><th>Former${ofUnit}</th><th>Grade</th><th>Form</th><th>Machine</th><th class="number">Trials</th>${wanted.map((angle) => html`<th class="number">For ${angle}° bend to</th>`)}</tr></thead>
<tbody>${body}</tbody>
</table>`;
}

type Borne = Point & { readonly angle: number; readonly half: number };

function isBorne(point: Point): point is Borne {
  return point.angle !== null && point.half !== null;
}

function added(point: Borne): number {
  return point.angle - point.wanted;
}

function reason({ refusal }: Point): string {
  return refusal?.code === "beyond-machine-angle" ? "beyond the machine" : "trial bend first";
}

function groupDetail({ machine, grade, form, trials }: CompensationLine["group"]): string {
  const count = `${trials.length} ${trials.length === 1 ? "trial" : "trials"}`;
  return [machine, grade, form, count].filter((part) => part !== null).join(", ");
}

const diameterWords = (mm: number, unit: LengthUnit): string =>
  unit === "mm" ? String(Math.round(mm * 10) / 10) : printLength(mm, unit);
