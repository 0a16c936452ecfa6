import { sheetFromRows } from "../../../core/schedule/sheet";
import { type CorpusSchedule, cellsOf, rowOf, sheetOf } from "../corpus-schedule";
import { codedBar } from "./coded-bar";
import type { Mistake, PlantingPlace } from "./mistake";
import { cellsOfKeys, plantInRow } from "./plant-in-row";

/** Counts, marks, masses, revisions and what the remark says. */
export const COUNT_MISTAKES: readonly Mistake[] = [
  {
    number: 12,
    isGeneral: true,
    name: "total is not members times each",
    // columns by size follow the planted total: there it is one of the others that looks wrong
    rules: ["SUM101", "SUM109"],
    judgedBy: "row",
    smallest: "one bar",
    plant(place) {
      const { bar, random } = place;
      if (bar.total === null || bar.each === null) return null;
      if (!place.schedule.columns.some(({ key }) => key === "each")) return null;
      return plantInRow(place, {
        bar: { ...bar, total: bar.total + random.pick([1, -1, 10]), mass: null },
        keys: ["total"],
      });
    },
  },
  {
    number: 27,
    name: "count from spacing off by one",
    rules: ["SUM106"],
    judgedBy: "cell",
    smallest: "one bar",
    plant(place) {
      const [spacing, width] = place.random.pick([
        [150, 3000],
        [200, 4100],
        [250, 5000],
      ] as const);
      // between the two lie the numbers that a run rounded down or up has
      const each = place.random.pick([Math.floor(width / spacing), Math.ceil(width / spacing) + 2]);
      const base = codedBar(place.bar, "00", 10, [2000]);
      const bar = {
        ...base,
        members: 1,
        each,
        total: each,
        mass: null,
        spacing,
        remark: place.random.pick([`over ${width}`, `width ${width}`, `across ${width}`]),
      };
      return plantInRow(place, { bar, keys: ["each"] });
    },
  },
  {
    number: 28,
    name: "members multiplied twice",
    rules: ["SUM102"],
    judgedBy: "cell",
    smallest: "two members",
    plant(place) {
      const { bar } = place;
      if (bar.members === null || bar.each === null || bar.members < 2) return null;
      return plantInRow(place, {
        bar: { ...bar, total: bar.members ** 2 * bar.each, mass: null },
        keys: ["total"],
      });
    },
  },
  {
    number: 29,
    name: "both faces counted once",
    rules: ["SUM105"],
    judgedBy: "cell",
    smallest: "an odd number in each face's sum",
    plant(place) {
      const { bar, random } = place;
      const each = 2 * random.between(2, 9) + 1;
      const total = each * (bar.members ?? 1);
      return plantInRow(place, {
        bar: {
          ...bar,
          each,
          total,
          mass: null,
          remark: random.pick(["EF", "each face", "both faces", "E.F."]),
        },
        keys: ["each"],
      });
    },
  },
  {
    number: 30,
    name: "varying set: count and step disagree",
    rules: ["SUM107"],
    judgedBy: "cell",
    smallest: "one bar",
    plant(place) {
      const each = 13 + place.random.pick([-1, 1]);
      const base = codedBar(place.bar, "00", 12, [1200]);
      const bar = {
        ...base,
        dims: ["1200-1800 step 50"],
        length: null,
        mass: null,
        members: 1,
        each,
        total: each,
      };
      return plantInRow(place, { bar, keys: ["each"] });
    },
  },
  {
    number: 32,
    name: "one mark for two different bars",
    rules: ["MARK101"],
    judgedBy: "cell",
    smallest: "one 5 mm step in one dimension",
    plant(place) {
      const { schedule, at } = place;
      const first = schedule.bars[at - 1];
      if (first === undefined || first.member !== place.bar.member || typeof first.dims[0] !== "number")
        return null;
      if (first.shape !== "00") return null;
      const bar = { ...codedBar(first, "00", first.diameter, [first.dims[0] + 25]), mark: first.mark };
      return plantInRow(place, { bar, keys: ["mark"] });
    },
  },
  {
    number: 33,
    name: "mark missing, or a gap in the sequence",
    rules: ["MARK102", "MARK103"],
    judgedBy: "row",
    smallest: "one mark",
    plant(place) {
      if (place.random.chance(0.5))
        return plantInRow(place, { bar: { ...place.bar, mark: "" }, keys: ["mark"] });
      const { schedule, at } = place;
      if (at === 0 || at >= schedule.bars.length - 1) return null;
      const bars = schedule.bars.filter((_, index) => index !== at);
      const without = { ...schedule, bars };
      return {
        sheets: [sheetOf(without)],
        hit: { sheet: "Schedule", row: rowOf(without, at), cells: cellsOfKeys(without, at, ["mark"]) },
        touched: [rowOf(without, at)],
      };
    },
  },
  {
    number: 34,
    name: "a superseded revision still in the list",
    rules: ["REV101"],
    judgedBy: "row",
    smallest: "one letter",
    plant(place) {
      const { schedule, at, bar } = place;
      const old = { ...bar, revision: "A" };
      const changed = { ...codedBar(bar, "00", bar.diameter, [2500]), revision: "B" };
      const bars = [...schedule.bars.slice(0, at), old, ...schedule.bars.slice(at + 1), changed];
      const planted = { ...schedule, bars };
      return {
        sheets: [sheetOf(planted)],
        hit: { sheet: "Schedule", row: rowOf(planted, at), cells: cellsOfKeys(planted, at, ["revision"]) },
        touched: [rowOf(planted, at), rowOf(planted, bars.length - 1)],
      };
    },
  },
  {
    number: 38,
    isGeneral: true,
    name: "mass is not length times unit mass",
    rules: ["MASS101"],
    judgedBy: "cell",
    smallest: "1.6 %, just above what tables and rounding differ by",
    plant(place) {
      const { bar, random } = place;
      if (bar.mass === null || bar.mass < 5) return null;
      const mass = Number((bar.mass * random.pick([1.016, 1.05, 0.9])).toFixed(2));
      return plantInRow(place, { bar: { ...bar, mass }, keys: ["mass"] });
    },
  },
  {
    number: 48,
    name: "closed link where only an open one fits",
    rules: ["SHAPE116"],
    judgedBy: "row",
    smallest: "said in words",
    plant(place) {
      const base = codedBar(place.bar, "51", 10, [400, 300, 130]);
      const remark = place.random.pick([
        "open link with cap",
        "open stirrup",
        "U + cap",
        "U-bar and cap",
        "open-topped link",
        "capping bar on top",
      ]);
      return plantInRow(place, { bar: { ...base, remark }, keys: ["shape"] });
    },
  },
  {
    number: 49,
    name: "starters that project far, unprotected",
    rules: ["SITE101"],
    judgedBy: "cell",
    smallest: "1205 mm, 5 above 1.2 m",
    plant(place) {
      const base = codedBar(place.bar, "11", 16, [2500, 300]);
      const remark = place.random.pick([
        "starters, project 1205",
        "starter bars projecting 1500 above kicker",
        "projection 1300",
      ]);
      return plantInRow(place, { bar: { ...base, remark }, keys: ["remark"] });
    },
  },
  {
    number: 50,
    name: "bars too close to each other",
    rules: ["SITE102"],
    judgedBy: "cell",
    smallest: "1 mm below two diameters, or below the bar and 20 mm",
    plant(place) {
      const d = place.random.pick([10, 16, 25]);
      const base = codedBar(place.bar, "00", d, [2000]);
      return plantInRow(place, { bar: { ...base, spacing: d + Math.max(d, 20) - 1 }, keys: ["spacing"] });
    },
  },
  {
    number: 60,
    name: "the same bar in two lists",
    rules: ["MARK104"],
    judgedBy: "row",
    smallest: "one bar",
    plant(place) {
      const { schedule, at, bar } = place;
      const second = { ...schedule, bars: [bar], title: [], foot: [] };
      const copy = { ...sheetFromRows("Column list", cellsOf(second)) };
      return {
        sheets: [sheetOf(schedule), copy],
        hit: { sheet: "Column list", row: rowOf(second, 0), cells: cellsOfKeys(second, 0, ["mark"]) },
        touched: [rowOf(schedule, at)],
      };
    },
  },
  {
    number: 61,
    name: "struck-out bars still in the total",
    rules: ["SUM104"],
    judgedBy: "row",
    smallest: "one bar",
    plant(place) {
      const { schedule, at } = place;
      const column = schedule.columns.findIndex(({ key }) => key === "total");
      if (column < 0) return null;
      const sum = schedule.bars.reduce((all, { total }) => all + (total ?? 0), 0);
      const foot = [
        schedule.columns.map((_, index) => (index === 0 ? "TOTAL" : index === column ? sum : null)),
      ];
      const planted: CorpusSchedule = { ...schedule, foot };
      const struck = rowOf(planted, at) - 1;
      const row = rowOf(planted, schedule.bars.length);
      return {
        sheets: [{ ...sheetOf(planted), isStruckThrough: (line) => line === struck }],
        hit: { sheet: "Schedule", row, cells: cellsOfKeys(planted, schedule.bars.length, ["total"]) },
        touched: [row, struck + 1],
      };
    },
  },
  {
    number: 62,
    name: "waste inside the masses",
    rules: ["MASS102"],
    judgedBy: "sheet",
    smallest: "2 % on every row",
    plant({ schedule, random }: PlantingPlace) {
      if (!schedule.columns.some(({ key }) => key === "mass")) return null;
      const factor = random.pick([1.02, 1.03, 1.05]);
      const bars = schedule.bars.map((bar) => ({
        ...bar,
        mass: bar.mass === null ? null : bar.mass * factor,
      }));
      const planted = { ...schedule, bars };
      return { sheets: [sheetOf(planted)], hit: null, touched: [] };
    },
  },
];
