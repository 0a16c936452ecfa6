/** mm: finer than anything that is typed, wider than float noise out of inches or metres. */
const CLOSE = 0.01;

/** True where a length is no multiple of `step`. */
export function offStep(length: number, step: number): boolean {
  return step > 0 && Math.abs(length - Math.round(length / step) * step) > CLOSE;
}

export function toNearest(length: number, step: number): number {
  return Math.max(step, Math.round(length / step) * step);
}

export function roundedUp(length: number, step: number): number {
  return step > 0 ? Math.ceil(length / step - 1e-9) * step : length;
}
