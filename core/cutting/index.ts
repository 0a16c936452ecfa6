export { type CutListRow, cutList, type MarkedPiece, type StopSetting } from "./cut-list";
export type { CuttingPattern, CuttingPlan } from "./cutting-plan";
export type { CuttingQuestion, Piece, Stock } from "./cutting-question";
export { planCutting } from "./plan-cutting";
