import { describe, expect, it } from "vitest";
import { ticketPage } from "../../../addin/print/ticket-page";
import { trialLogPage } from "../../../addin/print/trial-log-page";
import { runAudit } from "../../../core/audit/run-audit";
import { ticketsOf as allTicketsOf } from "../../../core/jobs";
import { type Cell, sheetFromRows } from "../../../core/schedule";
import { Workshop } from "../../../core/shop";
import { resolveStandard, type Standard } from "../../../core/standards";
import { BS8666, EMPTY_LOG, HEADER, SHOP, ticketsOf } from "../../core/tickets/ticket-sheets";

const head = { job: "Otter Weir", schedule: "OW-3", revision: "C", standard: "BS8666:2005" };
const textOf = (page: string): string =>
  page
    .replace(/<style>[\s\S]*?<\/style>/, "")
    .replace(/<[^>]*>/g, " ")
    .replace(/\s+/g, " ");
const page = (rows: Cell[][], shop: readonly (readonly Cell[])[] | null = SHOP): string =>
  ticketPage(ticketsOf(rows, shop), head);
const BS8666_2020 = resolveStandard("BS8666:2020") as Standard;
const L: Cell[] = ["<B1>", "01", "H16", 2, 10, 20, 975, "11", 600, 400];

describe("ticketPage", () => {
  const text = textOf(page([L]));

  it("should print the least former beside one that a width asks to be smaller", () => {
    // 120 over the half circle of a 20 mm bar: 80 inside, where Table 2 of BS 8666:2005 has 140
    const tight = textOf(page([["B1", "15", "H20", 1, 1, 1, 1250, "13", 600, 120, 600]]));
    expect(tight).toMatch(
      /Former 80 by the radius of the bend.*: below 140, the least of the standard: do not bend, ask the designer/,
    );
  });

  it("should print mark, count, size, cut length, reference, former, masses and free leg", () => {
    expect(text).toContain("01 20 × H16");
    expect(text).toContain("cut to 975 ±25");
    expect(text).toContain("Otter Weir · schedule OW-3 · rev. C · BS8666:2005 · Schedule row 3");
    expect(text).toContain("Former 64 the standard&#39;s least, in the rack");
    expect(text).toContain("Bent at once 2 on Bench 2, by its plate");
    // 20 bars of 0.975 m at 1.579 kg/m: 30.8 kg
    expect(text).toContain("1.5 kg each, 30.8 kg in all");
    expect(text).toContain("B takes up the tolerance");
    expect(text).toContain("A 600 ±5");
    expect(text).toContain("BS 8666:2005, Table 5 (memory)");
  });

  it("should print a note of every ticket once, on the head, and point at it from each", () => {
    const caution = BS8666_2020.caution ?? "";
    expect(caution).not.toBe("");
    const two = textOf(
      ticketPage(
        ticketsOf([L, ["<B1>", "02", "H16", 2, 10, 20, 975, "11", 600, 400]], SHOP, BS8666_2020),
        head,
      ),
    );
    expect(two.split(caution.slice(0, 40)).length - 1).toBe(1);
    expect(two.indexOf("On every ticket:")).toBeLessThan(two.indexOf("01 20 × H16"));
    expect(two.split("The notes on the head of these papers hold for this bar too.").length - 1).toBe(2);
    // a ticket that is alone carries its own
    expect(textOf(ticketPage(ticketsOf([L], SHOP, BS8666_2020), head))).not.toContain("On every ticket:");
  });

  it("should print marks, stops and what the angle rests on", () => {
    // an L of 600 x 400: start 552, middle 583.4, end 614.8, 975 - 552 = 423 from the other end
    expect(text).toMatch(/1 1 552 583 615 552 first end 423 last end 90° 9\d\.\d°/);
    expect(text).toContain("rests on 3 trials on Bench 2, heats A7 and B1, 2031-02-03 to 2031-02-05");
  });

  it("should head what is done before a bend, and the angle by the median alone, in plain words", () => {
    expect(text).toContain("Step Before it Bend Start");
    expect(text).toContain("Released, 90 % By median");
    expect(text).toContain("by median: the angle wanted and the median springback of the trials");
  });

  it("should give a mark longer than a line no more room than it needs", () => {
    const mark = "RW-04-E-STEM-0107-T1-NEARFACE";
    const long = page([["B1", mark, "H16", 2, 10, 20, 975, "11", 600, 400]]);
    expect(long).toContain(`<div class="mark long">${mark}</div>`);
    expect(page([L])).toContain('<div class="mark">01</div>');
  });

  it.each([
    // common practice: offices of the United States and Canada print on Letter, others on A4
    ["ACI318:2019", "letter"],
    ["CSA-A23.1:2019", "letter"],
    ["BS8666:2005", "A4"],
  ])("should be made for the paper of the country of %s", (standard, paper) => {
    const printed = ticketPage(ticketsOf([L], SHOP), { ...head, standard });
    expect(printed).toContain(`@page { size: ${paper}; }`);
    expect(printed.match(/size: (?:letter|A4)/g)).toHaveLength(1);
  });

  it("should say how far the free leg comes out otherwise than written, where the length is not its legs'", () => {
    const aci = resolveStandard("ACI318:2019") as Standard;
    const bars: Cell[][] = [3, 4, 5].map((feet) => [
      "B1",
      `0${feet}`,
      "#5",
      1,
      1,
      1,
      `${feet + 1}'-4"`,
      `1'-0" +90 ${feet}'-4"`,
    ]);
    const sheets = [sheetFromRows("Schedule", [[...HEADER], ...bars])];
    const report = runAudit({ sheets, standard: aci });
    const { tickets } = allTicketsOf([{ report, sheets, workshop: new Workshop(null, aci) }]);
    const sums = textOf(ticketPage(tickets, head));
    // 12 and 40 in; former 6 x 5/8 = 3.75 in (ACI 318-19, 25.3.1), set-back 2.5 at each side of the bend, arc
    // 90 degrees of 2.1875: 52 - 5 + 3.436 = 50.436, up to the next 1/4 in 50 1/2 (common practice)
    expect(sums).toContain(
      "leg 2 takes up the tolerance, and comes out 1 1/2&quot; longer than written : cut to 4&#39;-4&quot;, where the legs need 4&#39;-2 1/2&quot;",
    );
    expect(sums).toContain("doubtful the length is the sum of the legs, more than they need");
    // legs 600 and 400 of the sheet's way: 975 is theirs, 875 is 100 less
    const short = textOf(page([["B1", "02", "H16", 1, 1, 1, 875, "11", 600, 400]]));
    expect(short).toContain("comes out 100 shorter than written : cut to 875, where the legs need 975");
    expect(text).not.toContain("than written");
  });

  it("should print what a person sets in sixteenths, cautions with it", () => {
    const aci = resolveStandard("ACI318:2019") as Standard;
    const long = ticketsOf([["B1", "01", "#5", 1, 1, 1, "24'-0\"", "00"]], null, aci);
    // 6 m are 236.22 in: up to the next sixteenth 19'-8 1/4"
    expect(textOf(ticketPage(long, head))).toContain("Bar over 19&#39;-8 1/4&quot;: level supports");
  });

  it("should send to the sketch where the shape is drawn for each bar", () => {
    const drawn = textOf(page([["B1", "09", "H16", 1, 1, 1, 2600, "99", null, null]]));
    expect(drawn).toContain("bend it by the sketch on its own drawing. No bend or angle of it was checked.");
  });

  it("should show no angle but the wanted one without a trial", () => {
    const empty = textOf(page([L], EMPTY_LOG));
    expect(empty).toMatch(/423 last end 90° make a trial bend first/);
    expect(empty.match(/\d+(\.\d+)?°/g)).toEqual(expect.arrayContaining(["90°"]));
    expect(new Set(empty.match(/\d+(\.\d+)?°/g))).toEqual(new Set(["90°"]));
  });

  it("should say that no bender makes it, and why", () => {
    const blocked = textOf(page([["B1", "02", "H16", 1, 1, 1, 650, "11", 600, 60]]));
    expect(blocked).toContain("Machine none known to make it");
    expect(blocked).toContain("unbendable on Bench 2, not sure of another leg B of 60 mm is too short");
  });

  it("should put what may hurt above the drawing", () => {
    const row: Cell[] = ["B1", "03", "H16", 1, 1, 1, 1500, "21", 600, null, 600];
    const whole = page([row]);
    expect(whole.indexOf("Do not make this bar until it is cleared")).toBeGreaterThan(0);
    expect(whole.indexOf("Do not make this bar")).toBeLessThan(whole.indexOf("<figure>"));
    expect(page([L])).not.toContain("Do not make this bar");
  });

  it("should escape what the sheet says, fetch nothing and run nothing", () => {
    const whole = page([L]);
    expect(whole).toContain("&lt;B1&gt;");
    expect(whole).not.toMatch(/<script|src=|url\(|@import|href=/);
  });

  it("should never call an angle by the words of a machine's controller", () => {
    expect(text).not.toMatch(/set angle|overbend/i);
  });

  it("should print feet and inches where the standard is in inches", () => {
    const aci = resolveStandard("ACI318:2019") as Standard;
    const row: Cell[] = ["B1", "01", "#5", 1, 4, 4, null, "24in +90 16in"];
    const american = textOf(ticketPage(ticketsOf([row], null, aci), head));
    // #5 about 6 diameters: set-back 1.875 + 0.625 = 2.5 in, so the bend starts at 21.5 in
    expect(american).toContain("01 4 × #5");
    expect(american).toContain("1&#39;-9 1/2&quot;");
    expect(american).toContain("Lengths in feet and inches");
  });
});

describe("trialLogPage", () => {
  const yard = (rows: readonly (readonly Cell[])[]) => {
    const sheet = sheetFromRows(
      "Shop",
      rows.map((row) => [...row]),
    );
    return new Workshop(sheet, BS8666);
  };

  it("should draw and list every group, and name the trial that does not fit", () => {
    const odd: Cell[] = ["2031-02-06", "Bench 2", "H16", 64, "H", "bar", "B1", 96, 74];
    const whole = trialLogPage(yard([...SHOP, odd]), 10, head);
    expect(whole.match(/<svg class="plot"/g)).toHaveLength(2);
    const text = textOf(whole);
    expect(text).toContain("16 mm on former 64");
    expect(text).toContain("One trial does not fit: measure again. None was dropped.");
    expect(text).toContain("row 14");
    expect(text).toContain("96° 74° 22°");
  });

  it("should print no angle for an empty log", () => {
    const text = textOf(trialLogPage(yard(EMPTY_LOG), 1, head));
    expect(text).toContain("Make a trial bend first");
    expect(text).not.toMatch(/\d°/);
  });
});
