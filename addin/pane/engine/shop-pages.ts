/** What is made of a check that is kept: loaded when first asked for. */
export { basisOf } from "./basis-of";
export { compareWith } from "./compare-with";
export { findingsContent } from "./make-findings-content";
export { jobView } from "./make-job-view";
export { withMeasured } from "./make-measured-views";
export { makePage } from "./make-page";
export { markViews, ticketView } from "./make-ticket-view";
export { totalsView } from "./make-totals-view";
export { ownContent, ownContentOfFile } from "./own-content";
export { missingFacts, trialEdits } from "./shop-edits";
