import { DEFAULT_STANDARD, REGISTRY } from "./registry";

export type { Citation, Cited, PrintedTable, Provenance } from "./citation";
export { citationText } from "./citation";
export type { Coverage, CoverageCount } from "./coverage";
export { coverage } from "./coverage";
export { contradicts, type DocumentNamed, documentsNamed, namesDocument } from "./documents-named";
export { NOTHING_OWN, type OwnFigure, type OwnLap, type OwnShape, type OwnStandard } from "./own-standard";
export type {
  Bar,
  DimLetter,
  EndLeg,
  FormerQuestion,
  Grade,
  Hook,
  HookTurn,
  LengthRounding,
  LengthUnit,
  ShapeDefinition,
  ShapeLimit,
  SiteDeductions,
  SizeReading,
  Standard,
  SupplyLimits,
  ToleranceRow,
  Use,
} from "./port";
export { resolveStandard } from "./resolve-standard";
export { prefixNotHeld } from "./shared/read-size";

/** The ids of the standards held, in the order of the registry: "BS8666:2005". */
export const STANDARD_IDS: readonly string[] = REGISTRY.map((tables) => tables.id);

/** Their titles, by id. */
export const STANDARD_TITLES: ReadonlyMap<string, string> = new Map(
  REGISTRY.map(({ id, title }) => [id, title]),
);

/** Id of the standard in force where nobody named one. */
export const DEFAULT_STANDARD_ID: string = DEFAULT_STANDARD.id;
