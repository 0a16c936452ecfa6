import type { BarsAtOnce } from "../bending/bars-at-once";
import { printLength } from "../units/print-length";
import { refusalText } from "../units/refusal";
import { toTenth } from "../units/to-tenth";
import type { BarToBend } from "./bar-to-bend";
import type { MachineFault, MachineUnknown, NotSearched } from "./machine-fault";
import type { MachineVerdict } from "./try-machine";

/** Why a bender is not known to make a bar, a reason each; none where it is. */
export function reasonsAgainst(verdict: MachineVerdict, bar: BarToBend): string[] {
  const { machine, faults, unknown } = verdict;
  const against = faults.flatMap((fault) => faultText(fault, bar, machine.name) ?? []);
  return [...against, ...unknown.map((one) => unknownText(one, machine.name))];
}

/** Null for another former that does as well. */
function faultText(fault: MachineFault, bar: BarToBend, machine: string): string | null {
  const { unit } = bar;
  const length = (mm: number): string => printLength(mm, unit);
  switch (fault.kind) {
    case "plate":
      return beyondPlate(fault.plate, bar, machine);
    case "former":
      return `${machine} has no former of ${length(fault.former)}: the rack holds ${fault.held.map(length).join(", ")}`;
    case "angle":
      return `bend ${fault.bend} is bent to ${toTenth(fault.bentTo)} degrees${fault.sure ? "" : ", a guess without trials"}, beyond the ${toTenth(fault.largest)} that ${machine} turns`;
    case "pin":
    case "order":
      return "sure" in fault && !fault.sure ? `${fault.reason} (by a guess of springback)` : fault.reason;
    case "link":
      return `inside width ${length(fault.inside)} of the link is below the ${length(fault.least)} that former, pin and bars take`;
    case "hook":
      return `the tail of ${length(fault.tail)} at bend ${fault.bend} leans ${length(fault.lean)} over while it is bent beyond 180, and the legs stand ${length(fault.former)} apart${fault.sure ? "" : ", by a guess of springback"}`;
    case "leg":
      return `leg ${fault.leg} of ${length(fault.length)} is too short: pin and back-rest need ${length(fault.least)}`;
    case "swing":
      return `the bar swings to ${length(fault.reach)} from the former, and no order keeps it within the guard at ${length(fault.guard)}`;
    case "larger former":
      return null;
  }
}

function beyondPlate({ basis, row }: BarsAtOnce, { diameter, steel }: BarToBend, machine: string): string {
  const rated = `${row.bars} of ${toTenth(row.diameter)} mm at ${row.yield ?? "?"} MPa`;
  const how = basis === "plate" ? "its plate" : "an estimate from its plate";
  return `one bar of ${toTenth(diameter)} mm at ${steel.yield} MPa is beyond ${machine} by ${how} (${rated})`;
}

const NOT_SEARCHED: Readonly<Record<NotSearched, string>> = {
  planes:
    "the bends lie in more than one plane, so no order was searched: try one bar, and stop where it meets tools or itself",
  bends: "more bends than are searched for an order: try one bar, and stop where it meets tools or itself",
  rolled: "rolled, not bent about a former, so no bender was checked: try one bar",
  shapes:
    "more different shapes in the workbook than are searched for an order: try one bar, and stop where it meets tools or itself",
};

function unknownText(unknown: MachineUnknown, machine: string): string {
  switch (unknown.kind) {
    case "plate":
    case "tooling":
      return refusalText(unknown.reason);
    case "not searched":
      return NOT_SEARCHED[unknown.why];
    case "rack":
      return `the formers in the rack of ${machine} are not written down`;
    case "largest angle":
      return `the largest angle that ${machine} turns is not written down`;
    case "guard":
      return `the guard radius of ${machine} is not written down`;
  }
}
