import { html, nothing, type TemplateResult } from "lit";
import type { TicketView } from "../../engine/bench-view";
import type { BenchModel } from "../../model/bench-model";
import { controlStyles } from "../control-styles";
import { ModelElement } from "../model-element";
import { svgElement } from "../svg-element";
import { benchStyles } from "./bench-styles";
import { machinePart } from "./machine-part";
import { trialPart } from "./trial-part";

/** `<barwright-bench>`: the ticket of one mark, trials and ticks, for a phone held at arm's length. Give it a `model`. */
export class BenchElement extends ModelElement<BenchModel> {
  static override styles = [controlStyles, benchStyles];

  override render(): TemplateResult {
    const { model } = this;
    if (model === undefined) return html``;
    const { ticket, doing, lost } = model.state;
    return html`
      <section class="bench" aria-label="At the bender" aria-busy=${doing === null ? "false" : "true"}>
        ${chooser(model)}
        <div class="scroll" tabindex="0" role="group" aria-label="Ticket">
          ${lost === null ? nothing : html`<p class="holds" role="alert">${lost.words}</p>`}
          ${alikePart(model)}
          ${
            ticket === null
              ? lost !== null
                ? nothing
                : html`<p class="hint">${doing ?? "Check a schedule that holds bars: the ticket of each mark stands here."}</p>`
              : html`${ticketPart(ticket)} ${trialPart(model, ticket)} ${machinePart(model)}`
          }
          <div class="row">
            <button class="wall-chart" @click=${() => void model.printChart()}>Wall chart of angles to bend to</button>
          </div>
        </div>
      </section>
    `;
  }
}

function chooser(model: BenchModel): TemplateResult {
  const { marks, ticket, made, lost } = model.state;
  const find = (event: Event): void => {
    event.preventDefault();
    const text = String(new FormData(event.currentTarget as HTMLFormElement).get("mark") ?? "");
    if (text.trim() !== "") void model.find(text);
  };
  const isMade = ticket !== null && made.has(ticket.row);
  return html`
    <form class="chooser" @submit=${find}>
      <button type="button" class="previous" aria-label="Previous mark" @click=${() => void model.step(-1)}>&#8592;</button>
      <input name="mark" list="marks" aria-label="Mark, typed or scanned" autocomplete="off" .value=${ticket?.mark ?? lost?.typed ?? ""} />
      <datalist id="marks">${marks.map(({ mark, member }) => html`<option value=${mark}>${member ?? ""}</option>`)}</datalist>
      <button type="button" class="next" aria-label="Next mark" @click=${() => void model.step(1)}>&#8594;</button>
      <button
        type="button"
        class="made"
        aria-pressed=${isMade ? "true" : "false"}
        ?disabled=${ticket === null}
        @click=${() => void model.tick(!isMade)}
        >${isMade ? "\u2713 made" : "Made"}</button
      >
    </form>
    <p class="progress" role="status">
      ${ticket === null ? nothing : html`<span class="heard">Ticket of ${ticket.mark}, </span>`}${made.size} of ${marks.length} made
    </p>
  `;
}

/** Bars of one mark: whoever has the mark alone cannot tell which is meant. */
function alikePart(model: BenchModel): TemplateResult | typeof nothing {
  const { alike, ticket } = model.state;
  if (alike.length === 0) return nothing;
  return html`<div class="alike">
    ${ticket === null ? nothing : html`<strong>Other bars have the mark ${ticket.mark} too:</strong>`}
    ${alike.map(
      ({ row, cell, member, what }) => html`<button @click=${() => void model.choose(row)}>
        ${[member, what, `at ${cell}`].filter((part) => part !== null).join(", ")}
      </button>`,
    )}
  </div>`;
}

function ticketPart(ticket: TicketView): TemplateResult {
  const { holds, warnings, cautions } = ticket;
  return html`
    <article class="ticket">
      <div class="strip">
        <strong class="mark">${ticket.mark}</strong>
        <span class="what">${ticket.what}</span>
        <span class="cut">cut to <strong>${ticket.cut}</strong></span>
      </div>
      <p class="where">${ticket.place}</p>
      ${ticket.remark === null ? nothing : html`<p class="remark"><strong>Remark:</strong> ${ticket.remark}</p>`}
      ${
        holds.length === 0
          ? nothing
          : html`<div class="holds">
            <strong>Do not make this bar until it is cleared</strong>
            <ul>${holds.map((words) => html`<li>${words}</li>`)}</ul>
          </div>`
      }
      ${
        ticket.svg === null
          ? html`<p class="words">No drawing here: bend it by the sketch on its own drawing. No bend or angle of it was checked.</p>`
          : html`<div class="drawing">${svgElement(ticket.svg)}</div>`
      }
      ${bendList(ticket)}
      <dl>${ticket.facts.map(({ name, value }) => html`<div><dt>${name}</dt><dd>${value}</dd></div>`)}</dl>
      ${ticket.words.map((words) => html`<p class="words">${words}</p>`)}
      ${warnings.length === 0 ? nothing : html`<ul class="warnings">${warnings.map((words) => html`<li>${words}</li>`)}</ul>`}
      <details>
        <summary>Cautions, ${cautions.length}</summary>
        <ul>${cautions.map((words) => html`<li>${words}</li>`)}</ul>
      </details>
    </article>
  `;
}

function bendList({ bends }: TicketView): TemplateResult | typeof nothing {
  if (bends.length === 0) return nothing;
  return html`
    <ol class="bends">
      ${bends.map(
        ({ step, before, stop, wanted, bendTo, released }) => html`<li>
          <span class="step">${step}</span>
          <span class="how">${before === "" ? nothing : html`<em>${before}, then </em>`}stop at <strong>${stop}</strong></span>
          <span class="angle">
            ${bendTo === null ? html`<strong>trial first</strong>` : html`bend to <strong>${bendTo}</strong>`}
            <small>for ${wanted}${released === null ? "" : `, released ${released}`}</small>
          </span>
        </li>`,
      )}
    </ol>
  `;
}

customElements.define("barwright-bench", BenchElement);
