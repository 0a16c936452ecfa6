import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import type { Cell } from "../../../core/schedule";
import { barwright } from "../../_support/command-line";
import { BENDER_HEADS } from "../../core/tickets/ticket-sheets";

const folder = mkdtempSync(join(tmpdir(), "barwright-verdict-"));
const at = (name: string): string => join(folder, name);
const HEADER = [
  "Bar mark",
  "Type and size",
  "Total no.",
  "Length (mm)",
  "Shape code",
  "A",
  "B",
  "C",
  "Remarks",
];
/** 2 (250 + 150) + 2 x 180 - 2.5 x 16 - 5 x 8 by BS 8666 shape 51, its C left to the length */
const link = (mark: string): Cell[] => [mark, "H10", 10, 1000, "51", 250, 150, null];
/** no figure is there in place of its B */
const NO_B: Cell[] = ["07", "H16", 10, 975, "11", 600, null];
/** bent to a semicircle of 240 mm inside, a former that the rack does not hold */
const WIDE: Cell[] = ["10", "H10", 6, 1450, "13", 600, 260, 600];
const SOUND: Cell[] = ["01", "H16", 10, 975, "11", 600, 400];
const SHOP: Cell[][] = [
  [...BENDER_HEADS],
  ["Bench 2", 190, 2500, 130, 90, "40", "40, 64"],
  [],
  ["Machine", "Work", "Size", "Grade MPa", "Bars at once"],
  ["Bench 2", "bend", "H16", 500, 2],
  [],
  ["size", "stock length mm", "bars held", "kind"],
  [10, 12000, null, "stock"],
  [16, 12000, null, "stock"],
  [],
  ["limit", "value"],
  ["hoist or crane kg", 900],
  ["lorry load kg", 9000],
];

function book(
  name: string,
  rows: readonly (readonly Cell[])[],
  shop: readonly (readonly Cell[])[] = SHOP,
): string {
  const sheets = [
    { name: "Bars", rows: [HEADER, ...rows] },
    { name: "Shop", rows: shop },
  ];
  writeFileSync(at(name), writeNewWorkbook({ sheets: sheets as never }));
  return at(name);
}

/** Marks on HOLD by each paper. */
async function heldOn(path: string) {
  const json = async (...args: string[]) =>
    JSON.parse((await barwright([...args, "--standard", "BS8666:2005", "--json"])).out);
  const plan = await json("cutplan", path);
  const loads = await json("loads", path);
  const { tickets } = await json("tickets", path);
  await barwright(["tickets", path, "--standard", "BS8666:2005", "--labels", at("labels.html")]);
  const labels = readFileSync(at("labels.html"), "utf8").split("<article").slice(1);
  const marks = (list: readonly { mark: string }[]): string[] =>
    [...new Set(list.map(({ mark }) => mark))].sort();
  return {
    "cut list": marks(plan.notToMake),
    loads: marks(
      loads.loads
        .flatMap(({ loading }: { loading: { mark: string; held: string[] }[] }) => loading)
        .filter(({ held }: { held: string[] }) => held.length > 0),
    ),
    tickets: marks(
      tickets.filter(({ warnings }: { warnings: { hold: boolean }[] }) => warnings.some(({ hold }) => hold)),
    ),
    labels: marks(
      labels
        .filter((label) => label.includes("Not to be made"))
        .map((label) => ({ mark: /class="mark">(.*?)</.exec(label)?.[1] ?? "?" })),
    ),
  };
}

const onAll = (...marks: string[]) => ({ "cut list": marks, loads: marks, tickets: marks, labels: marks });

describe("one verdict of a bar on every paper", () => {
  it("should hold no link whose free dimension is left to the length, as its sheet does", async () => {
    const path = book("links.xlsx", [SOUND, link("03"), link("04")]);
    expect(await heldOn(path)).toEqual(onAll());
    const run = await barwright(["tickets", path, "--standard", "BS8666:2005", "--out", at("links.html")]);
    expect(run.out).toContain("0 are unsafe or cannot be made as they stand");
    const page = readFileSync(at("links.html"), "utf8");
    expect(page).toContain("it is what the length leaves");
    expect(page).not.toContain("give C");
  });

  it("should hold a bar that lacks a dimension which nothing else gives", async () => {
    expect(await heldOn(book("lacks.xlsx", [SOUND, NO_B, link("03"), link("04")]))).toEqual(onAll("07"));
  });

  it("should book no rest of a bar whose pieces are on HOLD, and name it", async () => {
    const path = book("rests.xlsx", [SOUND, WIDE]);
    const run = await barwright([
      "cutplan",
      path,
      "--standard",
      "BS8666:2005",
      "--out",
      at("rests-booked.xlsx"),
    ]);
    // 12000 - 6 x 1450 = 3300; 12000 - 10 x 975 = 2250
    expect(run.err).toContain(
      "bars with pieces on HOLD are not booked, neither as used nor their rests: 1 of H10, 12000 mm, rest 3300 mm",
    );
    expect(run.err).toMatch(/remnants of H16, 2250 mm: 1 new/);
    expect(run.err).not.toContain("remnants of H10");
  });

  it("should hold a bar whose remark says to wait", async () => {
    const waits = [...SOUND.slice(0, 7), null, "HOLD - awaiting RFI"];
    const path = book("waits.xlsx", [
      waits,
      ["02", ...SOUND.slice(1)],
      ["06", ...SOUND.slice(1, 7), null, "don't make - superseded by 07"],
    ]);
    expect(await heldOn(path)).toEqual(onAll("01", "06"));
  });

  it("should hold a bar of a size that does not exist", async () => {
    const wrong: Cell[] = ["15", "H61", 10, 3000, "00", 3000];
    const { tickets, labels } = await heldOn(book("size.xlsx", [SOUND, wrong]));
    expect([tickets, labels]).toEqual([["15"], []]);
  });

  it("should name the schedule before the mark as soon as two are on one paper", async () => {
    const schedule = (ref: string, ...rows: (readonly Cell[])[]) => ({
      name: ref,
      rows: [["Job: Otter Weir", null, `Schedule ref: ${ref}`, null, "Revision: A"], HEADER, ...rows],
    });
    const wide = ["01", ...WIDE.slice(1)];
    const sheets = [schedule("OW-1", SOUND, wide), schedule("OW-2", SOUND), { name: "Shop", rows: SHOP }];
    writeFileSync(at("two.xlsx"), writeNewWorkbook({ sheets: sheets as never }));
    await barwright(["cutplan", at("two.xlsx"), "--standard", "BS8666:2005", "--out", at("two.html")]);
    const page = readFileSync(at("two.html"), "utf8");
    expect(page).toContain("OW-1 revision A, OW-2 revision A");
    expect(page).toContain("OW-1 01 (10), OW-2 01 (10)");
    expect(page).toContain("OW-1 01 (6) HOLD");
    const loads = await barwright(["loads", at("two.xlsx"), "--standard", "BS8666:2005"]);
    expect(loads.err).toContain("until cleared: OW-1 01 H10");
    expect(loads.out).toContain("OW-2, 01 bundle 1 of 1");
  });

  it("should hold a lone link without its free dimension, which check says it needs", async () => {
    expect(await heldOn(book("lone.xlsx", [SOUND, link("03")]))).toEqual(onAll("03"));
  });

  it("should hold a bar whose former is in no rack, whoever asks for the former", async () => {
    const path = book("wide.xlsx", [SOUND, WIDE]);
    expect(await heldOn(path)).toEqual(onAll("10"));
    const { findings } = JSON.parse(
      (await barwright(["check", path, "--standard", "BS8666:2005", "--json"])).out,
    );
    const told = findings.filter(({ code }: { code: string }) => code === "MACHINE101");
    expect(told).toMatchObject([{ severity: "unbendable", outcome: "broken", row: 3 }]);
  });
});
