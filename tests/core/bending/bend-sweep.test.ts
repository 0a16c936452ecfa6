import { describe, expect, it } from "vitest";
import { bendSweep, type SweepInput } from "../../../core/bending/bend-sweep";
import { type ChainStep, heldChain, sideChain } from "../../../core/bending/side-chain";

const RADIUS = 30;
const RIGHT = Math.PI / 2;
const straight = (length: number): ChainStep => ({ piece: 0, length, angle: 0 });
const arc = (degrees: number): ChainStep => {
  const angle = (degrees * Math.PI) / 180;
  return { piece: 1, length: Math.abs(angle) * RADIUS, angle };
};

const TOOLING = {
  machine: "M1",
  diameter: 12,
  former: 48,
  pin: 30,
  orbitRadius: 99,
  backRestDistance: 90,
  pinLever: Math.sqrt(99 ** 2 - 51 ** 2),
  largestAngle: null,
  guardRadius: null,
};

function sweep(swinging: ChainStep[], held: ChainStep[], change: Partial<SweepInput> = {}) {
  return bendSweep({
    swinging: sideChain(swinging),
    held: heldChain(sideChain(held), RADIUS),
    angle: RIGHT,
    bentTo: RIGHT,
    radius: RADIUS,
    tooling: TOOLING,
    clearance: 1,
    passesItself: false,
    scratch: new Float64Array(400),
    ...change,
  });
}

describe("bendSweep", () => {
  it("lets a plain leg swing", () => {
    // farthest: the end before it moves, 47.12 + 400 from the line and 30 off the axis, and half a bar
    const found = sweep([straight(400)], [straight(500)]);
    expect(found).toMatchObject({ clear: true, notes: [] });
    expect(found.clear && found.reach).toBeCloseTo(Math.hypot(447.124, 30) + 6, 2);
  });

  it("meets a held leg that a long arm would pass between two looks at whole degrees", () => {
    // the arm's return hangs 3 m out and is 12 mm thick: a degree is 52 mm there
    const arm = [straight(3000), arc(90), straight(150)];
    // walked from the bend, the held side turns up for a negative angle
    const post = [straight(2950), arc(-90), straight(400)];
    const found = sweep(arm, post, { angle: Math.PI * 0.99, bentTo: Math.PI * 0.99 });
    expect(found).toMatchObject({ clear: false, obstacle: "swinging part against the held part" });
    // before it would lie down beside the post
    expect(found.clear ? 180 : found.at).toBeLessThan(178);
  });

  it("counts what wraps beyond the wanted angle against the leg", () => {
    // the pin needs 84.85 and 10 more: 95 is enough until four degrees wrap another 2.1
    expect(sweep([straight(96)], [straight(500)]).clear).toBe(true);
    expect(sweep([straight(96)], [straight(500)], { bentTo: RIGHT + 0.07 })).toEqual({
      clear: false,
      obstacle: "swinging leg shorter than the pin's reach",
      at: null,
    });
  });

  it("sees the tail of a hook lean on the held leg when it is bent beyond 180", () => {
    const beyond = (degrees: number) => ({ angle: Math.PI, bentTo: Math.PI + (degrees * Math.PI) / 180 });
    // 60 between centre lines, 13 needed: 47 over 260 is about 10 degrees
    expect(sweep([straight(260)], [straight(500)], beyond(8)).clear).toBe(true);
    expect(sweep([straight(260)], [straight(500)], beyond(13))).toMatchObject({
      clear: false,
      obstacle: "swinging part against the held part",
    });
    expect(sweep([straight(120)], [straight(500)], beyond(13)).clear).toBe(true);
  });

  it("lets legs pass that lie over each other in the finished bar, and says so", () => {
    const found = sweep([straight(260)], [straight(500)], {
      angle: Math.PI,
      bentTo: Math.PI + 0.25,
      passesItself: true,
    });
    expect(found).toMatchObject({ clear: true, notes: ["legs pass out of plane"] });
  });

  it("runs a part bent the other way into the pin", () => {
    // back under a pin of 60 whose middle is 66 - 30 below the bar's axis: 60 - 36 is less than 30 + 6
    const tooling = { ...TOOLING, pin: 60, pinLever: Math.sqrt(99 ** 2 - 66 ** 2) };
    const found = sweep([straight(110), arc(-180), straight(300)], [straight(500)], { tooling });
    expect(found).toMatchObject({ clear: false, obstacle: "swinging part against the pin" });
    expect(sweep([straight(110), arc(180), straight(60)], [straight(500)], { tooling }).clear).toBe(true);
  });

  it("runs a held part bent the same way into the former", () => {
    // the held leg comes back over the former: 95 out, 60 up, back across
    const found = sweep([straight(400)], [straight(95), arc(-150), straight(300)]);
    expect(found.clear).toBe(false);
    expect(found.clear ? "" : found.obstacle).toMatch(
      /held part against the (former|pin)|swinging part against the held part/,
    );
  });
});
