import { resolveStandard, STANDARD_IDS, type Standard } from "../../core/standards";
import { isRefusal } from "../../core/units/refusal";
import type { Command } from "./command";
import { InputRefused } from "./input-refused";

/** `standards`: the documents held, and what each of them holds. */
export const standards: Command = {
  name: "standards",
  usage: "standards [--json]",
  summary: "the standards held, and what each brings",
  options: { json: { type: "boolean" } },
  async run(given, streams) {
    if (given.positionals.length > 0) throw new InputRefused("standards takes no arguments");
    const held = STANDARD_IDS.flatMap((id) => {
      const standard = resolveStandard(id);
      return isRefusal(standard) ? [] : describe(standard);
    });
    if (given.flag("json")) streams.result(JSON.stringify({ standards: held }));
    else {
      const width = Math.max(...held.map(({ id }) => id.length));
      for (const { id, title, unit, sizes, shapes } of held) {
        streams.result(`${id.padEnd(width)}  ${title}; ${unit}, ${sizes} sizes, ${shapes} shape codes`);
      }
    }
    return 0;
  },
};

function describe(standard: Standard) {
  return {
    id: standard.id,
    title: standard.title,
    unit: standard.unit,
    sizes: standard.bars.length,
    shapes: standard.shapes.size,
  };
}
