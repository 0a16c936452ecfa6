import { type Coverage, coverage, resolveStandard, STANDARD_IDS } from "../../core/standards";
import { isRefusal } from "../../core/units/refusal";
import type { Command } from "./command";
import { InputRefused } from "./input-refused";

/** `standards`: the documents held, and what each of them holds. */
export const standards: Command = {
  name: "standards",
  usage: "standards [--json]",
  summary: "the standards held, and how far each number may be trusted",
  options: { json: { type: "boolean" } },
  async run(given, streams) {
    if (given.positionals.length > 0) throw new InputRefused("standards takes no arguments");
    const held = STANDARD_IDS.flatMap((id) => {
      const standard = resolveStandard(id);
      return isRefusal(standard) ? [] : coverage(standard);
    });
    if (given.flag("json")) {
      streams.result(JSON.stringify({ standards: held }));
      return 0;
    }
    const width = Math.max(...held.map(({ id }) => id.length));
    for (const document of held) {
      streams.result(`${document.id.padEnd(width)}  ${document.title}`);
      streams.result(`${" ".repeat(width)}  ${contents(document)}`);
      streams.result(`${" ".repeat(width)}  ${trust(document)}`);
    }
    return 0;
  },
};

function contents({ unit, bars, shapes, tables }: Coverage): string {
  return `lengths in ${unit}; ${bars} sizes, ${shapes} shape codes, ${tables} tables`;
}

/** "published 237 (237 checked), memory 12 (0 checked)" and where sources differ. */
function trust({ values, conflicts }: Coverage): string {
  const kinds = Object.entries(values).filter(([, { held }]) => held > 0);
  const counts = kinds.map(([kind, { held, checked }]) => `${kind} ${held} (${checked} checked)`);
  const differ = conflicts === 0 ? "" : `; ${conflicts} places where sources differ`;
  return `values: ${counts.join(", ")}${differ}`;
}
