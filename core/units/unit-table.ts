/** mm in one of each unit of length; the inch and the foot are the international ones. */
export const MM_PER_UNIT = { mm: 1, cm: 10, dm: 100, m: 1000, in: 25.4, ft: 304.8 } as const;

/** kg in one of each unit of mass. */
export const KG_PER_UNIT = { kg: 1, t: 1000, lb: 0.45359237 } as const;
