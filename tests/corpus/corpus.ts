import type { CorpusSchedule } from "./corpus-schedule";
import { AUSTRALIA } from "./recipes/australia";
import { CANADA } from "./recipes/canada";
import { CHINA } from "./recipes/china";
import { EUROPE } from "./recipes/europe";
import { FRANCE } from "./recipes/france";
import { GERMANY } from "./recipes/germany";
import { GULF } from "./recipes/gulf";
import { INDIA } from "./recipes/india";
import { SOUTH_AFRICA } from "./recipes/south-africa";
import { UK_FORM } from "./recipes/uk-form";
import { US_PLACING_LIST } from "./recipes/us-placing-list";

/** Every schedule of the corpus: invented jobs and members in the habits of eleven practices. */
export const CORPUS: readonly CorpusSchedule[] = [
  ...UK_FORM,
  ...GULF,
  ...INDIA,
  ...US_PLACING_LIST,
  ...CANADA,
  ...AUSTRALIA,
  ...GERMANY,
  ...FRANCE,
  ...SOUTH_AFRICA,
  ...CHINA,
  ...EUROPE,
];
