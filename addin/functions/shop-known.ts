import type { FunctionEnvironment } from "../../core/formulas/worksheet-function";

/** Benders and rates of the workbook's Shop sheet; without benders any name of a machine is taken. */
type OfShop = Pick<FunctionEnvironment, "machines" | "rates">;

/** ms; one recalculation of any number of cells reads the sheet once */
const FRESH = 1_000;

let read: () => Promise<OfShop> = async () => ({});
let known: { readonly shop: Promise<OfShop>; readonly until: number } | null = null;

/** Tells the functions how the workbook's Shop sheet is read. */
export function readShopBy(reader: () => Promise<OfShop>): void {
  read = reader;
  known = null;
}

/** The Shop sheet says something else now; true where a function had asked what it says. */
export function forgetShop(): boolean {
  const wasAsked = known !== null;
  known = null;
  return wasAsked;
}

/** What a function goes by that names a machine or needs rates. Rejects where the Shop sheet cannot be read. */
export function shopKnown(now = Date.now()): Promise<OfShop> {
  if (known === null || now > known.until) known = { shop: read(), until: now + FRESH };
  return known.shop;
}
