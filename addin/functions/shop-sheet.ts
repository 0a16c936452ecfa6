import type { FunctionEnvironment } from "../../core/formulas/worksheet-function";
import { readOnce } from "./read-once";

/** Benders and rates of the workbook's Shop sheet; without benders any name of a machine is taken. */
type OfShop = Pick<FunctionEnvironment, "machines" | "rates">;

/** What a function goes by that names a machine or needs rates. */
export const shopSheet = readOnce<OfShop>(async () => ({}));
