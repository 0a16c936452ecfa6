import { existsSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { writeNewWorkbook } from "../../../addin/xlsx/write/new-workbook";
import type { Cell } from "../../../core/schedule";
import type { Ticket } from "../../../core/tickets";
import { barwright } from "../../_support/command-line";
import { EMPTY_LOG, HEADER, SHOP } from "../../core/tickets/ticket-sheets";

const folder = mkdtempSync(join(tmpdir(), "barwright-tickets-"));
const at = (name: string): string => join(folder, name);

const BARS: Cell[][] = [
  ["B1", "01", "H16", 2, 10, 20, 975, "11", 600, 400],
  ["B1", "02", "H16", 1, 30, 30, 4000, "00", 4000],
];

function book(
  name: string,
  rows: readonly (readonly Cell[])[],
  shop: readonly (readonly Cell[])[] | null = SHOP,
) {
  const sheets = [{ name: "Schedule", rows: [HEADER, ...rows] }];
  writeFileSync(
    at(name),
    writeNewWorkbook({ sheets: shop === null ? sheets : [...sheets, { name: "Shop", rows: shop }] }),
  );
  return at(name);
}

async function refusal(...args: string[]): Promise<string> {
  const run = await barwright(args);
  expect([run.exit, run.out], run.err).toEqual([2, ""]);
  return run.err;
}

describe("barwright tickets", () => {
  it("writes a page with one ticket a mark and prints what it holds", async () => {
    const run = await barwright(["tickets", book("good.xlsx", BARS), "--out", at("good.html")]);
    expect(run.exit, run.err).toBe(0);
    expect(run.err).toContain("written:");
    expect(run.out).toContain("2 tickets, 1 with bends");
    expect(run.out).toContain("1 have a bender that is known to make them; 0 need a trial bend first");
    const page = readFileSync(at("good.html"), "utf8");
    expect(page.match(/<article class="ticket">/g)).toHaveLength(2);
    expect(page).toContain("Bench 2");
  });

  it("refuses more tickets than a browser opens at once, and makes those of one size", async () => {
    const rows = Array.from({ length: 10_001 }, (_, at): Cell[] => [
      ...["B1", `${at + 1}`, at < 2 ? "H12" : "H16", 1, 1, 1, 4000, "00", 4000],
    ]);
    const long = book("long.xlsx", rows, null);
    expect(await refusal("tickets", long, "--out", at("long.html"))).toContain(
      "10001 rows of bars are asked for, and a ticket is made of each, at most 10000 at once",
    );
    expect(existsSync(at("long.html"))).toBe(false);
    const run = await barwright(["tickets", long, "--size", "H12", "--out", at("some.html")]);
    expect(run.out, run.err).toContain("2 tickets, 0 with bends");
  });

  it("gives machine output with the marks of each bend", async () => {
    const run = await barwright(["tickets", book("json.xlsx", BARS), "--json"]);
    const { standard, tickets } = JSON.parse(run.out) as { standard: string; tickets: Ticket[] };
    expect(standard).toBe("BS8666:2005");
    // an L of 600 x 400 of 16 mm about 64: 600 - 32 - 16 = 552; from the other end 975 - 552
    const [bend] = tickets[0]!.bends;
    expect(bend?.start).toBeCloseTo(552, 6);
    expect(bend?.fromSwinging.distance).toBeCloseTo(423, 6);
    expect(bend?.compensated.trials).toHaveLength(3);
    expect(tickets.map(({ mark, row }) => [mark, row])).toEqual([
      ["01", 2],
      ["02", 3],
    ]);
  });

  it("exits 1 where a bar cannot be made, and carries the audit's findings", async () => {
    const overlapping: Cell[][] = [["B1", "01", "H25", 1, 2, 2, 2025, "11", 2000, 40]];
    const run = await barwright(["tickets", book("bad.xlsx", overlapping), "--json"]);
    expect(run.exit).toBe(1);
    const { tickets } = JSON.parse(run.out) as { tickets: Ticket[] };
    expect(tickets[0]?.warnings.some(({ severity, unsure }) => severity === "unbendable" && !unsure)).toBe(
      true,
    );
    expect(tickets[0]?.bends).toEqual([]);
  });

  it("asks for a trial where the log is empty or there is no Shop sheet", async () => {
    for (const shop of [EMPTY_LOG, null]) {
      const run = await barwright(["tickets", book("untried.xlsx", BARS, shop), "--json"]);
      const { tickets } = JSON.parse(run.out) as { tickets: Ticket[] };
      const angle = tickets[0]!.bends[0]!.compensated;
      expect([angle.angle, angle.low, angle.plain]).toEqual([null, null, null]);
      expect(angle.refusal).toContain("make a trial bend first");
    }
  });

  it("writes labels under the limit given, and guesses none", async () => {
    const path = book("labels.xlsx", BARS);
    expect(await refusal("tickets", path, "--labels", at("none.html"))).toContain("--bundle-limit KG");
    expect(existsSync(at("none.html"))).toBe(false);
    const args = ["tickets", path, "--labels", at("labels.html"), "--bundle-limit", "100"];
    expect((await barwright(args)).exit).toBe(0);
    // 4 m of 16 mm weigh 6.316 kg: 15 stay under 100 kg, so 30 bars are two bundles; 20 L of 1.54 kg are one
    const page = readFileSync(at("labels.html"), "utf8");
    expect(page.match(/<article class="label">/g)).toHaveLength(3);
    expect(page).toContain("bundle 2 of 2");
    expect(await refusal("tickets", path, "--labels", at("x.html"), "--bundle-limit", "heavy")).toContain(
      "kilograms",
    );
  });

  it("takes the lifting limit of the Shop sheet", async () => {
    const shop = [...SHOP, [], ["Limit", "Value"], ["Hoist or crane kg", 50]];
    const path = book("hoist.xlsx", BARS, shop);
    await barwright(["tickets", path, "--labels", at("hoist.html")]);
    // 7 of 6.316 kg stay under 50: 30 bars are five bundles, and one more of the L
    expect(readFileSync(at("hoist.html"), "utf8").match(/<article class="label">/g)).toHaveLength(6);
  });

  it("writes the chart of angles, its trials named by the sheet's own row", async () => {
    const odd: Cell[] = ["2031-02-06", "Bench 2", "H16", 64, "H", "bar", "B1", 96, 74];
    await barwright(["tickets", book("chart.xlsx", BARS, [...SHOP, odd]), "--chart", at("chart.html")]);
    expect(readFileSync(at("chart.html"), "utf8")).toContain("row 14");
  });

  it("tells a cell of the Shop sheet that cannot be read", async () => {
    const shop = SHOP.map((row) => (row[0] === "Old one" ? ["Old one", null, null, "wide"] : row));
    const run = await barwright(["tickets", book("shop.xlsx", BARS, shop), "--json"]);
    expect(run.err).toContain('Shop!D3: "wide"');
  });

  it("leaves out what is struck through or superseded, and says so", async () => {
    const row = (revision: string, total: number): Cell[] => {
      const cells: Cell[] = [
        "B1",
        "01",
        "H16",
        1,
        total,
        total,
        975,
        "11",
        600,
        400,
        null,
        null,
        null,
        revision,
      ];
      return cells;
    };
    const run = await barwright(["tickets", book("revised.xlsx", [row("A", 4), row("B", 6)]), "--json"]);
    const { tickets } = JSON.parse(run.out) as { tickets: Ticket[] };
    expect(tickets.map(({ count }) => count)).toEqual([6]);
    expect(run.err).toContain("of Schedule (superseded: revision B of it counts): 2 mark 01");
  });

  it("exits 2 with one line for what it cannot do", async () => {
    const path = book("plain.xlsx", BARS);
    expect(await refusal("tickets", path)).toContain("--out FILE.html");
    expect(await refusal("tickets", path, "--out", path)).toContain("itself");
    expect(await refusal("tickets", path, "--out", at("no/such/folder.html"))).toContain("no folder");
    expect(await refusal("tickets", at("missing.xlsx"), "--out", at("m.html"))).toContain("no file");
  });
});

describe("barwright cutplan with a Shop sheet", () => {
  it("cuts from the stock, crop and kerf that it names for the size", async () => {
    const shop: Cell[][] = [
      ["Machine", "Kerf mm", "End crop mm"],
      ["Saw 1", 3, 10],
      [],
      ["Size", "Stock length mm", "Bars held", "Kind"],
      ["16", 9000, null, "stock"],
      ["H20", 6000, null, "stock"],
    ];
    const bars: Cell[][] = [["B1", "01", "H16", 1, 8, 8, 2240, "00", 2240]];
    const run = await barwright(["cutplan", book("stock.xlsx", bars, shop), "--json"]);
    const { groups } = JSON.parse(run.out) as { groups: { stock: number[]; bars: number }[] };
    // 9000 - 10 = 8990; four pieces and three kerfs are 4 x 2240 + 3 x 3 = 8969, so two bars for eight
    expect(groups).toHaveLength(1);
    expect([groups[0]?.stock, groups[0]?.bars]).toEqual([[9000], 2]);
  });

  it("puts the option before the Shop sheet, and the typed length before the computed", async () => {
    const bars: Cell[][] = [["B1", "01", "H16", 1, 4, 4, 1000, "11", 600, 400]];
    const run = await barwright(["cutplan", book("option.xlsx", bars), "--stock", "2000", "--json"]);
    const { groups } = JSON.parse(run.out) as { groups: { bars: number; patterns: { cuts: unknown }[] }[] };
    // typed 1000, the formula's 975: two of 1000 in 2000
    expect(groups[0]?.bars).toBe(2);
    expect(groups[0]?.patterns[0]?.cuts).toEqual([{ length: 1000, count: 2 }]);
  });

  it("writes the cut list with its marks, and names a mark that is too long", async () => {
    const path = book("list.xlsx", BARS);
    const run = await barwright(["cutplan", path, "--stock", "12000", "--out", at("list.html")]);
    expect(run.exit, run.err).toBe(0);
    const page = readFileSync(at("list.html"), "utf8");
    expect(page).toContain("<h1>Cut list</h1>");
    expect(page).toMatch(/02 \(\d+\)/);
    const short = await barwright(["cutplan", path, "--stock", "3000", "--out", at("short.html")]);
    expect([short.exit, short.out], short.err).toEqual([
      1,
      expect.stringContaining("H16, mark 02, 30 bars, G3:"),
    ]);
    expect(readFileSync(at("short.html"), "utf8")).toMatch(
      /In no plan: 1 row<.*mark 02.*a piece of 4000 mm/s,
    );
  });
});
