import type { ResidualPoint, TrialResiduals } from "../../core/tickets";
import { toTenth } from "../../core/units/to-tenth";
import { html, Markup } from "./html";
import { svgText } from "./svg-text";

const WIDTH = 700;
const HEIGHT = 250;
const LEFT = 44;
const RIGHT = 12;
const TOP = 22;
const BOTTOM = 34;
/** degrees that the plot spans at least, either way */
const LEAST_SPAN = 3;

/**
 * Every trial's springback less what the fit of the whole log expects, over the angle bent to, so that a
 * person sees which trial does not fit. Suspicious trials are crosses named by their row; none is dropped.
 */
export function residualPlot({ points, problems }: TrialResiduals): Markup {
  if (points.length === 0 && problems.length === 0) return html``;
  const suspicious = points.filter((point) => point.suspicious);
  const said =
    suspicious.length === 0
      ? html`<p>All ${points.length} trials fit one another.</p>`
      : html`<p class="warning">${suspicious.length === 1 ? "One trial does" : `${suspicious.length} trials do`} not fit: measure again. None was dropped.</p>`;
  return html`<section class="chart">
<h2>Trials and how they fit</h2>
${points.length === 0 ? html`` : plot(points)}
${said}
${table(suspicious)}
${problems.length === 0 ? html`` : html`<ul class="problems">${problems.map(({ outcome, text }) => html`<li>${WORDS[outcome]}${text}</li>`)}</ul>`}
</section>
`;
}

const WORDS = { rejected: "Not used: ", asks: "Not used until answered: ", shown: "" } as const;

function plot(points: readonly ResidualPoint[]): Markup {
  const angles = points.map(({ trial }) => trial.bentTo);
  const from = Math.floor((Math.min(...angles) - 5) / 15) * 15;
  const to = Math.ceil((Math.max(...angles) + 5) / 15) * 15;
  const span = Math.ceil(Math.max(LEAST_SPAN, ...points.map(({ residual }) => Math.abs(residual) * 1.1)));
  const x = (angle: number): number => LEFT + ((angle - from) / (to - from)) * (WIDTH - LEFT - RIGHT);
  const y = (residual: number): number => TOP + ((span - residual) / (2 * span)) * (HEIGHT - TOP - BOTTOM);
  const parts: string[] = [];
  const step = span > 10 ? 5 : span > 4 ? 2 : 1;
  for (let at = -Math.floor(span / step) * step; at <= span; at += step) {
    parts.push(
      `<line class="${at === 0 ? "axis" : "grid"}" x1="${LEFT}" y1="${y(at).toFixed(1)}" x2="${WIDTH - RIGHT}" y2="${y(at).toFixed(1)}"/>`,
      svgText(LEFT - 6, y(at), "tick", "end", at > 0 ? `+${at}°` : `${at}°`),
    );
  }
  for (let at = from; at <= to; at += 15)
    parts.push(svgText(x(at), HEIGHT - BOTTOM + 12, "tick", "middle", `${at}°`));
  parts.push(
    svgText(0, 8, "tick", "start", "came back more than the others say (+), or less (-)"),
    svgText((LEFT + WIDTH - RIGHT) / 2, HEIGHT - 8, "tick", "middle", "bent to"),
  );
  for (const point of points)
    if (!point.suspicious) parts.push(dot(x(point.trial.bentTo), y(point.residual)));
  for (const point of points) {
    if (!point.suspicious) continue;
    const [cx, cy] = [x(point.trial.bentTo), y(point.residual)];
    const atEnd = cx > WIDTH - 90;
    parts.push(
      `<path class="cross" d="M${(cx - 5).toFixed(1)} ${(cy - 5).toFixed(1)}l10 10m0 -10l-10 10"/>`,
      svgText(cx + (atEnd ? -9 : 9), cy, "name", atEnd ? "end" : "start", `row ${point.row}`),
    );
  }
  const title = "Residuals of the trials over the angle bent to";
  return new Markup(
    `<svg class="plot" viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${title}" xmlns="http://www.w3.org/2000/svg"><title>${title}</title>${parts.join("")}</svg>`,
  );
}

function dot(x: number, y: number): string {
  return `<circle class="dot" cx="${x.toFixed(1)}" cy="${y.toFixed(1)}" r="3"/>`;
}

function table(suspicious: readonly ResidualPoint[]): Markup {
  if (suspicious.length === 0) return html``;
  const rows = suspicious.map(
    ({ row, group, trial, springback, residual }) =>
      html`<tr><td class="number">${row}</td><td>${group}</td><td>${trial.heat ?? "-"}</td><td class="number">${toTenth(trial.bentTo)}°</td><td class="number">${toTenth(trial.released)}°</td><td class="number">${toTenth(springback)}°</td><td class="number">${residual > 0 ? "+" : ""}${toTenth(residual)}°</td></tr>`,
  );
  return html`<table><thead><tr><th class="number">Shop row</th><th>Group</th><th>Heat</th><th class="number">Bent to</th><th class="number">Released</th><th class="number">Came back</th><th class="number">Off the fit</th></tr></thead><tbody>${rows}</tbody></table>`;
}
