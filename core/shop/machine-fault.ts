import type { BarsAtOnce } from "../bending/bars-at-once";
import type { Refusal } from "../units/refusal";

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
  | { readonly kind: "swing"; readonly reach: number; readonly guard: number; readonly sure: boolean }
  /** no hindrance: the bar is bent about the next larger former */
  | { readonly kind: "larger former"; readonly former: number; readonly larger: number };

/** Bends in several planes, too many of them, a rolled curve, too many different shapes in one workbook. */
export type NotSearched = "planes" | "bends" | "rolled" | "shapes";

/** What is not known of a bender, or was not looked at, so that no fault is no pass. */
export type MachineUnknown =
  | { readonly kind: "plate" | "tooling"; readonly reason: Refusal }
  | { readonly kind: "rack" | "largest angle" | "guard" }
  | { readonly kind: "not searched"; readonly why: NotSearched };

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

/** True for what keeps a bar from being made: all but another former that does as well. */
export function isHindrance({ kind }: MachineFault): boolean {
  return kind !== "larger former";
}
