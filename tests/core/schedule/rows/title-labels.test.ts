import { expect, it } from "vitest";
import { readSchedule } from "../../../../core/schedule/read-schedule";
import { scheduleHead } from "../../../../core/schedule/schedule-head";
import { sheetFromRows } from "../../../../core/schedule/sheet";
import { resolveStandard, type Standard } from "../../../../core/standards";

const standard = resolveStandard("BS8666:2005") as Standard;
const jobOf = (title: string) =>
  scheduleHead(
    readSchedule(
      sheetFromRows("List", [
        [title],
        [],
        ["Bar mark", "Size", "Total no.", "Length mm"],
        ["01", "H16", 10, 2000],
      ]),
      standard,
    ),
  ).job;

it.each([
  ["Job: Alder Row footbridge   Job no. 4471", "Alder Row footbridge"],
  ["Job: Alder Row footbridge", "Alder Row footbridge"],
  ["Job: Alder Row  phase 2", "Alder Row  phase 2"],
])("%s names the job, and no label behind it", (title, job) => {
  expect(jobOf(title)).toBe(job);
});
