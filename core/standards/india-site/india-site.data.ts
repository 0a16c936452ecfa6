import type { Cited, PrintedTable } from "../citation";
import type { LengthRounding, SiteDeductions } from "../port";
import type { HookRow } from "../shared/standard-tables";

/** In bar diameters; a hook adds 9d on most pages, 10d on others, and 75 mm at least. */
export const SITE_DEDUCTIONS: Cited<SiteDeductions> = {
  value: {
    bends: [
      { angle: 45, perDiameter: 1 },
      { angle: 90, perDiameter: 2 },
      { angle: 135, perDiameter: 3 },
      {
        angle: 180,
        perDiameter: 4,
        cite: { document: "Indian site practice, 180 degrees", provenance: "common practice" },
      },
    ],
    hook: { perDiameter: 9, perDiameterElsewhere: 10, least: 75 },
  },
  cite: {
    document: "Indian site practice",
    clause: "bend deductions and hook allowances",
    provenance: "published",
    seen: "most Indian teaching pages on bar bending schedules, such as wecivilengineers.wordpress.com 2018/09/07 and sketchup3dconstruction.com",
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
