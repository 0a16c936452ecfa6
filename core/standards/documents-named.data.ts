/** A document that may be named where the other is in force: a design code beside the document of the bars. From memory. */
export const NAMED_BESIDE: readonly (readonly [named: string, inForce: string])[] = [
  ["EC2", "BS8666"],
  ["EC2", "BS4466"],
  ["EC2", "DIN-EC2"],
  ["EC2", "ISO3766"],
  ["ISO3766", "EC2"],
  ["ISO3766", "DIN-EC2"],
  ["BS8666", "EC2"],
  ["IS2502", "INDIA-SITE"],
];

/** Words by which a list calls itself where bars go by a document of its own; in lower case, from memory. */
export const LIST_WORDS: readonly { readonly id: string; readonly words: readonly string[] }[] = [
  {
    id: "DIN-EC2:2013",
    words: ["stahlliste", "betonstahl", "biegeliste", "eisenliste", "stabliste", "bewehrungsliste"],
  },
  { id: "GB50204:2015", words: ["钢筋表", "钢筋明细", "下料单"] },
  { id: "JASS5:2018", words: ["鉄筋"] },
];

/** Characters of a text that is looked through. */
export const LONGEST_TEXT = 300;
