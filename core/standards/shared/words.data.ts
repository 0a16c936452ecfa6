/** What users write for a use, and the use it is. */
export const USE_WORDS: Readonly<Record<string, string>> = {
  main: "main",
  bar: "main",
  link: "link",
  links: "link",
  stirrup: "link",
  stirrups: "link",
  tie: "link",
  ties: "link",
  fitment: "link",
  fitments: "link",
  ligature: "link",
};

/** What users write for a coating; "none" is an uncoated bar. */
export const COATING_WORDS: Readonly<Record<string, string>> = {
  none: "none",
  no: "none",
  bare: "none",
  black: "none",
  uncoated: "none",
  galvanized: "galvanized",
  galvanised: "galvanized",
  galv: "galvanized",
  zinc: "galvanized",
  epoxy: "epoxy",
  "epoxy-coated": "epoxy",
  "epoxy coated": "epoxy",
};
