import { describe, expect, it } from "vitest";
import { trialWords } from "../../../addin/print/trial-words";
import type { Ticket } from "../../../core/tickets";
import { bundleItem } from "../../../core/tickets/bundle-item";
import { BS8666, EMPTY_LOG, SHOP, ticketsOf } from "./ticket-sheets";

const L = ["B1", "01", "H16", 2, 10, 20, 975, "11", 600, 400];
const U = ["B1", "02", "H12", 1, 8, 8, 1575, "21", 600, 400, 600];
const one = (row: (string | number | null)[], shop: typeof SHOP | null = SHOP): Ticket =>
  ticketsOf([row], shop)[0]!;

describe("makeTicket: what is to be made", () => {
  const ticket = one([...L, null, null, null, "D", "P4"]);

  it("should name the bar, its schedule and the revision of its row before the sheet's", () => {
    expect(ticket).toMatchObject({ mark: "01", member: "B1", pour: "P4", count: 20, size: "H16", row: 3 });
    expect(ticket.head).toEqual({
      job: "Otter Weir",
      schedule: "OW-3",
      drawing: null,
      revision: "C",
      date: null,
    });
    expect([ticket.revision, one(L).revision]).toEqual(["D", "C"]);
  });

  it("should give each dimension its tolerance and leave the free leg without one", () => {
    // BS 8666:2005 Table 5, from memory: cut +-25; bent to 1000 +-5, to 2000 +5 -10, above +5 -25
    expect(ticket.cut).toMatchObject({ length: 975, from: "schedule", tolerance: { plus: 25, minus: 25 } });
    expect(ticket.dimensions).toEqual([
      { name: "A", length: 600, free: false, tolerance: { plus: 5, minus: 5 } },
      { name: "B", length: 400, free: true, tolerance: null },
    ]);
    expect(ticket.freeLeg).toBe("B");
    const long = one(["B1", "03", "H16", 1, 1, 1, 2675, "11", 2100, 600]);
    expect(long.dimensions[0]?.tolerance).toEqual({ plus: 5, minus: 25 });
    const middle = one(["B1", "03", "H16", 1, 1, 1, 1575, "11", 1200, 400]);
    expect(middle.dimensions[0]?.tolerance).toEqual({ plus: 5, minus: 10 });
  });

  it("should tell a count of 0 from one that is not known, and tie no bundle of either", () => {
    const none = one(["B1", "01", "H16", 2, 0, 0, 975, "11", 600, 400]);
    const open = one(["B1", "01", "H16", null, null, null, 975, "11", 600, 400]);
    expect([none.count, open.count]).toEqual([0, null]);
    expect([bundleItem(none), bundleItem(open)]).toEqual([null, null]);
  });

  it("should say of a bar that its row is hidden", () => {
    const hidden = ticketsOf([L, U], SHOP, BS8666, (row) => row === 3);
    const saysIt = ({ warnings }: Ticket): boolean => warnings.some(({ text }) => text.includes("is hidden"));
    expect(hidden.map(saysIt)).toEqual([false, true]);
  });

  it("should weigh one bar and all of them", () => {
    // 16 mm bar 1.579 kg/m (BS 8666:2005, Table 1): 0.975 x 1.579 = 1.5395; times 20 = 30.79
    expect(ticket.massEach).toBeCloseTo(1.5395, 3);
    expect(ticket.massTotal).toBeCloseTo(30.79, 2);
  });
});

describe("makeTicket: marks, stops and order", () => {
  it("should mark an L of 600 x 400 as by hand", () => {
    // r 32, d 16: set-back 48, so 600 - 48 = 552; arc 90 deg at 40 = 62.83; the stop from the other end 975 - 552
    const [bend] = one(L).bends;
    expect(bend).toMatchObject({ bend: 1, turn: 90, held: "first end", swinging: "last end", former: 64 });
    expect(bend?.start).toBeCloseTo(552, 6);
    expect(bend?.middle).toBeCloseTo(583.416, 3);
    expect(bend?.end).toBeCloseTo(614.832, 3);
    expect(bend?.fromHeld.distance).toBeCloseTo(552, 6);
    expect(bend?.fromSwinging.distance).toBeCloseTo(423, 6);
  });

  it("should put bends in working order with their stops from what is bent already", () => {
    const { bends, order } = one(U);
    expect(order).toMatchObject({ kind: "found", machine: "Bench 2" });
    // r 24, d 12: straights 564, 328, 564; arc 47.12: second bend starts at 564 + 47.12 + 328 = 939.12
    expect(bends.map((bend) => bend.start).sort((a, b) => a - b)[1]).toBeCloseTo(939.124, 3);
    const [first, second] = bends;
    expect(first?.fromHeld.fromBend).toBeNull();
    const onBend = second?.fromHeld.fromBend ?? second?.fromSwinging.fromBend;
    expect(onBend).toBe(first?.bend);
  });

  it("should say why a bend cannot be made, and choose no machine", () => {
    const ticket = one(["B1", "04", "H16", 1, 1, 1, 650, "11", 600, 60], SHOP);
    expect(ticket.order.kind).toBe("blocked");
    expect(ticket.order.kind === "blocked" && ticket.order.reasons.join()).toContain(
      "leg B of 60 mm is too short: pin and back-rest need",
    );
    expect(ticket.machine.name).toBeNull();
    // of the old bender nothing is known, so it might make the bar
    expect(ticket.order).toMatchObject({ sure: false });
    const onlyBench = SHOP.filter((row) => row[0] !== "Old one");
    expect(one(["B1", "04", "H16", 1, 1, 1, 650, "11", 600, 60], onlyBench).order).toMatchObject({
      sure: true,
    });
  });
});

describe("makeTicket: the machine", () => {
  it("should choose the bender that is rated, has the former and finds an order", () => {
    const ticket = one(L);
    expect(ticket.machine).toEqual({ name: "Bench 2", reasons: [] });
    expect(ticket.bendsAtOnce).toMatchObject({ machine: "Bench 2", bars: 2, basis: "plate" });
    expect(ticket.cutsAtOnce).toMatchObject({ machine: "Shear 1", bars: 3, basis: "plate" });
    expect(ticket.formers).toEqual([
      { diameter: 64, wanted: 64, from: "standard's least", inRack: true, below: null },
    ]);
    // the leg beyond the former: a bar of 975 held at 552 swings about 423 mm, never less than its leg of 400
    expect(ticket.swingRadius).toBeGreaterThan(400);
    expect(ticket.swingRadius).toBeLessThan(460);
  });

  it("should say what is missing where none is known to make it", () => {
    expect(one(L, null).machine).toEqual({
      name: null,
      reasons: ["the workbook has no Shop sheet, so no bender is known"],
    });
    const noFormer = one([
      "B1",
      "05",
      "H16",
      1,
      1,
      1,
      1000,
      "11",
      600,
      400,
      null,
      null,
      null,
      null,
      null,
      100,
    ]);
    expect(noFormer.machine.name).toBeNull();
    expect(noFormer.machine.reasons.join()).toContain(
      "no former of 100 mm: the rack holds 40 mm, 48 mm, 64 mm, 140 mm",
    );
    const beyond = one(["B1", "06", "H32", 1, 1, 1, 2225, "11", 1500, 800]);
    expect(beyond.machine.reasons.join()).toContain("is beyond Bench 2 by an estimate from its plate");
  });

  it("should take the next larger former of the rack for the least, and mark the bar for it", () => {
    const shop = SHOP.map((row) =>
      row[0] === "Bench 2" && row[6] !== undefined ? [...row.slice(0, 6), "40, 80"] : row,
    );
    const ticket = one(L, shop);
    expect(ticket.machine.name).toBe("Bench 2");
    expect(ticket.formers).toEqual([
      { diameter: 80, wanted: 64, from: "standard's least", inRack: true, below: null },
    ]);
    // r 40, d 16: 600 - 56 = 544; a former that the schedule names is never changed
    expect(ticket.bends[0]?.start).toBeCloseTo(544, 6);
    const named = one([...L, null, null, null, null, null, 64], shop);
    expect(named.machine.name).toBeNull();
    expect(named.formers[0]?.diameter).toBe(64);
  });

  it("should say the least former beside one that a width asks to be smaller", () => {
    // shape 13, 20 mm: B 120 leaves an inside of 80 where Table 2 of BS 8666:2005 has 140
    const tight = one(["B1", "15", "H20", 1, 1, 1, 1250, "13", 600, 120, 600]);
    expect(tight.formers[0]).toMatchObject({ diameter: 80, from: "shape", below: 140 });
  });

  it("should take a former within the tolerance of the bend that it makes", () => {
    const shop = SHOP.map((row) =>
      row[0] === "Bench 2" && row[6] !== undefined ? [...row.slice(0, 6), "64, 125"] : row,
    );
    // B 160 of shape 13 is over all: 160 less two diameters are 128, and a bent dimension may be 5 out
    const hook = one(["B1", "14", "H16", 1, 1, 1, 900, "13", 400, 160, 450], shop);
    expect(hook.formers[0]).toMatchObject({ diameter: 125, wanted: 128, from: "shape" });
  });

  it("should call a number that the plate does not name an estimate", () => {
    const twenty = one(["B1", "07", "H20", 1, 1, 1, 1475, "11", 900, 620]);
    expect(twenty.bendsAtOnce).toMatchObject({ bars: 1, basis: "plate" });
    // the plate names 16 and 20 mm: 2 bars of 16 hold for a lighter 12, and 20/12 cubed is 4.6, capped at 3
    expect(one(U).bendsAtOnce).toMatchObject({ bars: 3, basis: "estimate" });
  });
});

describe("makeTicket: the angle to bend to", () => {
  it("should stand on the trials of the same machine, with its interval and the plain rule", () => {
    const angle = one(L).bends[0]!.compensated;
    // springbacks 6, 6.5, 6: the plain rule adds their median 6 to 90; the fit agrees within a degree
    expect(angle.plain).toBeCloseTo(96, 6);
    expect(angle.angle).toBeGreaterThan(95);
    expect(angle.angle).toBeLessThan(97);
    expect(angle.low).toBeLessThan(90);
    expect(angle.high).toBeGreaterThan(90);
    expect(angle.trials).toEqual([
      { date: "2031-02-03", machine: "Bench 2", heat: "A7" },
      { date: "2031-02-04", machine: "Bench 2", heat: "A7" },
      { date: "2031-02-05", machine: "Bench 2", heat: "B1" },
    ]);
  });

  it("should tell trials that do not fit the others", () => {
    // a trial with its two angles exchanged: no bar bends further once it is let go; the others come back by 6
    const log: [number, number][] = [
      [90, 92],
      [46, 43],
      [138, 129],
    ];
    const turned = [
      ...EMPTY_LOG,
      ...SHOP.slice(9, -3),
      ...log.map((angles) => ["2031-02-03", "Bench 2", "H16", 64, "H", "bar", "A7", ...angles]),
    ];
    const angle = one(L, turned).bends[0]!.compensated;
    expect(one(L).bends[0]!.compensated.doubtedTrials).toBe(0);
    expect(angle.doubtedTrials).toBeGreaterThan(0);
    expect(trialWords(angle)).toMatch(/not fit: measure again, and bend one bar first$/);
  });

  it("should ask for a trial and show no angle but the wanted one where the log is empty", () => {
    for (const shop of [EMPTY_LOG, null]) {
      const ticket = one(L, shop);
      const angle = ticket.bends[0]!.compensated;
      expect(angle).toMatchObject({ angle: null, low: null, high: null, plain: null });
      expect(angle.refusal).toContain("make a trial bend first");
      expect(angle.refusal).not.toMatch(/bending to|bent to/);
      expect(ticket.cautions.some(({ text }) => text.startsWith("Trial bend"))).toBe(true);
    }
  });

  it("should not name an angle that is known too loosely", () => {
    const others = (["H10", "H12", "H20"] as const).map((size) => [
      "2031-02-06",
      "Bench 2",
      size,
      { H10: 40, H12: 48, H20: 140 }[size],
      "H",
      "bar",
      "B1",
      98,
      90,
    ]);
    // four groups speak for a 32 mm bar without a trial, but more loosely than 2.5 degrees
    const row = ["B1", "13", "H32", 1, 1, 1, 2225, "11", 1500, 800];
    const angle = one(row, [...SHOP, ...others]).bends[0]!.compensated;
    expect(angle.angle).toBeNull();
    expect(angle.refusal).toMatch(/bent to 90 the released angle is known only to/);
  });

  it("should not let a guess speak for a hook that the machine could not close", () => {
    const hook = one(["B1", "08", "H16", 1, 1, 1, 900, "13", 400, 96, 300], EMPTY_LOG);
    for (const { compensated } of hook.bends) {
      expect(compensated.angle).toBeNull();
      expect(compensated.refusal).toContain("make a trial bend first");
    }
  });
});

describe("makeTicket: what cannot be said", () => {
  it("should keep a row with a refusal as a ticket that says so", () => {
    const missing = one(["B1", "09", "H16", 1, 1, 1, 1500, "21", 600, null, 600]);
    expect(missing.bends).toEqual([]);
    expect(missing.warnings[0]).toMatchObject({ severity: "unbendable" });
    expect(missing.warnings[0]?.text).toContain("B is blank");
  });

  it("should give a straight bar no bends and no bender", () => {
    const straight = one(["B1", "10", "H16", 1, 1, 1, 8000, "00", 8000]);
    expect([straight.bends, straight.order.kind, straight.machine.reasons]).toEqual([[], "no bends", []]);
    expect(straight.cautions.some(({ text }) => text.includes("direction of rotation"))).toBe(false);
    expect(straight.cautions.some(({ text }) => text.includes("level supports"))).toBe(true);
  });

  it("should make a straight bar by its length where that is all it is scheduled by", () => {
    const ticket = one(["B1", "04", "H16", 1, 4, 4, 6000, "00"]);
    expect(ticket.warnings).toEqual([]);
    expect(ticket.drawing?.path).toMatchObject({ kind: "planar", legs: [{ length: 6000 }] });
  });

  it("should draw no ring that is as narrow as its own bar", () => {
    const ring = one(["B1", "15", "H12", 1, 1, 1, 9000, "75", 12, 8000]);
    expect(ring.drawing).toBeNull();
    expect(ring.warnings[0]).toMatchObject({ severity: "unbendable", unsure: false });
  });

  it("should refuse marks on a bar cut too short", () => {
    // a developed length of 966.8 and a free straight of 352 cannot be made of 600 mm
    const short = one(["B1", "11", "H16", 1, 1, 1, 600, "11", 600, 400]);
    expect(short.bends).toEqual([]);
    expect(short.warnings.map(({ text }) => text).join()).toContain("cut it longer");
  });
});

describe("makeTicket: cautions", () => {
  it("should fit the case", () => {
    const texts = one(L).cautions.map(({ text }) => text);
    expect(texts[0]).toContain("plate and manual");
    expect(texts.some((text) => text.includes("direction of rotation checked empty"))).toBe(true);
    expect(texts.some((text) => text.includes("bending tooling off first"))).toBe(true);
    expect(texts.some((text) => /Nobody within \d+ mm/.test(text))).toBe(true);
    expect(texts.some((text) => text.includes("tongs"))).toBe(false);
    expect(texts.some((text) => text.includes("{"))).toBe(false);
    // 40 mm bar of 6 m: 59 kg, above the 25 kg figure
    const heavy = one(["B1", "12", "H40", 1, 1, 1, 6000, "00", 6000]).cautions.map(({ text }) => text);
    expect(heavy.some((text) => text.includes("59.2 kg a bar is above 25 kg"))).toBe(true);
  });
});

// no page with the drawings of BS 8666 was seen: sin t = (200 - 12 cos t) / 400 gives 28.6 by A, 200 / 1000 gives 11.5 by B
describe("makeTicket: a course that nobody saw in print", () => {
  const said = (ticket: Ticket) => ticket.warnings.filter(({ text }) => text.startsWith("course of shape"));

  it("should give no stop, no angle and no order where the drawing bears another reading, and say which", () => {
    const ticket = one(["B1", "05", "H12", 1, 1, 1, 1800, "27", 400, 1000, 400, 200]);
    expect(ticket.bends).toEqual([]);
    expect(ticket.order).toEqual({
      kind: "unsure",
      reason: "the course of the bar is in doubt, so no stop and no angle is given",
    });
    expect(ticket.drawing?.note).toBe("course in doubt: compare with the drawing");
    expect(said(ticket)).toHaveLength(1);
    expect(said(ticket)[0]).toMatchObject({ unsure: true });
    expect(said(ticket)[0]?.text).toContain("the slope turns 11.5 degrees");
  });

  it("should ask to compare the drawing where angles follow from it, and not of right angles", () => {
    const crank = one(["B1", "06", "H12", 1, 1, 1, 1800, "26", 400, 1000, 400, 200]);
    expect(crank.bends).toHaveLength(2);
    expect(said(crank).map(({ text }) => text)).toEqual([
      "course of shape 26 recalled: compare with the drawing before bending",
    ]);
    expect(said(one(U))).toEqual([]);
  });
});
