/**
 * A schedule proves its own reading: words are the hint, arithmetic the proof.
 *
 * `weighTable` takes the rows under a header and what its words say, and gives the settled columns: role and unit
 * with who decided it (`words`, `arithmetic`, `user`), one decision for every column about which the two differ with
 * the rows that agree either way, the identities of the settled reading with rows kept and tested, and `held` where
 * totals must be held back. `findTables` finds tables without any header word. Both look at 400 rows at most.
 */
export { type FoundTable, findTables } from "./find-tables";
export { sampledRows } from "./pick-rows";
export type { Agreement } from "./reading-agreement";
export type { IdentityName, RoleEvidence, TableEvidence } from "./table-evidence";
export { type WeighedTable, weighTable } from "./weigh-table";
export type { ColumnDecision, Share, Weighed } from "./weighed";
export {
  type EvidenceRole,
  type EvidenceUnit,
  QUANTITIES,
  type WordReading,
  type Words,
} from "./word-reading";
