export type { Priced } from "./price-bars";
export type { Rates } from "./rates";
export { readRates } from "./read-rates";
