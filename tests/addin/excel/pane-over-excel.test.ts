import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { excelWorkbook } from "../../../addin/excel/excel-workbook";
import type { Engine } from "../../../addin/pane/engine/engine";
import { createLocalEngine } from "../../../addin/pane/engine/local-engine";
import { safeFixKinds } from "../../../addin/pane/model/fixes-of-view";
import { PaneModel } from "../../../addin/pane/model/pane-model";
import { waive } from "../../../addin/pane/model/settings-edits";
import { PartlyWritten } from "../../../addin/workbook/workbook-port";
import { type OpenExcel, openInJsdom } from "../../_support/office-host/open-in-jsdom";
import type { Workbook } from "../../_support/office-host/workbook";

const HEADER = [
  "Bar mark",
  "Type and size",
  "No. of members",
  "No. in each",
  "Total no.",
  "Length mm",
].concat(["Shape code", "A mm", "B mm", "C mm", "Former mm"]);
// BS 8666:2005 Table 2: the least former of a 16 mm bar is 64 mm
const TOO_SMALL = 40;
const row = (number: number, former: number | "" = "") => [
  `'${String(number).padStart(4, "0")}`,
  ...["H16", 1, 10, 10, 2500, "'21", 700, 1150, 700, former],
];

let open: OpenExcel;
let engine: Engine;
let model: PaneModel;
const rejections: unknown[] = [];
const noteRejection = (problem: unknown): void => void rejections.push(problem);

beforeEach(async () => {
  open = await openInJsdom();
  write(open.excel.workbook, [HEADER, row(1), row(2)]);
  engine = createLocalEngine();
  model = new PaneModel(excelWorkbook(), engine);
  await model.start();
  rejections.length = 0;
  process.on("unhandledRejection", noteRejection);
});
afterEach(() => {
  process.off("unhandledRejection", noteRejection);
  open.close();
});

function write(book: Workbook, rows: unknown[][], sheet = book.active): void {
  sheet.GetRange(`A1:K${rows.length}`).Values = rows as never;
}

const settle = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));
const found = (cell: string) =>
  (model.state.view?.findings ?? []).filter((finding) => finding.cell === cell).map(({ code }) => code);
const typeFormer = (cell: string): void =>
  open.excel.byUser((book) => {
    book.active.GetRange(cell).Values = [[TOO_SMALL]] as never;
  });

/** Types into the sheet while a step of the next check is under way. */
function editDuring(step: "read" | "audit", cell: string): void {
  if (step === "audit") {
    const audit = engine.check.bind(engine);
    engine.check = async (question) => {
      engine.check = audit;
      typeFormer(cell);
      await settle(30);
      return audit(question);
    };
    return;
  }
  const before = open.excel.requests.length;
  const watch = setInterval(() => {
    // the copy that is judged has left Excel
    if (open.excel.requests.length < before + 2) return;
    clearInterval(watch);
    typeFormer(cell);
  }, 0);
}

describe("an edit while a check runs", () => {
  test.each(["read", "audit"] as const)("should be judged after the first check (%s)", async (step) => {
    editDuring(step, "K2");
    await model.check();
    await expect.poll(() => found("K2"), { timeout: 3_000 }).toContain("BEND101");
    expect(model.state).toMatchObject({ isStale: false, needsCheck: false });
  });

  test.each(["read", "audit"] as const)("should be judged after a later check (%s)", async (step) => {
    await model.check();
    editDuring(step, "K3");
    await model.check();
    await expect.poll(() => found("K3"), { timeout: 3_000 }).toContain("BEND101");
    expect(model.state).toMatchObject({ isStale: false, needsCheck: false });
  });

  test("should not be lost where it is on another sheet that is read beside", async () => {
    open.excel.byUser((book) => write(book, [HEADER, row(1), row(2)], book.addSheet("Older")));
    await expect.poll(() => model.state.sheets.length).toBe(2);
    let judged = 0;
    const audit = engine.check.bind(engine);
    engine.check = async (question) => {
      judged += 1;
      if (judged === 1) {
        open.excel.byUser((book) => {
          book.sheets[1]!.GetRange("K2").Values = [[TOO_SMALL]] as never;
        });
        await settle(30);
      }
      return audit(question);
    };
    await model.check();
    await expect.poll(() => judged, { timeout: 3_000 }).toBe(2);
    await expect.poll(() => model.state.isStale).toBe(false);
  });
});

describe("what the user does to sheets", () => {
  test("should be followed: added, renamed with its findings and decisions, hidden, deleted", async () => {
    typeFormer("K2");
    await model.check();
    const unsafe = model.state.view!.findings.find(({ cell, code }) => cell === "K2" && code === "BEND101")!;
    await model.decide(
      waive(unsafe, { reason: "made on the large roll", by: "A. Detailer", date: "2031-03-02" }),
      "done",
    );
    expect(found("K2")).not.toContain("BEND101");
    open.excel.byUser((book) => {
      book.addSheet("New");
    });
    await expect.poll(() => model.state.sheets.map(({ name }) => name)).toEqual(["Sheet1", "New"]);
    open.excel.byUser((book) => {
      book.sheets[0]!.Name = "List 2";
    });
    await expect.poll(() => model.state.sheet).toBe("List 2");
    await expect.poll(() => model.state.view?.sheet).toBe("List 2");
    expect(found("K2")).not.toContain("BEND101");
    expect(model.state.view?.decisions.waivers).toMatchObject([{ sheet: "List 2", isElsewhere: false }]);
    await model.check();
    expect(model.state).toMatchObject({ notice: null, sheet: "List 2" });
    open.excel.byUser((book) => {
      book.sheets[1]!.Visibility = "VeryHidden";
    });
    await expect.poll(() => model.state.hidden).toEqual(["New"]);
    expect(model.state.sheets.map(({ name }) => name)).toEqual(["List 2"]);
    model.readHidden(true);
    expect(model.state.sheets.map(({ name }) => name)).toEqual(["List 2", "New"]);
    model.readHidden(false);
    open.excel.byUser((book) => {
      book.sheets[1]!.Visibility = "Visible";
      book.remove(book.sheets[0]!);
    });
    await expect.poll(() => model.state.sheet).toBe("New");
    expect(model.state.notice?.text).toContain("List 2 was deleted");
    await model.check();
    expect(model.state.notice?.kind).not.toBe("problem");
    expect(rejections).toEqual([]);
  });

  test("should be found out at the next check where Excel tells of no new name", async () => {
    open.close();
    open = await openInJsdom(undefined, { ExcelApiOnline: "0.0" });
    write(open.excel.workbook, [HEADER, row(1), row(2)]);
    model = new PaneModel(excelWorkbook(), engine);
    await model.start();
    open.excel.byUser((book) => {
      book.sheets[0]!.Name = "List 2";
    });
    await model.check();
    expect(model.state).toMatchObject({ sheet: "List 2", notice: null, view: { sheet: "List 2" } });
  });
});

describe("a host that does not answer", () => {
  test("should be left by stopping, and the next check does not wait for it", async () => {
    open.excel.failures.push(null, "silence");
    const hanging = model.check();
    await settle(50);
    expect(model.state.work?.label).toContain("Reading");
    model.stop();
    await hanging;
    expect(model.state).toMatchObject({ work: null, notice: { kind: "problem" } });
    await model.check();
    expect(model.state).toMatchObject({ work: null, notice: null, view: { sheet: "Sheet1" } });
  });

  test("should not keep a check waiting behind the judgement of an edit", async () => {
    await model.check();
    open.excel.failures.push("silence", null);
    typeFormer("K2");
    await settle(300);
    open.excel.failures.length = 0;
    await model.check();
    expect(found("K2")).toContain("BEND101");
    expect(model.state).toMatchObject({ isStale: false, needsCheck: false });
  });

  test("should not leave a selection that is refused unhandled", async () => {
    await model.check();
    for (const at of [0, 1, 2]) {
      open.excel.failures.push(...Array(at).fill(null), "InvalidOperationInCellEditMode");
      const area = { row: 1 + (at % 2), column: 0, rows: 1, columns: 1 };
      open.excel.byUser((book) => book.select({ sheet: book.active, area }));
      await settle(60);
      open.excel.failures.length = 0;
    }
    expect(rejections).toEqual([]);
  });
});

describe("fixes written in part", () => {
  const MANY = 25_000;
  const edits = Array.from({ length: MANY }, (_, index) => ({ cell: `M${index + 2}`, to: index }));
  const filled = () =>
    edits.filter((_, index) => open.excel.workbook.active.cells.at(index + 1, 12).value !== "").length;

  test("should come with a way back where the second request fails", async () => {
    open.excel.failures.push(null, null, "GeneralException");
    const problem = await excelWorkbook()
      .writeCells("Sheet1", edits)
      .catch((raised: unknown) => raised);
    expect(filled()).toBe(20_000);
    expect(problem).toBeInstanceOf(PartlyWritten);
    const { undo, written } = problem as PartlyWritten;
    expect(written).toHaveLength(MANY);
    expect(await undo()).toBe(true);
    expect(filled()).toBe(0);
  });

  test("should take nothing back where the user has written over one of them", async () => {
    open.excel.failures.push(null, null, "GeneralException");
    const problem = await excelWorkbook()
      .writeCells("Sheet1", edits)
      .catch((raised: unknown) => raised);
    open.excel.byUser((book) => {
      book.active.GetRange("M7").Values = [["mine"]] as never;
    });
    expect(await (problem as PartlyWritten).undo()).toBe(false);
    expect(filled()).toBe(20_000);
  });

  test("should stay in the pane to be taken back, once the sheet is judged again", async () => {
    // Excel has made a number of the code; BS 8666:2005 writes shape codes with two digits
    const straight = (number: number) => [`'${number}`, "H16", 1, 10, 10, 2500, 0, 2500, "", "", ""];
    const rows = Array.from({ length: 20_010 }, (_, index) => straight(index + 1));
    open.excel.byUser((book) => write(book, [HEADER, ...rows]));
    await model.check();
    const codes = () =>
      rows.filter((_, index) => open.excel.workbook.active.cells.at(index + 1, 6).value === "00").length;
    const kind = safeFixKinds(model.state.view!).find(({ code }) => code === "SHAPE102")!;
    expect(kind.findings.flatMap(({ fix }) => fix?.edits ?? [])).toHaveLength(rows.length);
    open.excel.failures.push(null, null, "GeneralException");
    await model.fixes.applyKind(kind);
    expect(model.state.notice?.text).toContain(
      "some or all of the 20010 cells were written before it stopped",
    );
    expect(codes()).toBe(20_000);
    expect(model.state.fixes).toHaveLength(1);
    await model.fixes.undoFix();
    expect(codes()).toBe(0);
    expect(model.state.fixes).toEqual([]);
    expect(model.state.notice?.text).toContain("Taken back");
  });
});
