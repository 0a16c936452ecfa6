import { codedBar } from "./coded-bar";
import type { Mistake } from "./mistake";
import { plantInRow } from "./plant-in-row";

const STEP = 5;
/** by standard; the UK's where none stands here */
const NOT_MADE: Readonly<Record<string, readonly (string | number)[]>> = {
  "AS3600:2018": ["N15", "N25"],
  "SANS282:2011": ["Y14", "Y18"],
  "EC2:2004": ["HA13", "HA22"],
  "DIN-EC2:2013": [13, 18],
  "GB50204:2015": ["C15", "C24"],
  "CSA-A23.1:2019": ["17M", "40M"],
  "ACI318:2019": ["#12", "#13"],
  "IS2502:1963": [13, 22],
  "INDIA-SITE": [13, 24],
};

/** Sizes, grades, coatings and what is done to the steel. */
export const STEEL_MISTAKES: readonly Mistake[] = [
  {
    number: 13,
    isGeneral: true,
    name: "a size that is not made",
    rules: ["SIZE101", "READ101"],
    judgedBy: "cell",
    smallest: "11, 13, 15, 22 among the sizes of the UK",
    plant(place) {
      const size = place.random.pick(NOT_MADE[place.schedule.standard] ?? ["H11", "H13", "H15", "H22"]);
      return plantInRow(place, { bar: { ...place.bar, size }, keys: ["size"] });
    },
  },
  {
    number: 14,
    name: "size and type that do not go together",
    rules: ["SIZE103"],
    judgedBy: "cell",
    smallest: "plain round 25",
    plant(place) {
      const d = place.random.pick([25, 32]);
      const base = codedBar(place.bar, "21", d, [600, 700, 600]);
      return plantInRow(place, { bar: { ...base, size: `R${d}`, grade: "R" }, keys: ["size"] });
    },
  },
  {
    number: 15,
    name: "grade absent or unknown",
    rules: ["GRADE101"],
    judgedBy: "cell",
    smallest: "one letter",
    plant(place) {
      const bar = place.random.chance(0.5)
        ? { ...place.bar, grade: "B5OO" }
        : { ...place.bar, grade: null, size: String(place.bar.diameter) };
      return plantInRow(place, { bar, keys: ["grade"] });
    },
  },
  {
    number: 16,
    name: "mild steel with the lap of ribbed steel",
    rules: ["GRADE103"],
    judgedBy: "cell",
    smallest: "said in words",
    plant(place) {
      const base = codedBar(place.bar, "11", 12, [2000, 200]);
      const remark = place.random.pick([
        "lap 40d",
        "lap 500",
        "anchorage 35d",
        "40 dia laps",
        "tension lap 600",
      ]);
      return plantInRow(place, { bar: { ...base, size: "R12", grade: "R", remark }, keys: ["remark"] });
    },
  },
  {
    number: 17,
    name: "plain bar without hooks",
    rules: ["GRADE102"],
    judgedBy: "cell",
    smallest: "shape 00",
    plant(place) {
      const base = codedBar(place.bar, "00", 10, [place.random.between(1000, 4000, STEP)]);
      return plantInRow(place, { bar: { ...base, size: "R10", grade: "R" }, keys: ["shape"] });
    },
  },
  {
    number: 37,
    name: "digits of the size swapped",
    rules: ["SIZE102"],
    judgedBy: "cell",
    smallest: "21 for 12, 61 for 16, 52 for 25, 23 for 32",
    plant(place) {
      const size = `H${place.random.pick([21, 61, 52, 23])}`;
      return plantInRow(place, { bar: { ...place.bar, size }, keys: ["size"] });
    },
  },
  {
    number: 51,
    name: "coated bar with a plain bar's former",
    rules: ["BEND101"],
    judgedBy: "cell",
    smallest: "the bare bar's least former",
    plant(place) {
      if (place.bar.kind === "straight") return null;
      const coating = place.random.pick(["epoxy", "galvanised"]);
      return plantInRow(place, { bar: { ...place.bar, coating }, keys: ["former"] });
    },
  },
  {
    number: 52,
    name: "ductility class A where B or C is needed",
    rules: ["GRADE104"],
    judgedBy: "cell",
    smallest: "one letter",
    plant(place) {
      const remark = place.random.pick([
        "seismic zone",
        "ductile frame",
        "DCM frame",
        "DCH wall",
        "earthquake resisting",
      ]);
      return plantInRow(place, { bar: { ...place.bar, grade: "B500A", remark }, keys: ["grade"] });
    },
  },
  {
    number: 53,
    name: "bend near a weld or coupler",
    rules: ["BEND107"],
    judgedBy: "cell",
    smallest: "an end leg one step below 3d of straight from a weld, or 10d for a coupler",
    plant(place) {
      const d = place.random.pick([12, 16]);
      const remark = place.random.pick([
        "welded to plate",
        "end B welded on",
        "weld to angle",
        "coupler at end B",
      ]);
      const least = (remark.startsWith("coupler") ? 10 : 3) * d + 3 * d;
      const base = codedBar(place.bar, "11", d, [1500, Math.ceil(least / STEP) * STEP - STEP]);
      return plantInRow(place, { bar: { ...base, remark }, keys: ["remark"] });
    },
  },
  {
    number: 54,
    name: "coupler bar without its end preparation",
    rules: ["SITE103"],
    judgedBy: "cell",
    smallest: "said in words",
    plant(place) {
      const base = codedBar(place.bar, "00", 16, [4000]);
      const remark = place.random.pick([
        "coupler one end",
        "couplers both ends",
        "with coupler",
        "coupled to mark 04",
      ]);
      return plantInRow(place, { bar: { ...base, remark }, keys: ["remark"] });
    },
  },
  {
    number: 55,
    name: "bent again on site without leave",
    rules: ["SITE104"],
    judgedBy: "cell",
    smallest: "said in words",
    plant(place) {
      const base = codedBar(place.bar, "21", 12, [600, 300, 600]);
      const remark = place.random.pick([
        "rebend on site",
        "bend on site",
        "straighten and bend on site",
        "re-bend",
        "bend out on site after casting",
        "to be straightened on site",
      ]);
      return plantInRow(place, { bar: { ...base, remark }, keys: ["remark"] });
    },
  },
  {
    number: 56,
    name: "fabric written as bars",
    rules: ["SIZE104"],
    judgedBy: "cell",
    smallest: "A142",
    plant(place) {
      const base = codedBar(place.bar, "00", 10, [4800]);
      return plantInRow(place, {
        bar: { ...base, size: place.random.pick(["A142", "A393", "B785"]) },
        keys: ["size"],
      });
    },
  },
];
