import type { RemnantView } from "./remnant-view";

/** One line of what a buyer orders, in words. */
export interface BoughtLine {
  readonly size: string;
  readonly stock: string;
  readonly bars: string;
  /** "?" where the standard holds no such bar */
  readonly tonnes: string;
  /** whole kg, as an order says them; "?" likewise */
  readonly kilograms: string;
  readonly provenLeast: boolean;
}

/** A whole page of its own, to be printed or kept. */
export interface PrintedPage {
  readonly title: string;
  /** sheet of the schedule that it is of */
  readonly sheet: string;
  readonly fileName: string;
  readonly html: string;
  /** bars that the page leaves out although they must be made, each with the reason and the remedy */
  readonly refused: readonly string[];
  /** stock that a cut list buys; empty for other pages */
  readonly toBuy: readonly BoughtLine[];
  /** what the page rests on, or leaves out on purpose */
  readonly notes: readonly string[];
  /** what it was made of: see `Engine.basis` */
  readonly basis: string;
  /** what a cut list does to the remnants on hand; null for other pages */
  readonly remnants: RemnantView | null;
}
