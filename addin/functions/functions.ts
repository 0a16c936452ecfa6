/* biome-ignore-all lint/suspicious/noExplicitAny: functions.json knows a range of anything only as any[][] */
// Generated from core/formulas: npm run generate.
import { callFunction } from "./call-function";

/**
 * Developed length on the centre line by exact geometry, unrounded, in the standard's unit
 * @customfunction DEVELOPED
 * @param shape Shape code of the standard, or a path of legs and turns such as 500 +90 1200 -45 300
 * @param size Bar size, such as 16, H16, #5 or 15M
 * @param [dims] Dimensions by letter: the first column is A, the second B, and so on; empty for a path
 * @param [standard] Standard and edition, such as BS8666:2005; the workbook's own where it is left out
 * @param [former] Former diameter in the standard's unit; the standard's least where it is left out
 * @param [use] main or link, or another use that the standard distinguishes
 * @returns A block of cells
 */
export async function developed(
  shape: any[][],
  size: any[][],
  dims?: any[][],
  standard?: any[][],
  former?: any[][],
  use?: any[][],
): Promise<any[][]> {
  return callFunction("DEVELOPED", [shape, size, dims, standard, former, use]);
}

/**
 * Length to schedule and cut: the standard's printed formula and rounding, else by geometry
 * @customfunction CUTLENGTH
 * @param shape Shape code of the standard, or a path of legs and turns such as 500 +90 1200 -45 300
 * @param size Bar size, such as 16, H16, #5 or 15M
 * @param [dims] Dimensions by letter: the first column is A, the second B, and so on; empty for a path
 * @param [standard] Standard and edition, such as BS8666:2005; the workbook's own where it is left out
 * @param [former] Former diameter in the standard's unit; the standard's least where it is left out
 * @param [use] main or link, or another use that the standard distinguishes
 * @returns A block of cells
 */
export async function cutlength(
  shape: any[][],
  size: any[][],
  dims?: any[][],
  standard?: any[][],
  former?: any[][],
  use?: any[][],
): Promise<any[][]> {
  return callFunction("CUTLENGTH", [shape, size, dims, standard, former, use]);
}

/**
 * Mass per metre as the standard's table prints it, kg/m, or lb/ft where asked
 * @customfunction MASS
 * @param size Bar size, such as 16, H16, #5 or 15M
 * @param [standard] Standard and edition, such as BS8666:2005; the workbook's own where it is left out
 * @param [unit] kg/m or lb/ft; kg/m where it is left out
 * @returns A block of cells
 */
export async function mass(size: any[][], standard?: any[][], unit?: any[][]): Promise<any[][]> {
  return callFunction("MASS", [size, standard, unit]);
}

/**
 * Nominal diameter of a bar size, always mm
 * @customfunction DIAMETER
 * @param size Bar size, such as 16, H16, #5 or 15M
 * @param [standard] Standard and edition, such as BS8666:2005; the workbook's own where it is left out
 * @returns A block of cells
 */
export async function diameter(size: any[][], standard?: any[][]): Promise<any[][]> {
  return callFunction("DIAMETER", [size, standard]);
}

/**
 * Area of one bar as the standard's table prints it, mm2
 * @customfunction AREA
 * @param size Bar size, such as 16, H16, #5 or 15M
 * @param [standard] Standard and edition, such as BS8666:2005; the workbook's own where it is left out
 * @returns A block of cells
 */
export async function area(size: any[][], standard?: any[][]): Promise<any[][]> {
  return callFunction("AREA", [size, standard]);
}

/**
 * Minimum former diameter for bending, in the standard's unit
 * @customfunction FORMER
 * @param size Bar size, such as 16, H16, #5 or 15M
 * @param [standard] Standard and edition, such as BS8666:2005; the workbook's own where it is left out
 * @param [use] main or link, or another use that the standard distinguishes
 * @param [coating] none, galvanized or epoxy
 * @param [grade] Grade by name or letter; the size's own letter where it is left out
 * @returns A block of cells
 */
export async function former(
  size: any[][],
  standard?: any[][],
  use?: any[][],
  coating?: any[][],
  grade?: any[][],
): Promise<any[][]> {
  return callFunction("FORMER", [size, standard, use, coating, grade]);
}

/**
 * Least end leg beyond a bend, as an outside dimension, in the standard's unit
 * @customfunction MINLEG
 * @param size Bar size, such as 16, H16, #5 or 15M
 * @param [standard] Standard and edition, such as BS8666:2005; the workbook's own where it is left out
 * @param [use] main or link, or another use that the standard distinguishes
 * @returns A block of cells
 */
export async function minleg(size: any[][], standard?: any[][], use?: any[][]): Promise<any[][]> {
  return callFunction("MINLEG", [size, standard, use]);
}

/**
 * Compensated angle: the angle to bend to so that the released bar has the wanted angle
 * @customfunction COMPENSATED
 * @param angle Wanted bend angle of the released bar in degrees: 0 is straight, 180 a hook
 * @param size Bar size, such as 16, H16, #5 or 15M
 * @param [standard] Standard and edition, such as BS8666:2005; the workbook's own where it is left out
 * @param [former] Former diameter in the standard's unit; the standard's least where it is left out
 * @param [grade] Grade as the trials name it; the size's letter where it is left out
 * @param [trials] Trial log with its header row: size, former, grade, bent to, released; also machine, form, heat, date
 * @param [method] fit, or plain for the median springback of the same group; fit where it is left out
 * @param [machine] Machine as the trials and the Shop sheet name it
 * @returns A block of cells
 */
export async function compensated(
  angle: any[][],
  size: any[][],
  standard?: any[][],
  former?: any[][],
  grade?: any[][],
  trials?: any[][],
  method?: any[][],
  machine?: any[][],
): Promise<any[][]> {
  return callFunction("COMPENSATED", [angle, size, standard, former, grade, trials, method, machine]);
}

/**
 * Compensated angle with its 90 % interval and what it rests on; a guess is called one
 * @customfunction TRIALFIT
 * @param angle Wanted bend angle of the released bar in degrees: 0 is straight, 180 a hook
 * @param size Bar size, such as 16, H16, #5 or 15M
 * @param [standard] Standard and edition, such as BS8666:2005; the workbook's own where it is left out
 * @param [former] Former diameter in the standard's unit; the standard's least where it is left out
 * @param [grade] Grade as the trials name it; the size's letter where it is left out
 * @param [trials] Trial log with its header row: size, former, grade, bent to, released; also machine, form, heat, date
 * @param [method] fit, or plain for the median springback of the same group; fit where it is left out
 * @param [machine] Machine as the trials and the Shop sheet name it
 * @returns A block of cells
 */
export async function trialfit(
  angle: any[][],
  size: any[][],
  standard?: any[][],
  former?: any[][],
  grade?: any[][],
  trials?: any[][],
  method?: any[][],
  machine?: any[][],
): Promise<any[][]> {
  return callFunction("TRIALFIT", [angle, size, standard, former, grade, trials, method, machine]);
}

/**
 * Bend marks on the straight bar: start, middle, end, stops and compensated angle of each bend
 * @customfunction MARKS
 * @param shape Shape code of the standard, or a path of legs and turns such as 500 +90 1200 -45 300
 * @param size Bar size, such as 16, H16, #5 or 15M
 * @param [dims] Dimensions by letter: the first column is A, the second B, and so on; empty for a path
 * @param [standard] Standard and edition, such as BS8666:2005; the workbook's own where it is left out
 * @param [former] Former diameter in the standard's unit; the standard's least where it is left out
 * @param [grade] Grade as the trials name it; the size's letter where it is left out
 * @param [trials] Trial log with its header row: size, former, grade, bent to, released; also machine, form, heat, date
 * @param [use] main or link, or another use that the standard distinguishes
 * @param [machine] Machine as the trials and the Shop sheet name it
 * @returns A block of cells
 */
export async function marks(
  shape: any[][],
  size: any[][],
  dims?: any[][],
  standard?: any[][],
  former?: any[][],
  grade?: any[][],
  trials?: any[][],
  use?: any[][],
  machine?: any[][],
): Promise<any[][]> {
  return callFunction("MARKS", [shape, size, dims, standard, former, grade, trials, use, machine]);
}

/**
 * Mass of a schedule row from its cut length, kg, or t, lb or ton (2000 lb) where asked
 * @customfunction ROWMASS
 * @param shape Shape code of the standard, or a path of legs and turns such as 500 +90 1200 -45 300
 * @param size Bar size, such as 16, H16, #5 or 15M
 * @param dims Dimensions by letter: the first column is A, the second B, and so on; empty for a path
 * @param count Number of bars in the row
 * @param [standard] Standard and edition, such as BS8666:2005; the workbook's own where it is left out
 * @param [unit] kg, t, lb or ton; kg where it is left out
 * @param [former] Former diameter in the standard's unit; the standard's least where it is left out
 * @param [use] main or link, or another use that the standard distinguishes
 * @returns A block of cells
 */
export async function rowmass(
  shape: any[][],
  size: any[][],
  dims: any[][],
  count: any[][],
  standard?: any[][],
  unit?: any[][],
  former?: any[][],
  use?: any[][],
): Promise<any[][]> {
  return callFunction("ROWMASS", [shape, size, dims, count, standard, unit, former, use]);
}

/**
 * Derivation of a bar's lengths, line by line: formula, numbers, source and how far it may be trusted
 * @customfunction EXPLAIN
 * @param shape Shape code of the standard, or a path of legs and turns such as 500 +90 1200 -45 300
 * @param size Bar size, such as 16, H16, #5 or 15M
 * @param [dims] Dimensions by letter: the first column is A, the second B, and so on; empty for a path
 * @param [standard] Standard and edition, such as BS8666:2005; the workbook's own where it is left out
 * @param [former] Former diameter in the standard's unit; the standard's least where it is left out
 * @param [use] main or link, or another use that the standard distinguishes
 * @returns A block of cells
 */
export async function explain(
  shape: any[][],
  size: any[][],
  dims?: any[][],
  standard?: any[][],
  former?: any[][],
  use?: any[][],
): Promise<any[][]> {
  return callFunction("EXPLAIN", [shape, size, dims, standard, former, use]);
}

/**
 * Tonnes by pour and size: header, one row a pour, one column a size, totals
 * @customfunction TONNAGE
 * @param pours Column of pours
 * @param sizes Column of bar sizes, as many rows
 * @param masses Column of row masses in kg, as many rows
 * @param [unit] t, kg, lb or ton; t where it is left out
 * @returns A block of cells
 */
export async function tonnage(
  pours: any[][],
  sizes: any[][],
  masses: any[][],
  unit?: any[][],
): Promise<any[][]> {
  return callFunction("TONNAGE", [pours, sizes, masses, unit]);
}

/**
 * Cutting plan from stock lengths: one row a pattern, and the bound that no plan can beat
 * @customfunction CUTPLAN
 * @param lengths Column of cut lengths
 * @param counts Column of counts, as many rows
 * @param [standard] Standard and edition; the workbook's own where it is left out
 * @param [sizes] Column of sizes, each planned by itself
 * @param [stock] Stock lengths; or rows of length, count and remnant
 * @returns A block of cells
 */
export async function cutplan(
  lengths: any[][],
  counts: any[][],
  standard?: any[][],
  sizes?: any[][],
  stock?: any[][],
): Promise<any[][]> {
  return callFunction("CUTPLAN", [lengths, counts, standard, sizes, stock]);
}

/**
 * Lap of the project's own table on the sheet Standard or Shop: design lengths are the designer's
 * @customfunction LAP
 * @param size Bar size, such as 16, H16, #5 or 15M
 * @param [grade] Grade, where the table tells grades apart
 * @param [lapCase] Case of the table, such as its concrete or bond
 * @returns A block of cells
 */
export async function lap(size: any[][], grade?: any[][], lapCase?: any[][]): Promise<any[][]> {
  return callFunction("LAP", [size, grade, lapCase]);
}

/**
 * Net tonnes, waste, hours and cost by pour, by the workbook's own rates
 * @customfunction COST
 * @param sizes Column of bar sizes
 * @param masses Column of row masses in kg, as many rows
 * @param [pours] Column of pours, as many rows
 * @param [rates] Table of rates with its header row; the Shop sheet's where it is left out
 * @returns A block of cells
 */
export async function cost(
  sizes: any[][],
  masses: any[][],
  pours?: any[][],
  rates?: any[][],
): Promise<any[][]> {
  return callFunction("COST", [sizes, masses, pours, rates]);
}

/**
 * Verdict on every bar of a schedule: ok, or the severity and message of each finding, the worst first
 * @customfunction CHECK
 * @param schedule The schedule with its header row
 * @param [standard] Standard and edition, such as BS8666:2005; the workbook's own where it is left out
 * @returns A block of cells
 */
export async function check(schedule: any[][], standard?: any[][]): Promise<any[][]> {
  return callFunction("CHECK", [schedule, standard]);
}
