import { type JobQuestion, type OpenedBook, openForJob } from "../../../core/jobs";
import { isRefusal, type Refusal, refusalText } from "../../../core/units/refusal";
import { UnreadableWorkbook } from "../../xlsx/unreadable-workbook";
import { InputRefused } from "../input-refused";
import { openBook } from "../open-book";
import { ownOfPath } from "../standard-for";
import type { JobAsked } from "./job-asked";
import type { JobRead } from "./read-job";

/** A book of a job, or why it cannot be read. */
export type BookOpened =
  | { readonly path: string; readonly opened: OpenedBook; readonly error: null }
  | { readonly path: string; readonly opened: null; readonly error: string };

/** The books of a job one after another, so that one alone is held; a register or list of stock has no bars. */
export function* openBooks(
  { named, task }: JobAsked,
  { answers }: Pick<JobRead, "answers">,
): Generator<BookOpened> {
  const question = questionOf(task);
  const papers = papersAmong(answers);
  for (const path of named.paths) {
    if (papers.has(path)) continue;
    const opened = tried(() => openForJob(openBook(path), question));
    if (opened instanceof Error) yield { path, opened: null, error: opened.message };
    else yield { path, opened, error: null };
  }
}

/** Books that were read and hold no schedule: registers and lists of stock. */
export function papersAmong(answers: JobRead["answers"]): ReadonlySet<string> {
  const papers = answers.filter(({ error, schedules }) => error === null && schedules.length === 0);
  return new Set(papers.map(({ path }) => path));
}

/** What is asked of each book of a job. */
export function questionOf({ sheet, standard, own: file }: JobAsked["task"]): JobQuestion {
  const own = file === null ? undefined : ownOfPath(file).own;
  return { sheet, standard, ...(own && { own }) };
}

/** An answer, or the error that says why there is none; what is an error of ours is thrown on. */
export function tried<Answer>(ask: () => Answer | Refusal): Answer | Error {
  try {
    const answer = ask();
    return isRefusal(answer) ? new InputRefused(refusalText(answer)) : answer;
  } catch (error) {
    if (error instanceof InputRefused || error instanceof UnreadableWorkbook) return error;
    throw error;
  }
}
