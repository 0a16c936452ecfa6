import { defineRefusal, Refusal } from "../units/refusal";

/** A row of a trial log that is not used, or a thing about used rows that somebody should see. */
export interface TrialProblem {
  /** row of the block, from 0 */
  readonly row: number;
  /** `rejected`: wrong; `asks`: could be meant two ways; `shown`: used, but look at it */
  readonly outcome: "rejected" | "asks" | "shown";
  readonly reason: Refusal;
}

/** The same reason with rows of the sheet in place of rows of the block, which begins `rowsAbove` rows down. */
export function reasonOnSheet({ definition, values }: Refusal, rowsAbove: number): Refusal {
  const moved = Object.entries(values).map(([name, value]) =>
    (name === "row" || name === "first") && typeof value === "number"
      ? [name, value + rowsAbove]
      : [name, value],
  );
  return new Refusal(definition, Object.fromEntries(moved));
}

export const trialHeaderNotFound = defineRefusal(
  "trial-header-not-found",
  "value",
  "no header of trials was found: give the table with its header row, with the words {words}",
);

export const trialCellUnread = defineRefusal(
  "trial-cell-unread",
  "value",
  "trial in row {row}: {column} {typed} could not be read; write a number",
);

export const trialSizeUnread = defineRefusal("trial-size-unread", "value", "trial in row {row}: {reason}");

export const trialFormerZero = defineRefusal(
  "trial-former-zero",
  "value",
  "trial in row {row}: a former of {former} is no former; write the diameter that the bar was bent round",
);

export const trialBentToSmall = defineRefusal(
  "trial-bent-to-small",
  "value",
  "trial in row {row}: bent to {bentTo} is below {least} degrees, where the bar has not yet wrapped; bend a trial further",
);

export const trialBentToLarge = defineRefusal(
  "trial-bent-to-large",
  "value",
  "trial in row {row}: bent to {bentTo} is above {most} degrees; write the bend angle, 0 is straight",
);

export const trialReleasedAbove = defineRefusal(
  "trial-released-above",
  "value",
  "trial in row {row}: released {released} is above the {bentTo} bent to; a bar comes back, so measure again",
);

export const trialReleasedNegative = defineRefusal(
  "trial-released-negative",
  "value",
  "trial in row {row}: released {released} is below 0; write the bend angle that remained",
);

export const trialSpringbackLarge = defineRefusal(
  "trial-springback-large",
  "value",
  "trial in row {row}: bent to {bentTo}, released {released} comes back by {share} %, above {most} %; measure again",
);

export const trialIncludedAngle = defineRefusal(
  "trial-included-angle",
  "value",
  "trial in row {row}: {column} {typed} looks like the angle between the legs; as a bend angle it is {bend}: write that if it is so",
);

export const trialReleasedAboveAsks = defineRefusal(
  "trial-released-above-or-included",
  "value",
  "trial in row {row}: released {typed} is above the {bentTo} bent to; if it is the angle between the legs, write the bend angle {bend}, else measure again",
);

export const trialDuplicate = defineRefusal(
  "trial-duplicate",
  "value",
  "trial in row {row} repeats row {first} in every column and is counted once; give the second bar its date or heat",
);

export const trialContradictory = defineRefusal(
  "trial-contradictory",
  "value",
  "trials in rows {first} and {row}, bent to {bentTo}, came back by {firstSpringback} and {springback} degrees; measure both again",
);

export const trialDoesNotFit = defineRefusal(
  "trial-does-not-fit",
  "value",
  "trial in row {row}, bent to {bentTo}, came back by {springback} degrees and does not fit the others; measure it again",
);

export const trialsAtOneAngle = defineRefusal(
  "trials-at-one-angle",
  "value",
  "all {count} trials of {group} were bent to about {bentTo}: other angles rest on mechanics; try a second angle",
);

export const oneTrialOnly = defineRefusal(
  "one-trial-only",
  "value",
  "{group} has one trial only: bend a second bar and write it down",
);
