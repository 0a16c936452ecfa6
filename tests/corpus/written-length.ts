import type { WrittenLength } from "./recipe-columns";

/** Metres with so many decimals, as a number. */
export function metres(decimals: number): WrittenLength {
  return (mm) => Number((mm / 1000).toFixed(decimals));
}

/** Metres as a text with a decimal comma: "3,45". */
export function metresWithComma(decimals: number): WrittenLength {
  return (mm) => (mm / 1000).toFixed(decimals).replace(".", ",");
}

export const centimetres: WrittenLength = (mm) => Number((mm / 10).toFixed(1));

const HALVES_AND_QUARTERS = ["", " 1/4", " 1/2", " 3/4"] as const;

/** Feet, inches and quarters: 3'-4 1/2". */
export const feetAndInches: WrittenLength = (mm) => {
  const quarters = Math.round((mm / 25.4) * 4);
  const feet = Math.floor(quarters / 48);
  const inches = Math.floor((quarters % 48) / 4);
  return `${feet}'-${inches}${HALVES_AND_QUARTERS[quarters % 4]}"`;
};

/** Thousands parted by a blank: "1 250". */
export const withBlankThousands: WrittenLength = (mm) => String(mm).replace(/(\d)(?=(\d{3})+$)/g, "$1 ");
