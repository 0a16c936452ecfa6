import type { Citation, Cited, PrintedTable } from "../citation";
import type { LengthRounding, SiteDeductions } from "../port";
import type { HookRow } from "../shared/standard-tables";

const HOOK_180: Citation = {
  document: "Indian site practice, hook allowances",
  provenance: "published",
  seen: "civilsnapshot.com important-standards-used-in-bends-hooks: 9d or 75 mm",
  conflict: "others add 10d",
};

/** In bar diameters. 4d is the former whose right angle costs about the 2d that is deducted. */
export const SITE_DEDUCTIONS: Cited<SiteDeductions> = {
  value: {
    bends: [
      { angle: 45, perDiameter: 1 },
      { angle: 90, perDiameter: 2 },
      { angle: 135, perDiameter: 3 },
      {
        angle: 180,
        perDiameter: 4,
        cite: {
          document: "Indian site practice, 180 degrees",
          provenance: "common practice",
          conflict: "wecivilengineers.wordpress.com deducts 1d; 4d, that goes on as 1d, 2d, 3d do, is held",
        },
      },
    ],
    hooks: [
      {
        turn: 90,
        perDiameter: 9,
        cite: { document: "Indian site practice, taken as the hook of 180", provenance: "common practice" },
      },
      { turn: 135, perDiameter: 10 },
      { turn: 180, perDiameter: 9, cite: HOOK_180 },
    ],
    leastHook: 75,
    formerPerDiameter: 4,
  },
  cite: {
    document: "Indian site practice",
    clause: "bend deductions and hook allowances",
    provenance: "published",
    seen: "wecivilengineers.wordpress.com 2018/09/07; sketchup3dconstruction.com; civiltutorofficial, paramvisions, civilatwork: worked links with 10d for 135 degrees",
    conflict:
      "not in IS 2502, and not geometry: only 2d for 90 degrees is near it, for legs to the outside; with legs to the centre line each bend is cut about 0.9d short",
  },
};

/** The 135 degree end that sites make also where no link is said; its length is the hook's allowance. */
export const SITE_HOOKS: PrintedTable<HookRow> = {
  cite: { document: "Indian site practice, 135 degree end of 10d", provenance: "common practice" },
  rows: [{ uses: ["main"], turns: [135], extensionPerDiameter: 10, leastExtension: 75 }],
};

export const LENGTH_ROUNDING: LengthRounding = {
  step: 0,
  direction: "up",
  cite: { document: "Indian site practice, not rounded", provenance: "common practice" },
};
