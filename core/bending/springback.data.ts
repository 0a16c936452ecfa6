import type { Cited } from "../standards/citation";

/** Young's modulus of reinforcing steel, MPa. */
export const ELASTIC_MODULUS: Cited<number> = {
  value: 200000,
  cite: {
    document: "EN 1992-1-1",
    edition: "2004",
    clause: "3.2.7(4)",
    provenance: "memory",
  },
};

/** Sum of both levers (former to pin, former to back-rest) where the machine's are not known, mm. */
export const USUAL_LEVERS: Cited<number> = {
  value: 100,
  cite: { document: "levers of central-former benders", provenance: "memory" },
};

/** Share of a bar's half depth above which it is a rolled curve, no bend: radius is logged there, not angle. */
export const LARGEST_CORE_OF_A_BEND: Cited<number> = {
  value: 0.15,
  cite: { document: "elastic core of a bent round bar", provenance: "derived" },
};

/** Why a real bar comes back further than plane sections, the nominal yield and no hardening say. */
export const SPRINGBACK_LIMITS: Cited<readonly string[]> = {
  value: [
    "lower bound: real yield is usually 5 to 15 % above nominal, and hardening and a softer unloading modulus add a half to a whole of it again",
    "the legs' own flexure, play in the machine and its zero are not in it",
    "ribs, twist and cold-straightening of coil are not in it",
    "only a trial bend of the same bars on the same machine is to be relied on",
  ],
  cite: { document: "elastic-plastic bending of a round bar", provenance: "derived" },
};
