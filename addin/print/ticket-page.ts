import { barDrawing } from "../../core/shapes/bar-drawing";
import { barSvg } from "../../core/shapes/bar-svg";
import { citationText } from "../../core/standards";
import { isHold, type Ticket, type TicketWarning } from "../../core/tickets";
import { printMass } from "../../core/units/print-mass";
import { bendTable } from "./bend-table";
import { heatWords } from "./heat-words";
import { html, Markup } from "./html";
import { markCode } from "./mark-code";
import { type PageHead, printPage } from "./print-page";
import { setLength } from "./set-length";
import { tooTightWords } from "./too-tight-words";

/** One ticket a mark, half a page or a page, in the order given. */
export function ticketPage(tickets: readonly Ticket[], head: PageHead): string {
  const shared = sharedNotes(tickets);
  return printPage("Bending tickets", head, [
    html`<p class="note">${tickets.length} ${tickets.length === 1 ? "ticket" : "tickets"}. Lengths in ${tickets[0]?.unit === "in" ? "feet and inches" : "mm"}, outside dimensions; angles are bend angles, 0 is straight; by median: the angle wanted and the median springback of the trials. The machine's plate and manual govern. These tickets replace no instruction and no local rule.</p>`,
    ...(shared.size === 0
      ? []
      : [
          html`<ul class="warnings"><li class="lead">On every ticket:</li>${[...shared.values()].map(warningLine)}</ul>`,
        ]),
    ...tickets.map((ticket) => ticketArticle(ticket, shared)),
  ]);
}

/** Notes that stand on each of several tickets, by their text: they are printed once, on the papers' head. */
function sharedNotes(tickets: readonly Ticket[]): ReadonlyMap<string, TicketWarning> {
  const [first, ...others] = tickets;
  if (first === undefined || others.length === 0) return new Map();
  const onAll = first.warnings.filter(
    (each) =>
      each.severity === "note" &&
      !isHold(each) &&
      others.every(({ warnings }) => warnings.some(({ text }) => text === each.text)),
  );
  return new Map(onAll.map((each) => [each.text, each]));
}

function ticketArticle(ticket: Ticket, shared: ReadonlyMap<string, TicketWarning>): Markup {
  return html`<article class="ticket">
${strip(ticket)}
${ticket.remark === null ? html`` : html`<p class="remark"><b>Remark:</b> ${ticket.remark}</p>`}
${holds(ticket.warnings)}
<div class="bar">
<figure>${drawing(ticket)}</figure>
${facts(ticket)}
</div>
${bendTable(ticket)}
${warnings(ticket.warnings, shared)}
${waived(ticket.waived)}
<ul class="cautions">${ticket.cautions.map(({ text }) => html`<li>${text}</li>`)}</ul>
</article>
`;
}

function strip(ticket: Ticket): Markup {
  const { mark, count, size, grade, cut, unit } = ticket;
  const shape = ticket.shape === null ? null : `shape ${ticket.shape}`;
  const words = ticket.shapeWords === null ? shape : `${shape}, ${ticket.shapeWords}`;
  const place = [ticket.member, ticket.pour === null ? null : `pour ${ticket.pour}`, words];
  const reference = [
    ticket.head.job,
    ticket.head.schedule === null ? null : `schedule ${ticket.head.schedule}`,
    ticket.head.drawing === null ? null : `drawing ${ticket.head.drawing}`,
    ticket.revision === null ? "no revision" : `rev. ${ticket.revision}`,
    ticket.standard,
    `${ticket.sheet} row ${ticket.row}`,
  ];
  const steel = grade.name === null ? `grade not said, ${grade.yield} MPa taken` : grade.name;
  return html`<div class="strip">
<div class="${(mark ?? "").length > LONG_MARK ? "mark long" : "mark"}">${mark ?? "no mark"}</div>
<div class="what"><strong>${count ?? "?"} × ${size}</strong> <span>${steel}</span><br>${joined(place)}</div>
<div class="cut"><span>cut to</span> <strong>${cut === null ? "?" : setLength(cut.length, unit)}</strong>${deviation(cut?.tolerance ?? null, unit)}</div>
<div class="reference">${joined(reference)}</div>
${markCode([codeText(ticket), codeText({ ...ticket, member: null })])}
</div>`;
}

/** characters that still stand large on one line */
const LONG_MARK = 8;

/** What a scanner types: the mark first, so that it can be looked up, then what tells it from others of its name. */
function codeText({ mark, member, count, size, cut, unit, revision }: Ticket): string {
  const length = cut === null ? null : `cut ${setLength(cut.length, unit)}`;
  const parts = [mark ?? "no mark", member ?? "", `${count ?? "?"} x ${size}`, length, revision];
  return parts.filter((part) => part !== null).join("; ");
}

/** units of the drawing's frame, and mm of paper that its width takes */
const FRAME = { width: 330, height: 150 };
const PAPER = 92;

function drawing({ drawing: bar, unit, mark, shape }: Ticket): Markup {
  if (bar === null)
    return html`<p class="none">No drawing here: bend it by the sketch on its own drawing. No bend or angle of it was checked.</p>`;
  const write = (mm: number): string => setLength(mm, unit);
  const drawn = barDrawing({ ...bar, frame: FRAME, ...(unit === "in" ? { write } : {}) });
  const title = `mark ${mark ?? "without a name"}, shape ${shape ?? ""}`;
  const svg = barSvg(drawn, { width: drawn.width, height: drawn.height, title });
  const ratio = 1 / ((drawn.scale * PAPER) / FRAME.width);
  const scale =
    drawn.schematic === null
      ? `about 1 : ${ratio < 10 ? ratio.toFixed(1) : Math.round(ratio)}`
      : "not to scale";
  const note = bar.note === null ? "" : `; ${bar.note}`;
  return html`${new Markup(svg)}<figcaption>${scale}${ends(bar.path)}${note}</figcaption>`;
}

/** Legs in order from the first end, so that nobody takes one end for the other. */
function ends(path: NonNullable<Ticket["drawing"]>["path"]): string {
  if (path.kind !== "planar" || path.turns.length === 0) return "";
  if (path.legs.some((leg) => leg.letter === null)) return "; legs from the first end as written";
  const letters = path.legs.map((leg) => (leg.free ? `(${leg.letter})` : leg.letter));
  return `; from the first end: ${letters.join(" ")}`;
}

function facts(ticket: Ticket): Markup {
  const { unit, formers, machine, massEach, massTotal, swingRadius } = ticket;
  const rows: [string, string | Markup][] = [];
  const isBent = formers.length > 0;
  if (isBent) {
    rows.push(["Former", html`${formers.map((former) => formerWords(former, unit))}`]);
    rows.push([
      "Machine",
      machine.name !== null
        ? html`<strong>${machine.name}</strong>`
        : machine.reasons.length > 0 && ticket.order.kind !== "blocked"
          ? "none chosen: see below"
          : "none known to make it",
    ]);
    rows.push(["Bent at once", atOnce(ticket.bendsAtOnce)]);
  }
  rows.push(["Cut at once", atOnce(ticket.cutsAtOnce)]);
  if (isBent) {
    rows.push([
      "Keep clear",
      swingRadius === null
        ? "swing not known"
        : `${setLength(Math.ceil(swingRadius), unit)} about the former`,
    ]);
  }
  rows.push(["Mass", `${massWords(massEach, unit)} each, ${massWords(massTotal, unit)} in all`]);
  if (ticket.heats.length > 0)
    rows.push(["Heat", heatWords(ticket.heats.map(({ heat, pieces }) => ({ heat, bars: pieces })))]);
  if (ticket.freeLeg !== null) rows.push(["Free leg", freeLegWords(ticket.freeLeg, ticket)]);
  rows.push(["Tolerances", tolerances(ticket)]);
  return html`<dl class="facts">${rows.map(([name, value]) => html`<dt>${name}</dt><dd>${value}</dd>`)}</dl>`;
}

/** What the free leg takes up: a length that is not that of the legs goes all into it. */
function freeLegWords(leg: string, { freeLegOver, cut, unit }: Ticket): Markup | string {
  const over = setLength(Math.abs(freeLegOver), unit);
  if (cut === null || cut.computed === null || freeLegOver === 0 || over === setLength(0, unit))
    return `${leg} takes up the tolerance`;
  return html`${leg} takes up the tolerance, and <strong>comes out ${over} ${freeLegOver > 0 ? "longer" : "shorter"} than written</strong>: cut to ${setLength(cut.length, unit)}, where the legs need ${setLength(cut.computed, unit)}`;
}

/** mm */
const SAME_FORMER = 0.5;
const FORMER_FROM = {
  schedule: "as scheduled",
  "standard's least": "the standard's least",
  shape: "by the radius of the bend",
} as const;

function formerWords(
  { diameter, wanted, from, inRack, below }: Ticket["formers"][number],
  unit: Ticket["unit"],
): Markup {
  const tight = below === null ? "" : html`: <strong>${tooTightWords(below, unit)}</strong>`;
  if (Math.abs(diameter - wanted) >= SAME_FORMER)
    return html`<div><strong>${setLength(diameter, unit)}</strong> of the rack, for ${setLength(wanted, unit)} ${FORMER_FROM[from]}${tight}</div>`;
  const rack = inRack === null ? "" : inRack ? ", in the rack" : ", not in the rack";
  return html`<div><strong>${setLength(diameter, unit)}</strong> ${FORMER_FROM[from]}${rack}${tight}</div>`;
}

function atOnce(answer: Ticket["bendsAtOnce"]): string {
  if (answer === null) return "plate not written down";
  if (answer.bars === null) return `not known for ${answer.machine}: copy its plate`;
  if (answer.bars === 0)
    return `none: beyond ${answer.machine} by ${answer.basis === "plate" ? "its plate" : "an estimate from its plate"}`;
  const basis = answer.basis === "plate" ? "by its plate" : "an estimate: ask the maker, the plate governs";
  return `${answer.bars} on ${answer.machine}, ${basis}`;
}

function tolerances({ dimensions, unit, toleranceCite }: Ticket): string | Markup {
  if (toleranceCite === null) return "none held by this standard";
  const known = dimensions.filter(({ tolerance }) => tolerance !== null);
  if (known.length === 0) return "none held for these dimensions";
  return html`${known.map(({ name, length, tolerance }) => html`<span class="dim">${name} ${setLength(length, unit)}${deviation(tolerance, unit)}</span> `)}<small>${citationText(toleranceCite)}</small>`;
}

function deviation(tolerance: { plus: number; minus: number } | null, unit: Ticket["unit"]): Markup {
  if (tolerance === null) return html``;
  const { plus, minus } = tolerance;
  const text =
    plus === minus ? `±${setLength(plus, unit)}` : `+${setLength(plus, unit)} −${setLength(minus, unit)}`;
  return html` <span class="deviation">${text}</span>`;
}

/** What may hurt, or cannot be made: above everything else, so that nobody starts. */
function holds(list: readonly TicketWarning[]): Markup {
  const severe = list.filter(isHold);
  if (severe.length === 0) return html``;
  return html`<ul class="warnings hold"><li class="lead">Do not make this bar until it is cleared:</li>${severe.map(warningLine)}</ul>`;
}

function warnings(list: readonly TicketWarning[], shared: ReadonlyMap<string, TicketWarning>): Markup {
  const mild = list.filter((warning) => !isHold(warning) && !shared.has(warning.text));
  const head = shared.size === 0 ? html`` : html`<li>${NOTES_ON_HEAD}</li>`;
  return mild.length === 0 && shared.size === 0
    ? html``
    : html`<ul class="warnings">${mild.map(warningLine)}${head}</ul>`;
}

const NOTES_ON_HEAD = "The notes on the head of these papers hold for this bar too.";

/** What somebody answers for: said on the paper that the bar is made from. */
function waived(list: Ticket["waived"]): Markup {
  if (list.length === 0) return html``;
  return html`<ul class="warnings">${list.map(({ text }) => html`<li><b>not told</b> ${text}</li>`)}</ul>`;
}

function warningLine({ severity, unsure, text }: TicketWarning): Markup {
  return html`<li><b>${unsure && severity !== "note" ? `perhaps ${severity}` : severity}</b> ${text}</li>`;
}

const massWords = (mass: number | null, unit: Ticket["unit"]): string =>
  mass === null ? "?" : printMass(mass, unit, 1);
const joined = (parts: readonly (string | null)[]): string =>
  parts.filter((part) => part !== null).join(" · ");
