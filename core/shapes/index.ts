export { type CutLength, cutLength } from "./cut-length";
export { type DevelopedLength, developedLength, developPath } from "./developed-length";
export type { BarPath, Leg, PlanarPath, Turn } from "./path";
export { type ResolvedShape, resolveShape, type ShapeQuestion } from "./resolve-shape";
export { type LimitJudgement, shapeLimits } from "./shape-limits";
export { dimOf } from "./shape-values";
