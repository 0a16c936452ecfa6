import { type Priced, PriceSums } from "../../estimating/price-bars";
import type { Rates } from "../../estimating/rates";
import { inOrderOfPours } from "../../totals/in-order-of-pours";
import type { NotInTotal } from "../../totals/row-mass";
import { type Tonnage, TonnageSums } from "../../totals/tonnage-by-pour";
import type { WeighedAsMade } from "../../totals/weighed-as-made";
import { toPrice } from "../costs";
import type { BookDigest } from "./book-digest";
import type { JobBar } from "./job-bar";
import type { JudgedJob } from "./judge-job";

/** What the tonnes of a job can be grouped by. */
export const JOB_GROUPS = ["pour", "member", "schedule", "date"] as const;
export type JobGroup = (typeof JOB_GROUPS)[number];

/** A bar as it stands in its job. */
export interface PlacedBar {
  readonly bar: JobBar;
  readonly schedule: string;
  readonly scheduleRevision: string | null;
  /** the pour, or whatever the totals go by, under the name that they show; null in no total */
  readonly group: string | null;
  /** why it is in no total; null where it is in one */
  readonly leftOut: string | null;
}

export interface JobTonnage {
  readonly tonnage: Tonnage;
  readonly groupedBy: JobGroup;
  /** schedules whose totals wait for their user: none of their bars is in the sums */
  readonly held: readonly { readonly book: string; readonly sheet: string; readonly why: string }[];
  readonly notInTotal: readonly (NotInTotal & { readonly book: string })[];
  /** rows in the total that weigh otherwise by the length as typed; `sheet` names the book too */
  readonly asTyped: readonly WeighedAsMade[];
  /** bar rows of revisions and copies that do not count */
  readonly superseded: number;
  /** by the rates that the job was given; null without, and while any of it is held back */
  readonly priced: Priced | null;
  /** what of the total stands on schedules that say another job; null where none does */
  readonly ofAnotherJob: OfAnotherJob | null;
}

/** Steel that may be another job's: it is in the total, and both figures are told. Tonnes. */
export interface OfAnotherJob {
  readonly schedules: readonly { readonly book: string; readonly sheet: string }[];
  readonly tonnes: number;
  /** the total without it */
  readonly without: number;
}

/** Which bars are asked for; null is all. */
export interface BarFilter {
  readonly pours: readonly string[] | null;
  readonly sizes: readonly string[] | null;
}

/** Whether a bar is asked for, by its pour and size, however they are written in case and spaces; 16 asks for H16 too. */
export function isAsked({ pours, sizes }: BarFilter, { pour, size }: Pick<JobBar, "pour" | "size">): boolean {
  const has = (list: readonly string[] | null, ...texts: readonly string[]): boolean =>
    list === null || list.some((one) => texts.some((text) => plain(one) === plain(text)));
  const millimetres = LETTERED_SIZE.exec(size.trim())?.[1];
  return has(pours, pour ?? "") && has(sizes, size, ...(millimetres === undefined ? [] : [millimetres]));
}

const plain = (text: string): string => text.trim().toLowerCase();

/** letters or the sign of a diameter before millimetres: H16, HD 16, Ø16 mm; #5 and 15M count no millimetres */
const LETTERED_SIZE = /^(?:\p{L}{1,3}|\u2300)?\s?(\d+(?:\.\d+)?)(?:\s?mm)?$/u;

/** Adds up the bars of a job, book by book, so that no more than one book is held at a time. */
export class JobTotals {
  readonly #sums = new TonnageSums();
  readonly #sure = new TonnageSums();
  readonly #ofAnother = new TonnageSums();
  readonly #prices: PriceSums | null;
  readonly #notInTotal: (NotInTotal & { book: string })[] = [];
  readonly #asTyped: WeighedAsMade[] = [];
  readonly #entries: ReadonlyMap<string, JudgedJob["schedules"][number]>;
  readonly groupedBy: JobGroup;
  #superseded = 0;

  constructor(
    private readonly job: JudgedJob,
    groupedBy: JobGroup | null,
    private readonly filter: BarFilter = { pours: null, sizes: null },
    rates: Rates | null = null,
  ) {
    this.#prices = rates === null ? null : new PriceSums(rates);
    this.#entries = new Map(job.schedules.map((entry) => [`${entry.book}\n${entry.sheet}`, entry]));
    this.groupedBy = groupedBy ?? usualGroup(job);
  }

  /** Takes the bars of a book, and answers how each stands in the job. */
  addBook({ book, bars, tonnage }: Pick<BookDigest, "book" | "bars" | "tonnage">): PlacedBar[] {
    for (const row of tonnage.notInTotal) {
      const standing = this.#entries.get(`${book}\n${row.sheet}`)?.standing;
      const isOut = standing !== undefined && standing.because !== null && standing.replaced === null;
      if (!isOut) this.#notInTotal.push({ book, ...row });
    }
    return bars.map((bar) => this.#add(book, bar));
  }

  #add(book: string, bar: JobBar): PlacedBar {
    const entry = this.#entries.get(`${book}\n${bar.sheet}`);
    const held = entry?.held ?? null;
    const leftOut = bar.notInTotal ?? this.job.leftOut(book, bar) ?? held;
    const placed = { bar, schedule: entry?.number ?? "", scheduleRevision: entry?.revision ?? null };
    if (leftOut === null && bar.kg !== null) {
      if (!isAsked(this.filter, bar)) return { ...placed, group: this.#groupOf(bar, entry), leftOut };
      const line = { pour: this.#groupOf(bar, entry), size: bar.size, mass: bar.kg };
      const group = this.#sums.add(line);
      if (bar.asTyped !== null) {
        const { kg: asTyped, cell } = bar.asTyped;
        this.#asTyped.push({ sheet: `${book}, ${bar.sheet}`, cell, mass: bar.kg, asTyped });
      }
      (this.job.isOfAnother(book, bar.sheet) ? this.#ofAnother : this.#sure).add(line);
      const price = this.#prices === null ? null : toPrice(bar, group);
      if (price !== null) this.#prices?.add(price);
      return { ...placed, group, leftOut };
    }
    if (bar.kg !== null && held === null) this.#superseded += 1;
    return { ...placed, group: null, leftOut };
  }

  result(): JobTonnage {
    const isHeld = [...this.#entries.values()].some(({ held }) => held !== null);
    const priced = isHeld ? null : (this.#prices?.result() ?? null);
    const tonnage = this.#sums.tonnage();
    const ordered = <Group extends { readonly pour: string }>(pours: readonly Group[]) =>
      inOrderOfPours(pours, this.groupedBy);
    return {
      priced: priced === null ? null : { ...priced, pours: ordered(priced.pours) },
      tonnage: { ...tonnage, pours: ordered(tonnage.pours) },
      ofAnotherJob: this.#doubt(),
      groupedBy: this.groupedBy,
      held: [...this.#entries.values()].flatMap(({ book, sheet, held }) =>
        held === null ? [] : [{ book, sheet, why: held }],
      ),
      notInTotal: this.#notInTotal,
      asTyped: this.#asTyped,
      superseded: this.#superseded,
    };
  }

  #doubt(): OfAnotherJob | null {
    const { rows, total } = this.#ofAnother.tonnage();
    if (rows === 0) return null;
    const schedules = this.job.schedules
      .filter(({ book, sheet }) => this.job.isOfAnother(book, sheet))
      .map(({ book, sheet }) => ({ book, sheet }));
    return { schedules, tonnes: total, without: this.#sure.tonnage().total };
  }

  #groupOf(bar: JobBar, entry: JudgedJob["schedules"][number] | undefined): string {
    if (this.groupedBy === "pour") return bar.pour ?? "";
    if (this.groupedBy === "member") return bar.member ?? "";
    return (this.groupedBy === "date" ? entry?.date : entry?.number) ?? "";
  }
}

function usualGroup({ schedules }: JudgedJob): JobGroup {
  if (schedules.some(({ pours }) => pours.length > 0)) return "pour";
  return schedules.some(({ marks }) => marks.some(({ member }) => member !== null)) ? "member" : "schedule";
}
