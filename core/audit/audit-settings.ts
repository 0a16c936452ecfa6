import { z } from "zod";
import { readOptions } from "../schedule/read-options";
import { NO_CHANGED_LIMITS } from "./limits";

const limit = z.number().positive().finite().nullable().default(null);

/** What a workbook keeps of its user's decisions on the audit: one JSON text in the file. */
export const auditSettings = z.object({
  /** codes of rules not run */
  rulesOff: z.array(z.string()).default([]),
  limits: z
    .object({
      handLift: limit,
      hoist: limit,
      stockLength: limit,
      transportWidth: limit,
      accessWidth: limit,
    })
    .default(NO_CHANGED_LIMITS),
  /** findings the user has looked at and accepts */
  silences: z
    .array(
      z.object({
        code: z.string(),
        sheet: z.string(),
        /** see `rowKey` of row-facts.ts; null for a sheet-wide finding */
        key: z.string().nullable(),
        reason: z.string().min(1),
      }),
    )
    .default([]),
  /** what the user corrected or confirmed of the reading, by sheet */
  readings: z.array(readOptions.extend({ sheet: z.string() })).default([]),
});

export interface AuditSettings extends z.infer<typeof auditSettings> {
  /** What could not be read of the stored settings; its defaults stand in. Never stored itself. */
  readonly problem?: string;
}

export type Silence = AuditSettings["silences"][number];

/** Settings of a workbook that keeps none. */
export const DEFAULT_SETTINGS: AuditSettings = auditSettings.parse({});
