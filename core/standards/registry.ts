import { ACI318_2019 } from "./aci318-2019/aci318-2019";
import { AS3600_2018 } from "./as3600-2018/as3600-2018";
import { BS4466_1989 } from "./bs4466-1989/bs4466-1989";
import { BS8666_2005 } from "./bs8666-2005/bs8666-2005";
import { BS8666_2020 } from "./bs8666-2020/bs8666-2020";
import { CSA_A23_1_2019 } from "./csa-a23-1-2019/csa-a23-1-2019";
import { DIN_EC2_2013 } from "./din-ec2-2013/din-ec2-2013";
import { EC2_2004 } from "./ec2-2004/ec2-2004";
import { GB50204_2015 } from "./gb50204-2015/gb50204-2015";
import { INDIA_SITE } from "./india-site/india-site";
import { IS2502_1963 } from "./is2502-1963/is2502-1963";
import { ISO3766_2003 } from "./iso3766-2003/iso3766-2003";
import { JASS5_2018 } from "./jass5-2018/jass5-2018";
import { NZS3109_1997 } from "./nzs3109-1997/nzs3109-1997";
import { SANS282_2011 } from "./sans282-2011/sans282-2011";
import type { StandardTables } from "./shared/standard-tables";

/**
 * Every document and edition held, one line each. Within a family the edition that an id without
 * edition means, the newest held as sure, stands first.
 */
export const REGISTRY: readonly StandardTables[] = [
  BS8666_2005,
  BS8666_2020,
  EC2_2004,
  DIN_EC2_2013,
  AS3600_2018,
  NZS3109_1997,
  ACI318_2019,
  CSA_A23_1_2019,
  IS2502_1963,
  INDIA_SITE,
  SANS282_2011,
  ISO3766_2003,
  JASS5_2018,
  GB50204_2015,
  BS4466_1989,
];

/** The standard in force where nobody named one. */
export const DEFAULT_STANDARD = BS8666_2005;
