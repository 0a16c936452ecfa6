import type { Kept } from "./kept-answers";
import type { SheetHabits } from "./sheet-habits";

/** Beyond as many it is simpler to say all. */
const MOST_BARS = 1000;

/** What a rule for sheets looked at: after an edit it is asked again only where something of it changed. */
export class Looked {
  readonly bars = new Set<number>();
  readonly answers = new Map<Kept<unknown>, { readonly kind: string; readonly question: unknown }>();
  isAtAllBars = false;
  /** other sheets of the book were asked for */
  isBeside = false;
  habits: SheetHabits | null = null;
  /** undefined where nobody asked */
  lengthStep: number | null | undefined;

  atAllBars(): void {
    this.isAtAllBars = true;
  }

  atOtherSheets(): void {
    this.isBeside = true;
  }

  atHabits(habits: SheetHabits): void {
    this.habits = habits;
  }

  atBar(place: number): void {
    if (this.bars.size < MOST_BARS) this.bars.add(place);
    else this.isAtAllBars = true;
  }

  atAnswer(kept: Kept<unknown>, kind: string, question: unknown): void {
    this.answers.set(kept, { kind, question });
  }
}
