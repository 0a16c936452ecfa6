import {
  allPapers,
  type Book,
  digestBook,
  digestSchedule,
  JobTotals,
  jobPlaceWords,
  judgeJob,
  ofAnotherJobWords,
} from "../../../core/jobs";
import { weighedAsMadeWords } from "../../../core/totals";
import { counted } from "../../../core/units/counted";
import { tonnesOf } from "../../../core/units/print-mass";
import { isRefusal, refusalText } from "../../../core/units/refusal";
import { SETTING_NAMES } from "../../workbook/setting-names";
import { openWorkbook } from "../../xlsx/read/open-workbook";
import { workbookSetting } from "../../xlsx/read/workbook-setting";
import type { GivenFile, JobView } from "./job-view";
import { barsRead, type KeptCheck } from "./kept-check";

type Digest = ReturnType<typeof digestSchedule>;

const OWN = "this workbook";
const MOST_PLACES = 8;
const KG_PER_TONNE = 1000;

/** The checked sheet as one schedule of a job whose other ones stand in files. A file that names no standard goes by the one chosen for the sheet. */
export function jobView(kept: KeptCheck, files: readonly GivenFile[]): JobView {
  const { sheet } = kept;
  const { standard } = kept.audit.report;
  const notes: string[] = [];
  const digests: Digest[] = [digestSchedule(OWN, { sheet, reading: barsRead(kept) }, standard)];
  for (const file of files) {
    const digest = digestOf(file, kept.standardChosen);
    if (typeof digest === "string") notes.push(`not read: ${file.name}: ${digest}`);
    else digests.push(digest);
  }
  const job = judgeJob(
    digests.flatMap(({ schedules }) => schedules),
    allPapers(digests),
  );
  const totals = new JobTotals(job, null);
  for (const digest of digests) totals.addBook(digest);
  const { tonnage, groupedBy, held, superseded, notInTotal, asTyped, ofAnotherJob } = totals.result();
  for (const { book, sheet: name, why } of held) notes.push(`held back: ${book}, sheet ${name}: ${why}`);
  if (superseded > 0)
    notes.push(`${counted(superseded, "bar row")} of older or doubled schedules in no total`);
  if (notInTotal.length > 0) {
    const cells = notInTotal.slice(0, MOST_PLACES).map(({ book, cell }) => `${book} ${cell}`);
    const more = notInTotal.length > MOST_PLACES ? ` and ${notInTotal.length - MOST_PLACES} more` : "";
    notes.push(`${counted(notInTotal.length, "row")} in no total: ${cells.join(", ")}${more}`);
  }
  notes.push(...weighedAsMadeWords(asTyped, tonnage.total, true));
  if (ofAnotherJob !== null) notes.push(ofAnotherJobWords(ofAnotherJob));
  return {
    files: digests.length - 1,
    schedules: job.schedules.filter(({ standing }) => standing.because === null).length,
    groupedBy,
    lines: tonnage.pours.map(({ pour, total }) => ({
      name: pour === "" ? `no ${groupedBy}` : pour,
      tonnes: tonnesOf(total * KG_PER_TONNE),
    })),
    total: held.length > 0 ? null : tonnesOf(tonnage.total * KG_PER_TONNE),
    findings: job.findings.map(({ message, places, outcome, severity }) => ({
      words: `${outcome === "unsure" && severity !== "note" ? "perhaps " : ""}${severity}: ${message}`,
      places: places.slice(0, MOST_PLACES).map(jobPlaceWords),
    })),
    notes,
  };
}

/** What a file holds for the job, or why it could not be read. */
function digestOf({ name, bytes }: GivenFile, standard: string | null): Digest | string {
  try {
    const digest = digestBook(bookOf(name, bytes, standard), name, {
      ...{ sheet: null, standard: null, explain: false },
    });
    return isRefusal(digest) ? refusalText(digest) : digest;
  } catch (problem) {
    return problem instanceof Error ? problem.message : String(problem);
  }
}

function bookOf(name: string, bytes: Uint8Array, standard: string | null): Book {
  const book = openWorkbook(bytes);
  return {
    name,
    sheets: book.sheets,
    read: (sheet) => book.read(sheet),
    setting: (setting) =>
      workbookSetting(book, setting) ?? (setting === SETTING_NAMES.standard ? standard : null),
  };
}
