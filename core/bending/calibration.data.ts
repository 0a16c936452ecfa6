import type { Cited } from "../standards/citation";

/** What is believed before a shop's first trial, and how far a reading may stray. */
export interface CalibrationPrior {
  /** times plain mechanics; times plain leg flexure; degrees of play and zero error */
  readonly mean: readonly [number, number, number];
  readonly deviation: readonly [number, number, number];
  /** spread of a group about the shop: share of plain mechanics, and degrees */
  readonly groupShare: number;
  readonly groupDegrees: number;
  /** factors tried on the spread of groups once the log is long enough */
  readonly groupFactors: readonly number[];
  readonly groupFactorFrom: number;
  readonly groupFactorSpread: number;
  /** degrees, reading error believed at first, and how many readings that belief is worth */
  readonly reading: number;
  readonly readingWorth: number;
  readonly leastReading: number;
  /** scatter between heats and bars as a share of the springback */
  readonly heatShare: number;
  /** freedom of the Student weights */
  readonly robustFreedom: number;
  readonly robustRounds: number;
  /** degrees over which leg flexure and play come in at small angles */
  readonly flexureFade: number;
  readonly playFade: number;
  /** degrees added per 90 degrees from the nearest tried angle; degrees taken where none was tried */
  readonly strayPerRightAngle: number;
  readonly strayWithoutTrial: number;
  /** one-sided share of the 90 % interval */
  readonly intervalShare: number;
  /** a trial weighing less is shown as one that does not fit */
  readonly suspiciousWeight: number;
}

/** Chosen by simulation against a truth that differs from the model; no public trial log of bars was found. */
export const CALIBRATION_PRIOR: Cited<CalibrationPrior> = {
  value: {
    mean: [1.6, 1.9, 0.4],
    deviation: [0.7, 0.9, 0.8],
    groupShare: 0.18,
    groupDegrees: 0.5,
    groupFactors: [0.6, 1, 1.5, 2.2, 3],
    groupFactorFrom: 8,
    groupFactorSpread: 0.5,
    reading: 0.8,
    readingWorth: 6,
    leastReading: 0.2,
    heatShare: 0.065,
    robustFreedom: 4,
    robustRounds: 10,
    flexureFade: 12,
    playFade: 10,
    strayPerRightAngle: 0.7,
    strayWithoutTrial: 60,
    intervalShare: 0.95,
    suspiciousWeight: 0.4,
  },
  cite: { document: "springback of simulated shops, several hundred", provenance: "derived" },
};

/** When a compensated angle is refused and a trial bend asked for instead. */
export interface CalibrationLimits {
  /** other groups that the log must hold before it speaks for a group without a trial */
  readonly groupsWithoutTrial: number;
  /** degrees, half of the 90 % interval, that may at most be left open */
  readonly tolerance: number;
  /** degrees from the nearest tried angle, and trials from which that no longer matters */
  readonly farFromTried: number;
  readonly farNeedsTrials: number;
  /** share by which former/diameter and yield may leave the log's range */
  readonly outsideLog: number;
  /** degrees that a bender turns, where the machine's own limit is not written down */
  readonly usualLargestAngle: number;
}

export const CALIBRATION_LIMITS: Cited<CalibrationLimits> = {
  value: {
    groupsWithoutTrial: 3,
    tolerance: 2.5,
    farFromTried: 60,
    farNeedsTrials: 2,
    outsideLog: 0.3,
    usualLargestAngle: 190,
  },
  cite: { document: "springback of simulated shops, several hundred", provenance: "derived" },
};

/** Degrees from a tried angle to which the median springback of a group is carried. */
export const PLAIN_RULE_REACH: Cited<number> = {
  value: 20,
  cite: {
    document: "springback of simulated shops: the plain rule strays by 3 degrees on average, by 6 at hooks",
    provenance: "derived",
  },
};

/** What a trial must keep to before it is used. */
export interface TrialLimits {
  /** degrees that the released angle may lie above the one bent to: reading error */
  readonly releasedAbove: number;
  readonly leastBentTo: number;
  /** share of the angle bent to */
  readonly largestSpringback: number;
  readonly largestBentTo: number;
  /** degrees by which trials of one group and angle may differ before both are shown as contradictory */
  readonly contradiction: number;
  /** degrees within which two trials count as bent to the same angle, and a group as tried at one angle */
  readonly sameAngle: number;
  readonly oneAngle: number;
}

export const TRIAL_LIMITS: Cited<TrialLimits> = {
  value: {
    releasedAbove: 2,
    leastBentTo: 10,
    largestSpringback: 0.3,
    largestBentTo: 210,
    contradiction: 5,
    sameAngle: 2,
    oneAngle: 10,
  },
  cite: { document: "trial bends of reinforcing bar", provenance: "common practice" },
};
