import type { Machine } from "../bending/machine";

/** A bender of which nothing but its name is written down. */
export function blankMachine(name: string): Machine {
  return {
    name,
    rated: [],
    formers: null,
    pins: null,
    orbitRadius: null,
    backRestDistance: null,
    largestAngle: null,
    guardRadius: null,
  };
}
