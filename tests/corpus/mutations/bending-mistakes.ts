import type { Cell } from "../../../core/schedule/sheet";
import { SHOP_COLUMNS } from "../../../core/shop/shop-words.data";
import { printedRadius } from "../printed-length";
import { bendsAlone, codedBar, LEAST_END, LEAST_LINK_END } from "./coded-bar";
import type { Mistake } from "./mistake";
import { plantInRow } from "./plant-in-row";

const STEP = 5;
const MAIN = [10, 12, 16, 20, 25] as const;
const LINKS = [8, 10, 12] as const;

/** A yard's bender, typed for the mistakes that only a machine shows. */
const BENDER: readonly (readonly [keyof typeof SHOP_COLUMNS, Cell])[] = [
  ["machine", "Bench 1"],
  ["largestAngle", 200],
  ["guardRadius", 2500],
  ["orbitRadius", 130],
  ["backRestDistance", 100],
  ["pins", 60],
  ["formers", "32, 40, 48, 64, 140, 175"],
];
const SHOP = [BENDER.map(([column]) => SHOP_COLUMNS[column][0]), BENDER.map(([, value]) => value)];

/** What cannot be bent, or not without harm. */
export const BENDING_MISTAKES: readonly Mistake[] = [
  {
    number: 1,
    name: "former smaller than the least",
    rules: ["BEND101"],
    judgedBy: "cell",
    smallest: "1 mm below the least former",
    plant(place) {
      const { bar, random } = place;
      if (bar.kind === "straight" || bar.former === null) return null;
      return plantInRow(place, {
        bar: { ...bar, former: bar.former - random.pick([1, 2, 8]) },
        keys: ["former"],
      });
    },
  },
  {
    number: 2,
    name: "link end too short",
    rules: ["BEND103"],
    judgedBy: "cell",
    smallest: "one 5 mm step below P for links",
    plant(place) {
      const d = place.random.pick(LINKS);
      const tail = (LEAST_LINK_END[d] ?? 0) - STEP * place.random.pick([1, 2, 4]);
      return plantInRow(place, { bar: codedBar(place.bar, "51", d, [400, 300, tail]), keys: ["dims.2"] });
    },
  },
  {
    number: 3,
    name: "end leg below the least projection",
    rules: ["BEND102"],
    judgedBy: "cell",
    smallest: "one 5 mm step below P",
    plant(place) {
      const d = place.random.pick(MAIN);
      const short = (LEAST_END[d] ?? 0) - STEP * place.random.pick([1, 1, 3]);
      const bar = codedBar(place.bar, "21", d, [short, 500, 600]);
      return plantInRow(place, { bar, keys: ["dims.0"] });
    },
  },
  {
    number: 4,
    name: "straight between bends too short",
    rules: ["BEND104"],
    judgedBy: "cell",
    smallest: "one 5 mm step below 4d",
    plant(place) {
      const d = place.random.pick(MAIN);
      const least = bendsAlone(d) + 4 * d;
      const middle = Math.ceil(least / STEP) * STEP - STEP * place.random.pick([1, 2]);
      return plantInRow(place, { bar: codedBar(place.bar, "21", d, [600, middle, 500]), keys: ["dims.1"] });
    },
  },
  {
    number: 5,
    name: "bends overlap",
    rules: ["BEND105"],
    judgedBy: "cell",
    smallest: "one 5 mm step below two bends side by side",
    plant(place) {
      const d = place.random.pick(MAIN);
      const middle = Math.floor(bendsAlone(d) / STEP) * STEP - STEP * place.random.pick([1, 4]);
      return plantInRow(place, { bar: codedBar(place.bar, "21", d, [600, middle, 500]), keys: ["dims.1"] });
    },
  },
  {
    number: 6,
    name: "closed link smaller than the tooling",
    rules: ["MACHINE104"],
    judgedBy: "row",
    smallest: "inside width 1 to 5 mm below former + pin + two bars",
    plant(place) {
      // inside = side - 2d; former + pin + 2d with a pin of 60
      const d = 10;
      const inside = 4 * d + 60 + 2 * d - STEP * place.random.pick([1, 2]);
      const bar = codedBar(place.bar, "51", d, [400, inside + 2 * d, 130]);
      return plantInRow(place, { bar, keys: ["shape", "dims.0", "dims.1"], shop: SHOP });
    },
  },
  {
    number: 7,
    name: "no bend order is possible",
    rules: ["MACHINE106"],
    judgedBy: "row",
    smallest: "no printed limit: a narrow U that meets the tooling",
    plant(place) {
      const bar = codedBar(place.bar, "21", 12, [place.random.between(850, 1200, STEP), 125, 900]);
      return plantInRow(place, { bar, keys: ["shape", "dims.0", "dims.1"], shop: SHOP });
    },
  },
  {
    number: 8,
    name: "a leg swings into table or guard",
    rules: ["MACHINE107"],
    judgedBy: "row",
    smallest: "both legs beyond a guard at 2500 mm",
    plant(place) {
      const bar = codedBar(place.bar, "11", 12, [place.random.between(2700, 3000, STEP), 2800]);
      return plantInRow(place, { bar, keys: ["shape", "dims.0", "dims.1"], shop: SHOP });
    },
  },
  {
    number: 40,
    name: "crank offset below a bar, or slope too steep",
    rules: ["SHAPE111", "SHAPE112"],
    judgedBy: "cell",
    smallest: "one 5 mm step below two diameters overall; 1 in 4.4, so that no rounding up to 5 mm makes it",
    plant(place) {
      const d = place.random.pick([12, 16, 20]);
      if (place.random.chance(0.5)) {
        const offset = Math.ceil((2 * d) / STEP) * STEP - STEP;
        const bar = codedBar(place.bar, "26", d, [900, 12 * d + 200, 900, offset]);
        return plantInRow(place, { bar, keys: ["dims.3"] });
      }
      const offset = Math.ceil((2.5 * d) / STEP) * STEP;
      const slope = Math.floor(((offset - d) * 4.4) / STEP) * STEP;
      const bar = { ...codedBar(place.bar, "26", d, [900, slope, 900, offset]), remark: "column bar" };
      return plantInRow(place, { bar, keys: ["dims.3"] });
    },
  },
  {
    number: 41,
    name: "crank offset more than its slope allows",
    rules: ["SHAPE113"],
    judgedBy: "cell",
    smallest: "an offset one 5 mm step above the sloping leg",
    plant(place) {
      const slope = place.random.between(200, 400, STEP);
      const bar = codedBar(place.bar, "26", 12, [900, slope, 900, slope + 12 + STEP - (12 % STEP)]);
      return plantInRow(place, { bar, keys: ["dims.3", "dims.1"] });
    },
  },
  {
    number: 44,
    name: "too many bends to keep the tolerance",
    rules: ["BEND106"],
    judgedBy: "row",
    smallest: "six bends",
    plant(place) {
      const d = place.random.pick([10, 12]);
      const dims = [300, 250, 300, 250, 300, 300].map((dim) => dim + STEP * place.random.between(0, 10));
      const [a = 0, b = 0, c = 0, dd = 0, e = 0] = dims;
      // code 64 needs a sixth column, which the form has not: five right angles of a path are written instead
      const path = `${a} +90 ${b} -90 ${c} -90 ${dd} +90 ${e} +90 ${a} -90 300`;
      const radius = printedRadius(d);
      const outside = 2 * a + b + c + dd + e + 300;
      const exact = outside - 6 * (2 * (radius + d) - (Math.PI / 2) * (radius + d / 2));
      const base = codedBar(place.bar, "00", d, [Math.ceil(exact / 25) * 25]);
      return plantInRow(place, { bar: { ...base, shape: path, dims: [] }, keys: ["shape"] });
    },
  },
  {
    number: 57,
    name: "end turns of a spiral missing",
    rules: ["SHAPE118"],
    judgedBy: "cell",
    smallest: "one turn more than pitch and length need, 1.5 are wanted",
    plant(place) {
      const pitch = place.random.pick([75, 100, 150]);
      const turns = 6000 / pitch + place.random.pick([0, 1]);
      const base = codedBar(place.bar, "77", 8, [500, pitch, turns]);
      const bar = { ...base, remark: "spiral, pile length 6000" };
      return plantInRow(place, { bar, keys: ["dims.2"] });
    },
  },
  {
    number: 58,
    name: "lap of a circular link too short",
    rules: ["SHAPE117"],
    judgedBy: "cell",
    smallest: "145 mm, one 5 mm step below 150",
    plant(place) {
      const bar = codedBar(place.bar, "75", 10, [
        place.random.between(400, 900, STEP),
        place.random.pick([145, 100]),
      ]);
      return plantInRow(place, { bar, keys: ["dims.1"] });
    },
  },
  {
    number: 39,
    name: "another angle than the code's",
    rules: ["SHAPE109"],
    judgedBy: "row",
    smallest: "100 degrees on a code of 90",
    plant(place) {
      const base = codedBar(place.bar, "11", place.random.pick(MAIN), [800, 600]);
      const angle = place.random.pick([100, 120, 45]);
      return plantInRow(place, {
        bar: {
          ...base,
          remark: place.random.pick([`bend to ${angle} degrees`, `${angle}° bend`, `angle ${angle} deg`]),
        },
        keys: ["shape", "remark"],
      });
    },
  },
  {
    number: 42,
    name: "radius too large to need bending",
    rules: ["SUPPLY103"],
    judgedBy: "cell",
    smallest: "one 5 mm step above the 4.25 m of a 12 mm bar",
    plant(place) {
      const radius = place.random.pick([4255, 6000]);
      const base = codedBar(place.bar, "00", 12, [4000]);
      return plantInRow(place, {
        bar: { ...base, shape: "67", dims: [4000, null, null, null, `R=${radius}`] },
        keys: ["dims.4"],
      });
    },
  },
  {
    number: 43,
    name: "a bar in space on a flat code",
    rules: ["SHAPE110"],
    judgedBy: "row",
    smallest: "said in words only",
    plant(place) {
      const base = codedBar(place.bar, "21", 12, [500, 400, 500]);
      const remark = place.random.pick([
        "leg C out of plane",
        "see isometric",
        "bent in two planes",
        "3D bar",
        "3-D",
        "bends in 2 planes",
      ]);
      return plantInRow(place, { bar: { ...base, remark }, keys: ["shape"] });
    },
  },
];
