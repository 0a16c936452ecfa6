import { defineRefusal } from "../units/refusal";

export const angleNotBend = defineRefusal(
  "angle-not-a-bend",
  "value",
  "an angle of {angle} is no bend: give the bend angle in degrees, over 0 and at most 180",
);
export const makeTrialFirst = defineRefusal(
  "make-trial-first",
  "not-held",
  "make a trial bend first: no trial of {group}, and the log holds {groups} of the {least} it needs to speak for it",
);
export const trialOutsideLog = defineRefusal(
  "trial-outside-log",
  "not-held",
  "make a trial bend first: {group} has no trial and its {what} of {value} is outside what the log holds ({low} to {high})",
);
export const otherFormOnly = defineRefusal(
  "trial-of-other-form",
  "not-held",
  "make a trial bend first: the log holds no trial of {form} stock of this size, and coil and bar come back differently",
);
export const farFromTried = defineRefusal(
  "far-from-tried-angle",
  "not-held",
  "make a trial bend first: {angle} is {away} degrees from the only tried angle of {group}; bend one nearer to {angle}",
);
export const farFromAllTried = defineRefusal(
  "far-from-all-tried-angles",
  "not-held",
  "make a trial bend first: {angle} is {away} degrees from the nearest tried angle of {group}, and the plain rule reaches {reach} at most; bend one nearer to {angle}, or use the method fit",
);
export const moreTrialsNeeded = defineRefusal(
  "more-trials-needed",
  "not-held",
  "make a trial bend first: for {group} bent to {bentTo} the released angle is known only to {half} degrees either way, and {tolerance} is the limit; {more} would do",
);
export const rolledNotBent = defineRefusal(
  "rolled-not-bent",
  "not-held",
  "a bar of {bar} is rolled, not bent: log the radius of trial pieces, not an angle",
);
export const beyondMachine = defineRefusal(
  "beyond-machine-angle",
  "not-held",
  "bending to {bentTo} is beyond the {largest} degrees that {machine} turns: the bend stays open by {open} degrees; close it in a second stroke only if the machine's manual allows one, or take a smaller former not below the standard's least",
);
export const severalGroups = defineRefusal(
  "several-trial-groups",
  "value",
  "the log holds trials of {bar} for {names}: name the machine and the grade",
);
export const makeTrialOfGroup = defineRefusal(
  "make-trial-of-group",
  "not-held",
  "make a trial bend first: the log holds no trial of {group}",
);
