import type { OwnStandard } from "../../core/standards";
import { readOnce } from "./read-once";

/** What the workbook's sheet Standard says, and every function goes by; undefined where it has none. */
export const ownSheet = readOnce<OwnStandard | undefined>(async () => undefined);
