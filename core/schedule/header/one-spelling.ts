/** One spelling for the many of a word: "Qty per mbr" is "qty per member". */
const ONE_SPELLING: ReadonlyMap<string, string> = new Map(
  [
    ["dia", "diam", "diameter", "diametre", "ø", "phi", "φ"],
    ["no", "nos", "nr", "num", "number", "numbers"],
    ["qty", "quantity", "quant", "qnty", "qnt"],
    ["member", "members", "mbr", "mbrs", "memb", "membs", "mem", "mems"],
    ["element", "elements", "elem", "elems", "elt", "elts"],
    ["mass", "weight", "wt", "wgt", "weights"],
    ["length", "lengths", "len", "lg", "lgth", "lgt", "long"],
    ["reqd", "required", "req"],
    ["and", "&", "+"],
    ["pcs", "pc", "pieces", "piece"],
    ["metre", "meter", "mtr", "rmt"],
    ["dim", "dims", "dimension", "dimensions"],
    ["remarks", "remark"],
  ].flatMap(([one = "", ...others]) => [one, ...others].map((other): [string, string] => [other, one])),
);

/** A heading, lower case and without points, in the one spelling of its words. */
export function oneSpelling(text: string): string {
  return text
    .replace(/(?<=\p{L}{2})\s*\/\s*(?=\p{L}{2})/gu, " per ")
    .split(" ")
    .map((word) => ONE_SPELLING.get(word) ?? word)
    .join(" ");
}
