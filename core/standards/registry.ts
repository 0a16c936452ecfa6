import { BS8666_2005 } from "./bs8666-2005/bs8666-2005";
import { BS8666_2020 } from "./bs8666-2020/bs8666-2020";
import { EC2_2004 } from "./ec2-2004/ec2-2004";
import type { StandardTables } from "./shared/standard-tables";

/**
 * Every document and edition held, one line each. Within a family the edition that an id without
 * edition means stands first.
 */
export const REGISTRY: readonly StandardTables[] = [BS8666_2005, BS8666_2020, EC2_2004];

/** The standard in force where nobody named one. */
export const DEFAULT_STANDARD = BS8666_2005;
