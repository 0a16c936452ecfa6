import type { BarsAtOnce } from "../bending/bars-at-once";

/** Why a bar cannot be made on a bender as it is scheduled. Lengths in mm, angles in degrees. */
export type MachineFault =
  | { readonly kind: "plate"; readonly plate: BarsAtOnce; readonly sure: boolean }
  | { readonly kind: "former"; readonly former: number; readonly held: readonly number[] }
  | {
      readonly kind: "angle";
      readonly bend: number;
      readonly wanted: number;
      readonly bentTo: number;
      readonly largest: number;
      readonly sure: boolean;
    }
  | { readonly kind: "pin"; readonly reason: string }
  | { readonly kind: "link"; readonly inside: number; readonly least: number }
  | {
      readonly kind: "hook";
      readonly bend: number;
      readonly tail: number;
      readonly lean: number;
      readonly former: number;
      readonly sure: boolean;
    }
  | { readonly kind: "leg"; readonly leg: string; readonly length: number; readonly least: number }
  | { readonly kind: "order"; readonly reason: string; readonly sure: boolean }
  | { readonly kind: "swing"; readonly reach: number; readonly guard: number }
  | { readonly kind: "larger former"; readonly former: number; readonly larger: number };

/** In the order in which they are met: the later the first fault, the nearer the machine comes. */
const STAGES: readonly MachineFault["kind"][] = [
  "plate",
  "former",
  "angle",
  "pin",
  "link",
  "hook",
  "leg",
  "order",
  "swing",
  "larger former",
];

/** The place of the first fault in the course of the work; higher comes nearer to the finished bar. */
export function stageOf(faults: readonly MachineFault[]): number {
  return Math.min(...faults.map(({ kind }) => STAGES.indexOf(kind)));
}
