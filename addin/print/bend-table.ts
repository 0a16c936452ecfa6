import { isHold, type Ticket, type TicketBend } from "../../core/tickets";
import { html, type Markup } from "./html";
import { setLength } from "./set-length";
import { trialWords } from "./trial-words";

/** The bends of a ticket in working order, with what each rests on; nothing for a bar that is not bent. */
export function bendTable(ticket: Ticket): Markup {
  const { bends, order, unit } = ticket;
  if (order.kind === "no bends") return html``;
  const said = orderWords(ticket);
  if (bends.length === 0) return said;
  const inOrder = order.kind === "found";
  return html`<table class="bends">
<thead><tr><th>${inOrder ? "Step" : "Along"}</th><th>Before it</th><th>Bend</th><th class="number">Start</th><th class="number">Middle</th><th class="number">End</th><th>Stop, held side</th><th>Stop, swinging side</th><th class="number">Wanted</th><th class="number">Bend to</th><th>Released, 90 %</th><th class="number">By median</th></tr></thead>
<tbody>${bends.map((bend, index) => bendRow(bend, index, unit))}</tbody>
</table>
${said}${restsOn(bends)}`;
}

function bendRow(bend: TicketBend, index: number, unit: Ticket["unit"]): Markup {
  const length = (mm: number): string => setLength(mm, unit);
  const before = [
    bend.turnedOver ? "turn over" : null,
    bend.endForEnd ? "end for end" : null,
    ...bend.notes.map((note) => `careful: ${note}`),
  ].filter((part) => part !== null);
  const { compensated } = bend;
  const angle =
    compensated.angle === null
      ? html`<td colspan="3" class="trial">${compensated.refusal?.startsWith(TRIAL_FIRST) === true ? TRIAL_FIRST : "no angle: see below"}</td>`
      : html`<td class="number"><strong>${degrees(compensated.angle)}</strong></td><td class="stop">${degrees(compensated.low)} to ${degrees(compensated.high)}</td><td class="number">${degrees(compensated.plain)}</td>`;
  return html`<tr><td>${index + 1}</td><td>${before.join(", ")}</td><td>${bend.bend}</td><td class="number">${length(bend.start)}</td><td class="number">${length(bend.middle)}</td><td class="number">${length(bend.end)}</td><td class="stop">${stop(bend.fromHeld, bend.held, length)}</td><td class="stop">${stop(bend.fromSwinging, bend.swinging, length)}</td><td class="number">${degrees(Math.abs(bend.turn))}</td>${angle}</tr>
`;
}

function stop(
  { distance, fromBend, face }: TicketBend["fromHeld"],
  end: string,
  length: (mm: number) => string,
): Markup {
  const from = fromBend === null ? end : `${face ? "face" : "corner"} of bend ${fromBend}`;
  return html`<strong>${length(distance)}</strong> ${from}`;
}

function orderWords(ticket: Ticket): Markup {
  const { order, machine } = ticket;
  if (order.kind === "no bends") return html``;
  if (order.kind === "blocked") {
    const isHeld = ticket.warnings.some(isHold);
    // what the audit said already stands above the drawing
    const unsaid = order.reasons.filter(
      (reason) => !ticket.warnings.some(({ text }) => text.includes(reason)),
    );
    const against =
      order.sure && !isHeld
        ? `speaks against ${order.machine}`
        : `unbendable on ${order.machine}${order.sure ? "" : ", not sure of another"}`;
    const reasons = unsaid.map((reason) => html`<li><b>${against}</b> ${reason}</li>`);
    const list = isHeld ? "warnings hold" : "warnings";
    const others = machine.reasons.filter((reason) => !order.reasons.some((own) => reason.includes(own)));
    return html`${unsaid.length === 0 ? html`` : html`<ul class="${list}">${reasons}</ul>`}${paragraph(others)}`;
  }
  if (order.kind === "unsure") {
    const others = machine.reasons.filter((reason) => !reason.includes(order.reason));
    const said = others.length === 0 ? [] : [`no bender chosen: ${others.join("; ")}`];
    return paragraph([`order not found: ${order.reason}`, ...said]);
  }
  const moves = [times(order.turnedOver, "turned over"), times(order.endForEnd, "turned end for end")];
  const made = moves.filter((part) => part !== "");
  const how =
    made.length === 0 ? "the bar is neither turned over nor end for end" : `the bar is ${made.join(" and ")}`;
  const none = machine.reasons.length === 0 ? [] : [`no bender chosen: ${machine.reasons.join("; ")}`];
  const unsure = order.confirmed
    ? []
    : ["not confirmed: try one bar, and stop where it meets tools or itself"];
  return paragraph([`working order on ${order.machine}`, how, ...unsure, ...none]);
}

function paragraph(sentences: readonly string[]): Markup {
  return sentences.length === 0
    ? html``
    : html`<p class="order">${sentences.map((words) => `${capital(words)}.`).join(" ")}</p>`;
}

/** One line for bends that rest on the same trials; the reason in full where a trial is needed. */
function restsOn(bends: readonly TicketBend[]): Markup {
  const lines = new Map<string, number[]>();
  for (const { bend, compensated } of bends) {
    const text =
      compensated.refusal === null
        ? `The angle to bend to rests on ${trialWords(compensated)}`
        : capital(compensated.refusal);
    lines.set(text, [...(lines.get(text) ?? []), bend]);
  }
  return html`${[...lines].map(([text, of]) => html`<p class="order">${lines.size === 1 ? "" : `${of.length === 1 ? "Bend" : "Bends"} ${of.join(", ")}: `}${text}.</p>`)}`;
}

const TRIAL_FIRST = "make a trial bend first";

function times(count: number, words: string): string {
  if (count === 0) return "";
  return count === 1 ? `${words} once` : `${words} ${count} times`;
}

const degrees = (angle: number | null): string =>
  angle === null ? "-" : `${(Math.round(angle * 10) / 10).toString()}°`;
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
