// Generated from the files beside it: npm run generate.
import type { Rule } from "../rule";
import amountBlank from "./amount-blank";
import angleNotOfCode from "./angle-not-of-code";
import angleWithoutTrials from "./angle-without-trials";
import anotherDocumentNamed from "./another-document-named";
import anotherStandard from "./another-standard";
import barLongerThanMember from "./bar-longer-than-member";
import barsAtOnceEstimated from "./bars-at-once-estimated";
import barsCongested from "./bars-congested";
import bendNearJoint from "./bend-near-joint";
import bendsOverlap from "./bends-overlap";
import bentOnSite from "./bent-on-site";
import beyondLargestAngle from "./beyond-largest-angle";
import beyondPlate from "./beyond-plate";
import bothFacesCount from "./both-faces-count";
import bundleOverHoist from "./bundle-over-hoist";
import circleLapShort from "./circle-lap-short";
import closedLinkInOpenPlace from "./closed-link-in-open-place";
import coldBending from "./cold-bending";
import columnLinkThin from "./column-link-thin";
import columnLinksWideApart from "./column-links-wide-apart";
import countFromSpacing from "./count-from-spacing";
import countOffRun from "./count-off-run";
import couplerEndUnsaid from "./coupler-end-unsaid";
import crankLapShort from "./crank-lap-short";
import crankOffsetSmall from "./crank-offset-small";
import crankTooSteep from "./crank-too-steep";
import dimensionExtra from "./dimension-extra";
import dimensionMissing from "./dimension-missing";
import dimensionNotPositive from "./dimension-not-positive";
import dimensionOffStep from "./dimension-off-step";
import ductilityClassLow from "./ductility-class-low";
import editionNotRead from "./edition-not-read";
import endCannotBeBent from "./end-cannot-be-bent";
import endLegShort from "./end-leg-short";
import fabricAsBar from "./fabric-as-bar";
import factsNotHeld from "./facts-not-held";
import formerBlank from "./former-blank";
import formerNotInRack from "./former-not-in-rack";
import formerOffHabit from "./former-off-habit";
import formerTooSmall from "./former-too-small";
import formulaDiffersFromGeometry from "./formula-differs-from-geometry";
import formulasUncalculated from "./formulas-uncalculated";
import freeDimensionOther from "./free-dimension-other";
import gradeNotMadeSoThick from "./grade-not-made-so-thick";
import gradeNotOfTitle from "./grade-not-of-title";
import gradeOfOtherSizes from "./grade-of-other-sizes";
import gradeStray from "./grade-stray";
import guessedCell from "./guessed-cell";
import heavierThanLift from "./heavier-than-lift";
import helixEndTurnsMissing from "./helix-end-turns-missing";
import hookCloses from "./hook-closes";
import hookTailShort from "./hook-tail-short";
import inchesBeyondFoot from "./inches-beyond-foot";
import lapBelowAny from "./lap-below-any";
import lapBelowGiven from "./lap-below-given";
import lapInsideLength from "./lap-inside-length";
import lapOfThickBar from "./lap-of-thick-bar";
import legShortForPin from "./leg-short-for-pin";
import lengthBySiteDeduction from "./length-by-site-deduction";
import lengthDiffers from "./length-differs";
import lengthOffHabit from "./length-off-habit";
import lengthOffStep from "./length-off-step";
import lengthOffWrittenLegs from "./length-off-written-legs";
import lengthRoundedFurther from "./length-rounded-further";
import lengthsAreSums from "./lengths-are-sums";
import lengthsKeepAnotherStep from "./lengths-keep-another-step";
import linkBentTighterThanBar from "./link-bent-tighter-than-bar";
import linkDimensionsInside from "./link-dimensions-inside";
import linkEqualsMember from "./link-equals-member";
import linkOverCover from "./link-over-cover";
import linkSmallerThanTooling from "./link-smaller-than-tooling";
import longerThanLorry from "./longer-than-lorry";
import longerThanStock from "./longer-than-stock";
import madeBySketch from "./made-by-sketch";
import manyBends from "./many-bends";
import markGap from "./mark-gap";
import markMissing from "./mark-missing";
import markRepeatedOtherwise from "./mark-repeated-otherwise";
import massDiffers from "./mass-differs";
import massWithWaste from "./mass-with-waste";
import membersCountedTwice from "./members-counted-twice";
import noBendingOrder from "./no-bending-order";
import noDeductionForDeviations from "./no-deduction-for-deviations";
import noFreeDimension from "./no-free-dimension";
import notCheckedOnMachines from "./not-checked-on-machines";
import numberAsText from "./number-as-text";
import numbersDisagree from "./numbers-disagree";
import oneBarTwoMarks from "./one-bar-two-marks";
import outdatedWaiver from "./outdated-waiver";
import outerFibreStrained from "./outer-fibre-strained";
import ownCellNotTaken from "./own-cell-not-taken";
import pathUnread from "./path-unread";
import plainBarLapped from "./plain-bar-lapped";
import plainBarWithoutHook from "./plain-bar-without-hook";
import plainSizeUnusual from "./plain-size-unusual";
import radiusSuppliedStraight from "./radius-supplied-straight";
import readingFailed from "./reading-failed";
import rowEnteredTwice from "./row-entered-twice";
import saidToBeSupplied from "./said-to-be-supplied";
import saidToWait from "./said-to-wait";
import sameBarInTwoLists from "./same-bar-in-two-lists";
import settingsUnread from "./settings-unread";
import shapeCodeUnpadded from "./shape-code-unpadded";
import shapeLimitBroken from "./shape-limit-broken";
import shopCellUnread from "./shop-cell-unread";
import shopFactsNotHeld from "./shop-facts-not-held";
import sizeColumnDiffers from "./size-column-differs";
import sizeDigitsSwapped from "./size-digits-swapped";
import sizeStray from "./size-stray";
import sketchWithoutLength from "./sketch-without-length";
import slopeContradicted from "./slope-contradicted";
import slopeImpossible from "./slope-impossible";
import spaceBarOnFlatCode from "./space-bar-on-flat-code";
import spiralPitchUnusual from "./spiral-pitch-unusual";
import starterProjectionShort from "./starter-projection-short";
import starterUnprotected from "./starter-unprotected";
import straightBetweenBendsShort from "./straight-between-bends-short";
import struckBarInSum from "./struck-bar-in-sum";
import sumLineDiffers from "./sum-line-differs";
import summaryDiffers from "./summary-differs";
import supersededRevision from "./superseded-revision";
import swingBeyondGuard from "./swing-beyond-guard";
import tonnesLineDiffers from "./tonnes-line-differs";
import tooHighForMember from "./too-high-for-member";
import totalDiffers from "./total-differs";
import totalLengthDiffers from "./total-length-differs";
import trialDoubtful from "./trial-doubtful";
import unitMassDiffers from "./unit-mass-differs";
import unitSlipForeign from "./unit-slip-foreign";
import unitSlipTen from "./unit-slip-ten";
import unitSlipThousand from "./unit-slip-thousand";
import unknownGrade from "./unknown-grade";
import unknownShape from "./unknown-shape";
import unknownSize from "./unknown-size";
import unreadCell from "./unread-cell";
import unreadRow from "./unread-row";
import unsafeRuleOff from "./unsafe-rule-off";
import varyingSetCount from "./varying-set-count";
import varyingSetOneLength from "./varying-set-one-length";
import weldOfUnweldableSteel from "./weld-of-unweldable-steel";
import widerThanAccess from "./wider-than-access";
import widerThanTransport from "./wider-than-transport";

/** Every audit rule, in order of code. */
export const RULES: readonly Rule[] = [
  formerTooSmall,
  endLegShort,
  hookTailShort,
  straightBetweenBendsShort,
  bendsOverlap,
  manyBends,
  bendNearJoint,
  linkBentTighterThanBar,
  formerOffHabit,
  formerBlank,
  endCannotBeBent,
  dimensionOffStep,
  dimensionNotPositive,
  unknownGrade,
  plainBarWithoutHook,
  plainBarLapped,
  ductilityClassLow,
  gradeNotMadeSoThick,
  weldOfUnweldableSteel,
  gradeStray,
  gradeOfOtherSizes,
  gradeNotOfTitle,
  lengthOffStep,
  lengthDiffers,
  varyingSetOneLength,
  lapInsideLength,
  lapBelowGiven,
  lengthBySiteDeduction,
  lengthsKeepAnotherStep,
  lengthOffHabit,
  lengthsAreSums,
  lapBelowAny,
  lapOfThickBar,
  lengthOffWrittenLegs,
  lengthRoundedFurther,
  inchesBeyondFoot,
  heavierThanLift,
  bundleOverHoist,
  formerNotInRack,
  beyondPlate,
  legShortForPin,
  linkSmallerThanTooling,
  beyondLargestAngle,
  noBendingOrder,
  swingBeyondGuard,
  hookCloses,
  barsAtOnceEstimated,
  angleWithoutTrials,
  notCheckedOnMachines,
  markRepeatedOtherwise,
  markMissing,
  markGap,
  sameBarInTwoLists,
  rowEnteredTwice,
  oneBarTwoMarks,
  massDiffers,
  massWithWaste,
  unitMassDiffers,
  linkEqualsMember,
  linkOverCover,
  linkDimensionsInside,
  barLongerThanMember,
  noDeductionForDeviations,
  tooHighForMember,
  columnLinksWideApart,
  columnLinkThin,
  unreadCell,
  guessedCell,
  unreadRow,
  factsNotHeld,
  numberAsText,
  formulasUncalculated,
  readingFailed,
  supersededRevision,
  saidToWait,
  saidToBeSupplied,
  outdatedWaiver,
  settingsUnread,
  unsafeRuleOff,
  unknownShape,
  shapeCodeUnpadded,
  dimensionMissing,
  dimensionExtra,
  formulaDiffersFromGeometry,
  freeDimensionOther,
  shapeLimitBroken,
  noFreeDimension,
  angleNotOfCode,
  spaceBarOnFlatCode,
  crankOffsetSmall,
  crankTooSteep,
  slopeImpossible,
  pathUnread,
  sketchWithoutLength,
  closedLinkInOpenPlace,
  circleLapShort,
  helixEndTurnsMissing,
  crankLapShort,
  spiralPitchUnusual,
  madeBySketch,
  slopeContradicted,
  shopCellUnread,
  shopFactsNotHeld,
  trialDoubtful,
  starterUnprotected,
  barsCongested,
  couplerEndUnsaid,
  bentOnSite,
  starterProjectionShort,
  unknownSize,
  sizeDigitsSwapped,
  plainSizeUnusual,
  fabricAsBar,
  anotherStandard,
  sizeColumnDiffers,
  sizeStray,
  editionNotRead,
  ownCellNotTaken,
  anotherDocumentNamed,
  coldBending,
  outerFibreStrained,
  totalDiffers,
  membersCountedTwice,
  sumLineDiffers,
  struckBarInSum,
  bothFacesCount,
  countFromSpacing,
  varyingSetCount,
  totalLengthDiffers,
  numbersDisagree,
  amountBlank,
  summaryDiffers,
  countOffRun,
  tonnesLineDiffers,
  longerThanStock,
  widerThanTransport,
  radiusSuppliedStraight,
  widerThanAccess,
  longerThanLorry,
  unitSlipTen,
  unitSlipThousand,
  unitSlipForeign,
];
