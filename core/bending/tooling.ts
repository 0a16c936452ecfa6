import { defineRefusal, type Refusal } from "../units/refusal";
import { toTenth } from "../units/to-tenth";
import type { Machine } from "./machine";

/** A machine dressed for one bar: everything that geometry needs is known. */
export interface Tooling {
  readonly machine: string;
  /** mm, all of them */
  readonly diameter: number;
  readonly former: number;
  readonly pin: number;
  readonly orbitRadius: number;
  readonly backRestDistance: number;
  /** mm along the leg, from the former's tangent point to where the pin pushes */
  readonly pinLever: number;
  readonly largestAngle: number | null;
  readonly guardRadius: number | null;
}

const machineUnknown = defineRefusal(
  "machine-not-known",
  "not-held",
  "{what} of {machine} is not written down: measure it and enter it on the Shop sheet",
);
const formerNotInRack = defineRefusal(
  "former-not-in-rack",
  "value",
  "{machine} has no former of {former} mm: the rack holds {held} mm",
);
const pinTouchesFormer = defineRefusal(
  "pin-touches-former",
  "value",
  "on {machine} a bar of {diameter} mm does not pass between a former of {former} mm and a pin of {pin} mm on an orbit of {orbit} mm: half the former, the bar and half the pin make {needed} mm",
);

/**
 * The machine dressed with a former of its rack and its smallest pin. Refuses what is not written down
 * (`not-held`: unsure, no pass), a former that is not in the rack, and a bar that does not pass the pin.
 */
export function toolingOf(machine: Machine, bar: { diameter: number; former: number }): Tooling | Refusal {
  const { name, orbitRadius, backRestDistance } = machine;
  const pin = machine.pins === null || machine.pins.length === 0 ? null : Math.min(...machine.pins);
  if (pin === null) return machineUnknown({ what: "the pin's diameter", machine: name });
  if (orbitRadius === null) return machineUnknown({ what: "the pin's orbit radius", machine: name });
  if (backRestDistance === null) return machineUnknown({ what: "the back-rest's distance", machine: name });
  if (machine.formers !== null && !machine.formers.some((held) => Math.abs(held - bar.former) < 0.5)) {
    return formerNotInRack({
      machine: name,
      former: toTenth(bar.former),
      held: machine.formers.map(toTenth).join(", "),
    });
  }
  const across = bar.former / 2 + bar.diameter + pin / 2;
  if (across >= orbitRadius) {
    return pinTouchesFormer({
      machine: name,
      diameter: toTenth(bar.diameter),
      former: toTenth(bar.former),
      pin: toTenth(pin),
      orbit: toTenth(orbitRadius),
      needed: toTenth(across),
    });
  }
  const pinLever = Math.sqrt(orbitRadius ** 2 - across ** 2);
  return {
    machine: name,
    diameter: bar.diameter,
    former: bar.former,
    pin,
    orbitRadius,
    backRestDistance,
    pinLever,
    largestAngle: machine.largestAngle,
    guardRadius: machine.guardRadius,
  };
}

/** mm, shortest legs that the tooling can take. */
export interface LeastLegs {
  /** straight of the swinging leg beyond the bend, so that the pin stays on it */
  readonly straight: number;
  /** the same as the outside dimension of a leg at a right angle */
  readonly outside: number;
  /** straight of the held leg, so that the back-rest bears on it */
  readonly held: number;
  /** clear inside width of a closed link whose last bend still closes over the tooling */
  readonly insideOfLink: number;
}

/** Least legs by the geometry of former, pin and back-rest (derived). */
export function leastLegs(tooling: Tooling): LeastLegs {
  const straight = tooling.pinLever + pinMargin(tooling.diameter);
  return {
    straight,
    outside: straight + tooling.former / 2 + tooling.diameter,
    held: tooling.backRestDistance,
    insideOfLink: tooling.former + tooling.pin + 2 * tooling.diameter,
  };
}

/** mm of leg that stand out beyond the pin. */
export function pinMargin(diameter: number): number {
  return Math.max(10, diameter / 2);
}
