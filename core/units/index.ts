export { fromMillimetres, toMillimetres } from "./convert-length";
export type { LengthUnit } from "./length-unit";
export { parseLength } from "./parse-length";
export { printLength } from "./print-length";
export type { RefusalKind } from "./refusal";
export { isRefusal, Refusal, refusalText } from "./refusal";
