import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import type { Seeded } from "../corpus/seeded";

/** Ways to write the same XML otherwise. */
export const REWRITINGS = [
  "quotes",
  "order",
  "blanks",
  "open",
  "comments",
  "cdata",
  "references",
  "mark",
] as const;
export type Rewriting = (typeof REWRITINGS)[number];

const TAG = /<([\w:.-]+)((?:\s+[\w:.-]+\s*=\s*(?:"[^"]*"|'[^']*'))*)\s*(\/?)>/g;
const ATTRIBUTE = /([\w:.-]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g;

/** A package whose parts say the same in other words. */
export function rewrittenPackage(bytes: Uint8Array, ways: readonly Rewriting[], random: Seeded): Uint8Array {
  const parts = unzipSync(bytes);
  for (const [name, part] of Object.entries(parts))
    if (/\.(xml|rels)$/.test(name)) parts[name] = strToU8(rewritten(strFromU8(part), new Set(ways), random));
  return zipSync(parts, { level: 1 });
}

function rewritten(text: string, ways: ReadonlySet<Rewriting>, random: Seeded): string {
  let out = text.replace(TAG, (_, name: string, raw: string, slash: string) => {
    const attributes = [...raw.matchAll(ATTRIBUTE)].map(
      ([, key, double, single]) => [key!, double ?? single ?? ""] as const,
    );
    if (ways.has("order")) attributes.sort(() => random.between(-1, 1));
    const blank = (): string => (ways.has("blanks") ? random.pick([" ", "\n ", "\t", "\r\n"]) : " ");
    const written = attributes.map(([key, value]) => {
      const equals = ways.has("blanks") && random.chance(0.3) ? " = " : "=";
      const isSingle = ways.has("quotes") && random.chance(0.5);
      const quoted = isSingle
        ? `'${value.replaceAll("'", "&apos;")}'`
        : `"${value.replaceAll('"', "&quot;")}"`;
      return blank() + key + equals + quoted;
    });
    const end = ways.has("blanks") ? random.pick(["", " ", "\n"]) : "";
    if (slash !== "" && ways.has("open") && random.chance(0.5))
      return `<${name}${written.join("")}${end}></${name}${end}>`;
    return `<${name}${written.join("")}${end}${slash}>`;
  });
  if (ways.has("comments"))
    out = out.replace(/(<\/(?:\w+:)?(?:row|c|si|xf|font|fill|sheet)>)/g, (close) =>
      random.chance(0.2)
        ? close + random.pick(["<!-- x -->", '<!-- <row r="1"> </row> -->', "\n", "<!--<si>-->"])
        : close,
    );
  if (ways.has("cdata"))
    out = out.replace(
      /(<(?:\w+:)?[tv](?: [^>]*)?>)([^<&]+)(<\/)/g,
      (whole, open: string, inner: string, close: string) =>
        random.chance(0.3) ? `${open}<![CDATA[${inner}]]>${close}` : whole,
    );
  if (ways.has("references"))
    out = out.replace(
      /(<(?:\w+:)?[tv](?: [^>]*)?>)([^<&]+)(<\/)/g,
      (whole, open: string, inner: string, close: string) =>
        random.chance(0.3)
          ? open + [...inner].map((each) => `&#${each.codePointAt(0)};`).join("") + close
          : whole,
    );
  return ways.has("mark") ? `\ufeff${out}` : out;
}
