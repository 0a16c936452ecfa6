import {
  type BookDigest,
  type DigestQuestion,
  digestBook,
  type JobPapers,
  type ScheduleEntry,
} from "../../../core/jobs";
import type { ColumnsSaid } from "../../../core/schedule";
import { isRefusal, refusalText } from "../../../core/units/refusal";
import { UnreadableWorkbook } from "../../xlsx/unreadable-workbook";
import { InputRefused } from "../input-refused";
import { openBookOf, readBook } from "../open-book";
import { ownOfPath } from "../standard-for";
import type { ResultStore } from "./result-store";

/** What every book of a job is asked; plain, so that it can be sent to a worker. */
export interface JobTask {
  readonly sheet: string | null;
  readonly standard: string | null;
  /** a file of own figures */
  readonly own: string | null;
  readonly explain: boolean;
  /** columns pointed at by hand */
  readonly columns: readonly ColumnsSaid[];
}

/** What is known of a book once it was read: enough to hold it against the others. */
export interface BookAnswer {
  readonly path: string;
  /** why it could not be read; null where it was */
  readonly error: string | null;
  /** under which its digest is stored */
  readonly key: string;
  readonly isBroken: boolean;
  readonly schedules: readonly ScheduleEntry[];
  readonly papers: JobPapers;
  /** its rates, and the standard whose sizes they name; null where it has none */
  readonly rates: { readonly block: NonNullable<BookDigest["rates"]>; readonly standard: string } | null;
}

/** Reads books for one question. */
export class BookDigester {
  readonly #question: DigestQuestion;
  readonly #asked: readonly (string | Uint8Array)[];

  constructor(
    private readonly store: ResultStore,
    { sheet, standard, own, explain, columns }: JobTask,
  ) {
    const figures = own === null ? undefined : ownOfPath(own).own;
    this.#question = {
      sheet,
      standard,
      explain,
      columns,
      ...(figures === undefined ? {} : { own: figures }),
    };
    this.#asked = [JSON.stringify({ sheet, standard, explain, columns }), own === null ? "" : readBook(own)];
  }

  /** Reads a book and keeps its digest in the store; never throws for what the file holds. */
  answer(path: string): BookAnswer {
    try {
      const bytes = readBook(path);
      const key = this.#key(path, bytes);
      const kept = this.store.get(answerKey(key)) as BookAnswer | null;
      if (kept !== null) return kept;
      const { isBroken, schedules, papers, rates: block, report } = this.#digest(path, key, bytes);
      const rates = block === null ? null : { block, standard: report.standard };
      const answer = { path, error: null, key, isBroken, schedules, papers, rates };
      this.store.put(answerKey(key), answer);
      return answer;
    } catch (error) {
      return {
        path,
        error: reasonOf(error),
        key: "",
        isBroken: false,
        schedules: [],
        papers: NO_PAPERS,
        rates: null,
      };
    }
  }

  /** The digest that was answered for, out of the store; where it is gone the book is read again. */
  digest({ path, key }: Pick<BookAnswer, "path" | "key">): BookDigest {
    const kept = this.store.get(key) as BookDigest | null;
    if (kept !== null) return kept;
    const bytes = readBook(path);
    return this.#digest(path, this.#key(path, bytes), bytes);
  }

  #key(path: string, bytes: Uint8Array): string {
    return this.store.key([path, ...this.#asked, bytes]);
  }

  #digest(path: string, key: string, bytes: Uint8Array): BookDigest {
    const kept = this.store.get(key) as BookDigest | null;
    if (kept !== null) return kept;
    const digest = digestBook(openBookOf(path, bytes), path, this.#question);
    if (isRefusal(digest)) throw new InputRefused(refusalText(digest));
    this.store.put(key, digest);
    return digest;
  }
}

const NO_PAPERS: JobPapers = { registers: [], held: [] };

/** What is known of a book stands apart from its bars and findings, so that it is read without them. */
const answerKey = (key: string): string => `${key}-answer`;

function reasonOf(error: unknown): string {
  if (error instanceof InputRefused || error instanceof UnreadableWorkbook)
    return error.message.replace(/\s+/g, " ");
  return `an error of ours, please report it: ${error instanceof Error ? error.message : String(error)}`;
}
