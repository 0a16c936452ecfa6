export { type RowMass, rowMasses } from "../../core/totals";
