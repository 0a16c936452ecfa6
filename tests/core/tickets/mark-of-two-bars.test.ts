import { expect, test } from "vitest";
import { runAudit } from "../../../core/audit/run-audit";
import { sheetFromRows } from "../../../core/schedule";
import { Workshop } from "../../../core/shop";
import { resolveStandard, type Standard } from "../../../core/standards";
import { ticketsOfAudit } from "../../../core/tickets/tickets-of-audit";

const standard = resolveStandard("BS8666:2020") as Standard;
const sheet = sheetFromRows("Bars", [
  ["Member", "Bar mark", "Type and size", "Total no.", "Length mm", "Shape code", "A mm"],
  ["Base", "03", "H12", 90, 1300, "00", 1300],
  ["Base", "04", "H12", 4, 1400, "00", 1400],
  ["Wall", "03", "H12", 10, 1500, "00", 1500],
]);

// a mark names one bar: common practice. Whoever holds either ticket must know of the other
test("should name the other bar of a mark on the tickets of both", () => {
  const report = runAudit({ sheets: [sheet], standard });
  expect(report.findings.filter(({ code }) => code === "MARK101")).toHaveLength(1);
  const { tickets } = ticketsOfAudit(report, [sheet], new Workshop(null, standard));
  const said = tickets.map(({ warnings }) => warnings.map(({ text }) => text).join());
  expect(said[0]).toContain("mark 03 stands in row 4 too, with another A");
  expect(said[1]).not.toContain("stands in row");
  expect(said[2]).toContain("mark 03 stands in row 2 too, with another A");
});
