import * as z from "zod";
import { readOptions } from "../schedule/read-options";
import { NO_CHANGED_LIMITS } from "./limits";

/** Who decided, why, and when as YYYY-MM-DD; blank where the workbook does not say. */
const decided = { reason: z.string().default(""), by: z.string().default(""), date: z.string().default("") };

const ruleOff = z.preprocess(
  // as workbooks kept it before a reason was asked for
  (kept) => (typeof kept === "string" ? { code: kept } : kept),
  z.object({ code: z.string(), ...decided }),
);

const changedLimit = z.preprocess(
  (kept) => (typeof kept === "number" ? { value: kept } : kept),
  z
    .object({ value: z.number().positive().finite(), ...decided })
    .nullable()
    .default(null),
);

const waiver = z.object({
  code: z.string(),
  sheet: z.string(),
  /** see `rowKey` of row-facts.ts; null for a sheet-wide finding */
  key: z.string().nullable(),
  ...decided,
  reason: z.string().min(1),
});

/** What a workbook keeps of its user's decisions on the audit: one JSON text in the file. */
export const auditSettings = z.object({
  /** rules of which nothing is told but what is unsafe */
  rulesOff: z.array(ruleOff).default([]),
  limits: z
    .object({
      handLift: changedLimit,
      hoist: changedLimit,
      stockLength: changedLimit,
      transportWidth: changedLimit,
      accessWidth: changedLimit,
    })
    .default(NO_CHANGED_LIMITS),
  /** findings that somebody has looked at and accepts */
  waivers: z.array(waiver).default([]),
  /** what the user corrected or confirmed of the reading, by sheet */
  readings: z.array(readOptions.extend({ sheet: z.string() })).default([]),
});

export interface AuditSettings extends z.infer<typeof auditSettings> {
  /** What could not be read of the stored settings; its defaults stand in. Never stored itself. */
  readonly problem?: string;
}

/** One finding accepted, for a row or for the whole sheet. */
export type Waiver = AuditSettings["waivers"][number];

export type RuleOff = AuditSettings["rulesOff"][number];

/** Why, by whom and when something was decided. */
export type Decided = Pick<Waiver, "reason" | "by" | "date">;

/** Settings of a workbook that keeps none. */
export const DEFAULT_SETTINGS: AuditSettings = auditSettings.parse({});
