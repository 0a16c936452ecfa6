/** Defined names under which a workbook keeps its settings; Excel, workbench and command line read the same. */
export const SETTING_NAMES = {
  standard: "Barwright.Standard",
  /** JSON, see `core/audit/audit-settings.ts` */
  audit: "Barwright.Audit",
} as const;
