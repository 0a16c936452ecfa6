/** Defined names under which a workbook keeps its settings; Excel, workbench and command line read the same. */
export const SETTING_NAMES = {
  standard: "Barwright.Standard",
  /** JSON, see `core/audit/audit-settings.ts` */
  audit: "Barwright.Audit",
  /** JSON, cut lists whose remnants stand on the Shop sheet: see `core/cutting/booked-cuts.ts` */
  cutLists: "Barwright.CutLists",
} as const;
