/** The name of the sheet on which bars that were measured are kept. */
export const INSPECTION_SHEET = "Inspection";

/** Heads of its columns, in their order. */
export const INSPECTION_COLUMNS = {
  sheet: "on sheet",
  row: "its row",
  mark: "bar",
  what: "what is measured",
  wanted: "wanted",
  least: "least",
  most: "most",
  measured: "measured",
  by: "by",
  on: "on",
} as const;
