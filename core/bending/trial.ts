/** Cut from straight stock, or straightened from a coil. */
export type BarForm = "bar" | "coil";

/** One bar bent to an angle, let go and measured. */
export interface Trial {
  /** row of the block it was read from, from 0 */
  readonly row: number;
  readonly machine: string | null;
  /** as typed */
  readonly size: string;
  /** mm */
  readonly diameter: number;
  /** mm */
  readonly former: number;
  readonly grade: string | null;
  /** MPa, nominal */
  readonly yield: number;
  readonly form: BarForm | null;
  readonly heat: string | null;
  readonly date: string | null;
  /** degrees of bend */
  readonly bentTo: number;
  /** degrees of bend that remained */
  readonly released: number;
}

/** Degrees by which a trial came back. */
export function trialSpringback(trial: Trial): number {
  return trial.bentTo - trial.released;
}
