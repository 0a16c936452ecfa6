import { codedBar, withLength } from "./coded-bar";
import type { Mistake } from "./mistake";
import { plantInRow } from "./plant-in-row";

const STEP = 5;
const SECTIONS = ["300x600 cover 40", "beam 300 x 600, cover 40", "600×300 c=40", "300 x 600 mm, 40 cover"];
const FORMWORK_LENGTHS = ["length 6000 cover 40", "L=6000 c=40", "beam length 6000, cover 40"];

/** Dims, codes and lengths that do not go together. */
export const LENGTH_MISTAKES: readonly Mistake[] = [
  {
    number: 9,
    name: "longer than stock and no lap",
    rules: ["SUPPLY101"],
    judgedBy: "cell",
    smallest: "12025 mm, one step of lengths above 12 m",
    plant(place) {
      const length = place.random.pick([12_025, 12_100, 14_000]);
      return plantInRow(place, { bar: codedBar(place.bar, "00", 10, [length]), keys: ["length"] });
    },
  },
  {
    number: 10,
    name: "lap in a split bar too short",
    rules: ["LEN105"],
    judgedBy: "cell",
    smallest: "5 mm below the lap asked for",
    plant(place) {
      const base = codedBar(place.bar, "00", 12, [null as unknown as number]);
      const lap = 650 - place.random.pick([5, 50]);
      const bar = { ...base, dims: [], length: `11000+${lap} (lap)`, mass: null, remark: "lap 650" };
      return plantInRow(place, { bar, keys: ["length"] });
    },
  },
  {
    number: 11,
    name: "typed length is not the formula's",
    rules: ["LEN102"],
    judgedBy: "cell",
    smallest: "one 25 mm step of the length",
    plant(place) {
      const { bar, random } = place;
      if (typeof bar.length !== "number" || bar.kind === "straight") return null;
      // exact geometry may allow one step more than the printed formula, never two
      const steps = bar.shape === "21" || bar.shape === "11" ? random.pick([1, 2]) : 3;
      const sense = random.chance(0.3) ? -2 : 1;
      return plantInRow(place, { bar: withLength(bar, bar.length + 25 * sense * steps), keys: ["length"] });
    },
  },
  {
    number: 18,
    name: "a dimension that the code needs is blank",
    rules: ["SHAPE103"],
    judgedBy: "cell",
    smallest: "one cell",
    plant(place) {
      const { bar, random } = place;
      const filled = bar.dims.filter((dim) => dim !== null).length;
      if (filled < 2 || bar.shape === "12") return null;
      const blank = random.between(0, filled - 1);
      const dims = bar.dims.map((dim, at) => (at === blank ? null : dim));
      return plantInRow(place, { bar: { ...bar, dims }, keys: [`dims.${blank}`] });
    },
  },
  {
    number: 19,
    name: "a dimension that the code does not take",
    rules: ["SHAPE104"],
    judgedBy: "cell",
    smallest: "one cell",
    plant(place) {
      const { bar } = place;
      if (bar.shape !== "11" && bar.shape !== "21") return null;
      const dims = [...bar.dims, ...Array.from({ length: 3 - bar.dims.length }, () => null), 300];
      return plantInRow(place, { bar: { ...bar, dims }, keys: ["dims.3"] });
    },
  },
  {
    number: 20,
    name: "unknown shape code, or one of another country",
    rules: ["SHAPE101"],
    judgedBy: "cell",
    smallest: "38, 37, 60 of the older lists",
    plant(place) {
      return plantInRow(place, {
        bar: { ...place.bar, shape: place.random.pick(["38", "37", "60", "97"]) },
        keys: ["shape"],
      });
    },
  },
  {
    number: 21,
    name: "all dims given and none free",
    rules: ["SHAPE108"],
    judgedBy: "cell",
    smallest: "a sketched shape on a sheet that uses brackets",
    plant(place) {
      const { schedule, at, bar } = place;
      const other = schedule.bars.findIndex(({ shape }, index) => shape === "21" && index !== at);
      const free = schedule.bars[other];
      if (free === undefined) return null;
      const bracketed = { ...free, dims: free.dims.map((dim, letter) => (letter === 2 ? `(${dim})` : dim)) };
      const bars = schedule.bars.map((one, index) => (index === other ? bracketed : one));
      const base = codedBar(bar, "21", 12, [500, 400, 500]);
      return plantInRow(
        { ...place, schedule: { ...schedule, bars } },
        { bar: { ...base, shape: "99" }, keys: ["shape"] },
      );
    },
  },
  {
    number: 22,
    name: "link dimensioned inside instead of outside",
    rules: ["MEMBER103"],
    judgedBy: "row",
    smallest: "two diameters off",
    plant(place) {
      const base = codedBar(place.bar, "51", 10, [500, 200, 130]);
      return plantInRow(place, {
        bar: { ...base, remark: place.random.pick(SECTIONS) },
        keys: ["dims.0", "dims.1"],
      });
    },
  },
  {
    number: 23,
    name: "link larger than the section less cover",
    rules: ["MEMBER102"],
    judgedBy: "cell",
    smallest: "one 5 mm step above the section less both covers",
    plant(place) {
      const over = STEP * place.random.pick([1, 2, 6]);
      const side = place.random.between(0, 1);
      const dims = side === 0 ? [520 + over, 220, 130] : [520, 220 + over, 130];
      const base = codedBar(place.bar, "51", 10, dims);
      return plantInRow(place, {
        bar: { ...base, remark: place.random.pick(SECTIONS) },
        keys: [`dims.${side}` as "dims.0"],
      });
    },
  },
  {
    number: 25,
    name: "cover eaten: link as large as the member",
    rules: ["MEMBER101"],
    judgedBy: "cell",
    smallest: "one side equal",
    plant(place) {
      const base = codedBar(place.bar, "51", 10, [600, 220, 130]);
      return plantInRow(place, { bar: { ...base, remark: place.random.pick(SECTIONS) }, keys: ["dims.0"] });
    },
  },
  {
    number: 26,
    name: "bar longer than the member less covers",
    rules: ["MEMBER104"],
    judgedBy: "cell",
    smallest: "one 5 mm step above the formwork less both covers",
    plant(place) {
      const base = codedBar(place.bar, "00", 12, [5920 + STEP * place.random.pick([1, 16])]);
      return plantInRow(place, {
        bar: { ...base, remark: place.random.pick(FORMWORK_LENGTHS) },
        keys: ["dims.0"],
      });
    },
  },
  {
    number: 31,
    name: "one length given for a set that varies",
    rules: ["LEN103"],
    judgedBy: "cell",
    smallest: "the mean",
    plant(place) {
      const base = codedBar(place.bar, "00", 12, [1500]);
      const bar = { ...base, dims: ["1200-1800 step 50"], members: 1, each: 13, total: 13, mass: null };
      return plantInRow(place, { bar, keys: ["length"] });
    },
  },
  {
    number: 36,
    name: "units slip by 10, 1000 or from inches",
    rules: ["UNIT101", "UNIT102", "UNIT103"],
    judgedBy: "cell",
    smallest: "one figure",
    plant(place) {
      const { bar, random } = place;
      if (typeof bar.length !== "number" || bar.kind === "straight") return null;
      if (random.chance(0.4) && typeof bar.dims[0] === "number" && bar.dims[0] >= 300) {
        const [first, ...others] = bar.dims;
        return plantInRow(place, {
          bar: { ...bar, dims: [first / random.pick([10, 0.1]), ...others] },
          keys: ["dims.0"],
        });
      }
      const factor = random.pick([10, 0.1, 0.001, 1 / 25.4]);
      const length = Number((bar.length * factor).toFixed(3));
      return plantInRow(place, { bar: { ...bar, length }, keys: ["length"] });
    },
  },
  {
    number: 45,
    name: "bar heavier than one person lifts",
    rules: ["LIFT101"],
    judgedBy: "row",
    smallest: "25 mm bar of 6500 mm, 25.05 kg",
    plant(place) {
      const bar = codedBar(place.bar, "00", 25, [place.random.pick([6500, 8000])]);
      return plantInRow(place, { bar, keys: ["length"] });
    },
  },
  {
    number: 46,
    name: "shape wider than the transport",
    rules: ["SUPPLY102"],
    judgedBy: "row",
    smallest: "2755 mm, one 5 mm step above 2750",
    plant(place) {
      const wide = 2750 + STEP * place.random.pick([1, 10]);
      return plantInRow(place, { bar: codedBar(place.bar, "21", 12, [wide, 3000, wide]), keys: ["shape"] });
    },
  },
  {
    number: 47,
    name: "shape larger than the opening on site",
    rules: ["SUPPLY104"],
    judgedBy: "row",
    smallest: "5 mm above the opening set in the workbook",
    plant(place) {
      const bar = codedBar(place.bar, "21", 12, [1605, 1800, 1605]);
      return plantInRow(place, { bar, keys: ["shape"], limits: { accessWidth: 1600 } });
    },
  },
  {
    number: 59,
    name: "length by a deduction that is too large",
    rules: ["LEN106"],
    judgedBy: "cell",
    smallest: "one diameter for each bend of a crank",
    plant(place) {
      const d = place.random.pick([16, 20, 25]);
      // legs so chosen that the site's length is a step of lengths
      const legs = 2500 + 25 * place.random.between(0, 20) + (d === 16 ? 30 : 2 * d);
      const offset = 3 * d;
      const round = Math.ceil(offset / STEP) * STEP;
      const middle = 8 * round;
      const base = codedBar(place.bar, "26", d, [1000, middle, legs - 1000 - middle, round]);
      const length = Math.floor((legs - 2 * d + 2) / 25) * 25;
      return plantInRow(place, { bar: withLength(base, length), keys: ["length"] });
    },
  },
];
