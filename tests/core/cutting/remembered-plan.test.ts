import { expect, it, vi } from "vitest";
import { planCutting } from "../../../core/cutting/plan-cutting";
import { rememberedPlan } from "../../../core/cutting/remembered-plan";

vi.mock("../../../core/cutting/plan-cutting", { spy: true });

const STOCK = [{ length: 12_000, count: null, remnant: false }];
const question = (length: number, timeLimit: number) => ({
  pieces: [{ length, count: 30 }],
  stock: STOCK,
  endCrop: 0,
  kerf: 0,
  timeLimit,
});

it("should plan once what is asked again, also where another size took a little more of the time", () => {
  // 30 pieces of 4 m are 3 to a bar of 12 m: 10 bars
  expect(rememberedPlan(question(4000, 300))).toMatchObject({ bars: 10, provenLeast: true });
  expect(rememberedPlan(question(4000, 290))).toMatchObject({ bars: 10, provenLeast: true });
  expect(planCutting).toHaveBeenCalledTimes(1);
});

it("should plan anew what has another length, count or stock", () => {
  // 30 pieces of 6 m are 2 to a bar of 12 m: 15 bars
  expect(rememberedPlan(question(6000, 300))).toMatchObject({ bars: 15 });
  const counted = { ...question(6000, 300), pieces: [{ length: 6000, count: 31 }] };
  expect(rememberedPlan(counted)).toMatchObject({ bars: 16 });
  const short = { ...counted, stock: [{ length: 9000, count: null, remnant: false }] };
  // one of 6 m to a bar of 9 m
  expect(rememberedPlan(short)).toMatchObject({ bars: 31 });
});

it("should refuse as the planner does", () => {
  expect(rememberedPlan(question(13_000, 300))).toEqual(planCutting(question(13_000, 300)));
});
