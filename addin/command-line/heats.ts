import { checkBooks, type HeatUse, heatUses, plansWithHeats, shopNotes, ticketsOf } from "../../core/jobs";
import { fromMillimetres } from "../../core/units/convert-length";
import type { LengthUnit } from "../../core/units/length-unit";
import { answerOf } from "./answer-of";
import { bookAsked } from "./book-asked";
import type { Command } from "./command";
import { InputRefused } from "./input-refused";
import { STANDARD_OPTIONS } from "./standard-for";
import type { Streams } from "./streams";

/** `heats BOOK`: which marks came of which heat, by the cut list; one heat followed back with --heat. */
export const heats: Command = {
  name: "heats",
  usage: "heats BOOK [--heat NUMBER] [--sheet NAME] [--standard ID] [--own FILE] [--json]",
  summary: "mill certificates followed from the stock to marks and pours, and back",
  options: {
    heat: { type: "string" },
    sheet: { type: "string" },
    ...STANDARD_OPTIONS,
    json: { type: "boolean" },
  },
  async run(given, streams) {
    const { book, question } = bookAsked(given, streams);
    const checked = answerOf(checkBooks([book], question)[0]!);
    const { workshop, standard, report, sheets } = checked;
    for (const note of [...checked.notes, ...shopNotes(workshop)]) streams.note(note);
    if (workshop.shop.stock.every(({ heat }) => heat === null))
      throw new InputRefused(
        "no heat is written down: give the stock of the Shop sheet a column heat with the number of each mill certificate",
      );
    const { tickets } = ticketsOf([{ report, sheets, workshop }]);
    const uses = heatUses(plansWithHeats(checked), tickets);
    const asked = given.text("heat");
    const shown = asked === null ? uses : uses.filter(({ heat }) => isSame(heat, asked));
    if (given.flag("json"))
      streams.result(JSON.stringify({ heats: shown.map((use) => json(use, standard.unit)) }));
    else for (const use of shown) print(use, standard.unit, streams);
    if (asked !== null && shown.length === 0) {
      const isHeld = workshop.shop.stock.some(({ heat }) => isSame(heat, asked));
      streams.note(
        isHeld
          ? `heat ${asked} is in stock, and the cut list takes no bar of it`
          : `heat ${asked} is not among the stock of the Shop sheet`,
      );
    }
    return 0;
  },
};

const isSame = (heat: string | null, asked: string): boolean =>
  heat !== null && heat.toLowerCase() === asked.trim().toLowerCase();

function json(use: HeatUse, unit: LengthUnit) {
  return { ...use, bars: use.bars.map((one) => ({ ...one, length: lengthIn(one.length, unit) })) };
}

function print({ heat, size, bars, rows }: HeatUse, unit: LengthUnit, streams: Streams): void {
  const taken = bars.map(({ length, remnant, bars: count }) => {
    return `${count} x ${lengthIn(length, unit)}${remnant ? " remnant" : ""}`;
  });
  streams.result(`heat ${heat ?? "not written down"}, ${size}: ${taken.join(", ")}`);
  for (const { sheet, cell, mark, member, pour, pieces } of rows) {
    const where = [pour === null ? "" : `pour ${pour}`, member ?? ""].filter((part) => part !== "");
    const to = where.length === 0 ? "" : ` for ${where.join(", ")}`;
    streams.result(`  ${pieces} of mark ${mark ?? "without a name"}${to} (${sheet}!${cell})`);
  }
}

const lengthIn = (mm: number, unit: LengthUnit): number => Number(fromMillimetres(mm, unit).toPrecision(12));
