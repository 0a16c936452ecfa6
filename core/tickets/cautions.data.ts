import type { Cited } from "../standards/citation";

/** When a caution is printed; `always` is on every ticket. */
export type CautionCase =
  | "always"
  | "bent"
  | "cut"
  | "swing"
  | "several at once"
  | "no trial"
  | "short piece"
  | "long bar"
  | "heavy bar"
  | "turned over"
  | "starter"
  | "thick or strong"
  | "cold"
  | "hook";

/** A caution in the words of the ticket; `{name}` stands for a value of this bar. */
export interface CautionText {
  readonly when: CautionCase;
  readonly text: string;
}

/** mm and kg at which a case begins. */
export const CAUTION_LIMITS: Cited<{
  readonly shortPiece: number;
  readonly longBar: number;
  readonly thick: number;
  readonly strong: number;
}> = {
  value: { shortPiece: 400, longBar: 6000, thick: 32, strong: 600 },
  cite: {
    document: "safety rules for bar cutting and bending machines",
    clause: "short pieces as in rules after JGJ 33",
    provenance: "common practice",
  },
};

const PRACTICE = { document: "bar bending and cutting", provenance: "common practice" } as const;
const BENDERS = {
  document: "BGHM Arbeitsschutz Kompakt 046, rebar bending machines",
  provenance: "published",
  seen: "leaflet of the German trade association for wood and metal",
} as const;
const MACHINERY = {
  document: "JGJ 33",
  clause: "machines that cut and bend bar",
  provenance: "published",
  seen: "public safety rules for rebar machines after JGJ 33",
} as const;

/** The usual cautions. They do not replace the machine's manual, local rules or instruction. */
export const CAUTIONS: readonly Cited<CautionText>[] = [
  {
    value: {
      when: "always",
      text: "The machine's plate and manual, and local rules, govern over this ticket.",
    },
    cite: PRACTICE,
  },
  {
    value: {
      when: "bent",
      text: "Before tooling goes on: electrical connection by an electrician, direction of rotation checked empty, then a dry run.",
    },
    cite: PRACTICE,
  },
  {
    value: {
      when: "bent",
      text: "Guards closed. Hands as far from former and pins as the machine's manual says; stop and isolate before changing a former or pin.",
    },
    cite: BENDERS,
  },
  {
    value: {
      when: "swing",
      text: "Nobody within {swing} of the former while it turns: fence the circle off first.",
    },
    cite: BENDERS,
  },
  {
    value: {
      when: "several at once",
      text: "Several bars only in a holder, never held together by hand, and never more than the plate says.",
    },
    cite: {
      document: "BG BAU accident bulletin: caught at the bending machine",
      provenance: "published",
      seen: "bulletin of the German trade association for building",
    },
  },
  {
    value: {
      when: "no trial",
      text: "Trial bend: scrap of the same heat, size and former; let go, measure the straight legs, write it on the Shop sheet.",
    },
    cite: PRACTICE,
  },
  {
    value: {
      when: "turned over",
      text: "Turning over needs {height} of free height and a second person where the bar is long.",
    },
    cite: { document: "geometry of the bent part", provenance: "derived" },
  },
  {
    value: {
      when: "hook",
      text: "Hook of 180: fingers out of the closing gap; stop before the tail meets the held leg.",
    },
    cite: PRACTICE,
  },
  {
    value: {
      when: "thick or strong",
      text: "Eye protection, stand clear of the plane of the bend: a bar can break. Stop the machine, then look at the first bend's outside with a lens.",
    },
    cite: PRACTICE,
  },
  {
    value: {
      when: "cold",
      text: "{temperature} in the shop is below the {leave} under which cold bending needs leave: stop, and ask the designer.",
    },
    cite: { document: "the standard's limit of cold bending", provenance: "memory" },
  },
  {
    value: {
      when: "cut",
      text: "Cutting: bending tooling off first, rear support set to the bar before shearing, guard closed, nobody in line.",
    },
    cite: PRACTICE,
  },
  {
    value: {
      when: "short piece",
      text: "Piece under {short}: hold it by tongs or a sleeve, hand at least 150 mm from the blade, and further where the machine's manual says so.",
    },
    cite: MACHINERY,
  },
  {
    value: {
      when: "long bar",
      text: "Bar over {long}: level supports, and a trained helper who follows the operator's word.",
    },
    cite: MACHINERY,
  },
  {
    value: {
      when: "heavy bar",
      text: "{mass} a bar is above {lift}: plan the lift, two persons or a hoist; never lift by the tying wire.",
    },
    cite: {
      document: "HSE manual handling guideline figure, a filter and no safe weight",
      provenance: "memory",
      conflict: "16 to 55 kg by country and person",
    },
  },
  {
    value: { when: "starter", text: "Cap the ends that stand up, hooks laid downwards in the stack." },
    cite: {
      document: "29 CFR 1926.701(b)",
      provenance: "published",
      seen: "the regulation's text on protruding reinforcing steel",
    },
  },
];
