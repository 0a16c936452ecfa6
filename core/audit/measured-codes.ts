/** Codes of what was measured, by what it is called; they are never reused. */
export const MEASURED_CODES = {
  "out-of-tolerance": "MEASURED101",
  "schedule-changed": "MEASURED102",
  "not-read": "MEASURED103",
  "bar-not-found": "MEASURED104",
} as const;
