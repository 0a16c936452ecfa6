/**
 * The one source that both manifests are made of. Changing `id` makes another add-in of it; changing
 * `namespace` breaks every formula in users' workbooks.
 */
export const ADDIN = {
  id: "8d1f6c0b-52f0-4a4c-9c1d-0a6f3f1e7b52",
  name: "Barwright",
  provider: "Barwright",
  namespace: "BAR",
  locale: "en-US",
  description:
    "Checks bar schedules, works out cutting lengths, masses and bending set-up in worksheet formulas, and marks what is unsafe or cannot be bent. Nothing leaves the workbook.",
  shortDescription: "Checks bar schedules and works out cutting and bending in formulas",
  ribbon: {
    group: "Reinforcement",
    button: "Bar schedule",
    title: "Bar schedule",
    tip: "Open the pane that checks the bar schedule on this sheet, row by row.",
  },
  welcome: {
    title: "Barwright is on the Home tab",
    text: "Choose Bar schedule on the Home tab to check the sheet, or type =BAR. in a cell for the functions.",
  },
  /** the least that Excel must have; later sets are asked for where they are used */
  requirements: [
    { set: "SharedRuntime", version: "1.1" },
    { set: "CustomFunctionsRuntime", version: "1.3" },
    { set: "ExcelApi", version: "1.9" },
  ],
  accent: "#1f5f6b",
} as const;

/** Places below the address that the add-in is served from. */
export const PLACES = {
  page: "taskpane/taskpane.html",
  script: "taskpane/functions.js",
  metadata: "taskpane/functions.json",
  help: "taskpane/functions.html",
  icons: "taskpane/icons",
} as const;
