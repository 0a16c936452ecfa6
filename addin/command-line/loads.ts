import {
  checkBooks,
  heatsByRow,
  isUnmakeable,
  labelsOf,
  loadsOf,
  plansWithHeats,
  shopNotes,
  ticketsOf,
} from "../../core/jobs";
import type { Bundle } from "../../core/totals";
import type { LengthUnit } from "../../core/units/length-unit";
import { parseLength } from "../../core/units/parse-length";
import { printMass } from "../../core/units/print-mass";
import { isRefusal, refusalText } from "../../core/units/refusal";
import { loadsPage } from "../print/loads-page";
import { answerOf } from "./answer-of";
import { bookAsked } from "./book-asked";
import type { Command } from "./command";
import { InputRefused } from "./input-refused";
import { noteDecisions } from "./print-decisions";
import { STANDARD_OPTIONS } from "./standard-for";
import { bundleLimit, pageHead } from "./ticket-pages";
import { refusePage, writePage } from "./write-page";

/** `loads BOOK`: bundles on lorries by the day of their pours, loaded in reverse order of fixing. */
export const loads: Command = {
  name: "loads",
  usage:
    "loads BOOK [--lorry-load KG] [--lorry-length LENGTH] [--bundle-limit KG] [--out FILE.html] [--sheet NAME] [--standard ID] [--own FILE] [--json]",
  summary: "lorry loads by day, each in reverse order of fixing",
  options: {
    "lorry-load": { type: "string" },
    "lorry-length": { type: "string" },
    "bundle-limit": { type: "string" },
    out: { type: "string" },
    sheet: { type: "string" },
    ...STANDARD_OPTIONS,
    json: { type: "boolean" },
  },
  async run(given, streams) {
    const target = given.text("out");
    const { path, book, question } = bookAsked(given, streams, (path) => {
      if (target !== null) refusePage(path, target);
    });
    const checked = answerOf(checkBooks([book], question)[0]!);
    const { workshop, standard, report, sheets } = checked;
    const heats = heatsByRow(plansWithHeats(checked));
    const { tickets, notes } = ticketsOf([{ report, sheets, workshop, heats }]);
    const labels = answerOf(labelsOf(tickets, bundleLimit(given.text("bundle-limit"), workshop)));
    const lorry = {
      ...numberGiven(given.text("lorry-load")),
      ...lengthGiven(given.text("lorry-length"), standard.unit),
    };
    const made = answerOf(loadsOf(labels.bundles, workshop.shop, lorry));
    for (const note of [...checked.notes, ...shopNotes(workshop), ...notes, ...labels.notes, ...made.notes])
      streams.note(note);
    noteDecisions(report, streams);
    const head = pageHead(tickets, report, standard);
    if (target !== null) {
      writePage(path, target, loadsPage(made.loads, head, standard.unit));
      streams.note(`written: ${target}`);
    }
    if (given.flag("json")) {
      const { loads, left } = made.loads;
      const json = {
        loads: loads.map((load) => ({ ...load, loading: load.loading.map(jsonBundle) })),
        left: left.map(({ bundle, why }) => ({ ...jsonBundle(bundle), why })),
      };
      streams.result(JSON.stringify(json));
    } else {
      for (const { number, day, loading, mass } of made.loads.loads) {
        const pours = [...new Set(loading.map(({ item }) => item.pour ?? "no pour"))].reverse();
        streams.result(
          `load ${number}, ${day ?? "no day written"}: ${loading.length} bundles, ${printMass(mass, standard.unit, 1)}, ${pours.join(", ")}`,
        );
        for (const bundle of loading) streams.result(`  ${bundleWords(bundle, standard.unit)}`);
      }
      for (const { bundle, why } of made.loads.left)
        streams.result(`on no lorry, ${why}: ${bundleWords(bundle, standard.unit)}`);
    }
    return made.loads.left.length > 0 || tickets.some(isUnmakeable) ? 1 : 0;
  },
};

function numberGiven(option: string | null): { mass?: number } {
  if (option === null) return {};
  const mass = Number(option);
  if (!(mass > 0) || !Number.isFinite(mass))
    throw new InputRefused(`--lorry-load ${option} is no mass: give kilograms, over 0`);
  return { mass };
}

function lengthGiven(option: string | null, unit: LengthUnit): { length?: number } {
  if (option === null) return {};
  const length = parseLength(option, unit);
  if (isRefusal(length)) throw new InputRefused(`--lorry-length: ${refusalText(length)}`);
  return { length };
}

function jsonBundle({ item, count, mass, number, of }: Bundle) {
  const { pour, member, mark, size, heats } = item;
  return { pour, member, mark, size, bundle: number, of, bars: count, mass, heats: heats ?? [] };
}

function bundleWords({ item, count, mass, number, of }: Bundle, unit: LengthUnit): string {
  const heats = item.heats ?? [];
  const ofHeats = heats.length === 0 ? "" : `, heat ${heats.join(" or ")}`;
  return `${item.mark ?? "no mark"} bundle ${number} of ${of}: ${count} x ${item.size}, ${printMass(mass, unit, 1)}${ofHeats}`;
}
