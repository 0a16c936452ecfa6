import { type CutLength, cutLength } from "../shapes/cut-length";
import { type DevelopedLength, developedLength } from "../shapes/developed-length";
import { exactLengthOf, shortestBetweenBends } from "../shapes/exact-length";
import { leastFormer } from "../shapes/least-former";
import type { BarPath, PlanarPath } from "../shapes/path";
import { type ResolvedShape, resolveShape } from "../shapes/resolve-shape";
import { brokenShapeLimits, type LimitJudgement } from "../shapes/shape-limits";
import { type NamedShape, shapeNamed } from "../shapes/shape-named";
import { placeOf } from "../shapes/shape-values";
import type { Cited } from "../standards/citation";
import type { ShapeDefinition, Use } from "../standards/port";
import { isRefusal, Refusal } from "../units/refusal";
import { isShapeCode, STRAIGHT } from "./codes-meant";
import { isLinkPath } from "./is-link-path";
import { bendsOf, Known, pathKindOf, signsOfPath } from "./known-of-bars";
import { FITS, judgeLength, type LengthJudgement, UNJUDGED } from "./length-judgement";
import { APART, RowFacts } from "./row-facts";

const NO_DIMS: readonly (number | null)[] = [];
const NO_LIMITS: readonly LimitJudgement[] = [];
const LINK_WORDS = /\b(?:links?|stirrups?|ties?|ligatures?|fitments?|hoops?)\b/;
/** mm: what a length is rounded up to hides a smaller difference between printed formula and centre line */
const BESIDE = 25;
/** mm: of a straight, what counts as none too short */
export const SHORT = 1e-6;
const CODE_WITHOUT_BENDS = new Set(["00", "01"]);

/**
 * What is known of one bar, worked out once and only where a rule asks. Lengths are mm, masses kg;
 * null is "not held by the row" or "cannot be worked out", and then the rule that says so is another.
 */
export class BarFacts extends RowFacts {
  /** The code's definition; null for a path and for a code not held. */
  get definition(): ShapeDefinition | null {
    const named = this.nameShape();
    return named?.kind === "code" ? named.definition : null;
  }

  get isPath(): boolean {
    return this.nameShape()?.kind === "path";
  }

  /** A code whose sheet has its codes from another standard's list: what it means here is not known. */
  get isCodeOfAnother(): boolean {
    const { shape } = this.row;
    if (shape === null || shape === STRAIGHT || !isShapeCode(shape)) return false;
    return this.sheet.codesMeant(this.standard) !== null;
  }

  get isStraight(): boolean {
    const { shape } = this.row;
    return shape !== null && (CODE_WITHOUT_BENDS.has(shape) || this.definition?.path === "A");
  }

  get use(): Use {
    const { definition, row } = this;
    if (definition !== null) return definition.use ?? "main";
    return this.isPath && isLinkPath(row.shape ?? "") ? "link" : "main";
  }

  /** A path that goes all the way round is taken for a link where no word of the row says so. */
  get isLinkByShapeOnly(): boolean {
    return this.isPath && this.use === "link" && !LINK_WORDS.test(this.words);
  }

  /** Least former of the standard were the bar no link. */
  get leastFormerOfMain(): Cited<number> | null {
    return this.formerFor("main", this.coating);
  }

  /** The row names a shape that is neither a code that is held nor a path, so that a link is not told from other bars. */
  get isShapeUnknown(): boolean {
    if (this.definition !== null || this.isPath || this.isStraight) return false;
    const typed = this.typed("shape");
    return this.row.shape !== null || (typed !== null && String(typed).trim() !== "");
  }

  /** Least former of the standard were the bar a link. */
  get leastFormerOfLink(): Cited<number> | null {
    return this.formerFor("link", this.coating);
  }

  /** False where the standard holds no least former for the coating. */
  get isCoatingHeld(): boolean {
    const { coating } = this;
    return coating === null || this.diameter === null || this.formerFor(this.use, coating) !== null;
  }

  /** Least former of the standard for this bar, use, coating and grade; for the bare bar where it holds none for the coating. */
  get leastFormer(): Cited<number> | null {
    const { kind } = this;
    if (kind.leastFormer === undefined) kind.leastFormer = this.askFormer();
    return kind.leastFormer;
  }

  /** Former in force: as typed, else the standard's least. */
  get former(): number | null {
    return this.row.former ?? this.leastFormer?.value ?? null;
  }

  /** The shape as resolved, or why it could not be; null where shape or size is not read. */
  get resolved(): ResolvedShape | Refusal | null {
    const { inHand } = this;
    if (inHand.resolved === undefined) inHand.resolved = this.resolveNow();
    return inHand.resolved;
  }

  get shape(): ResolvedShape | null {
    const { resolved } = this;
    return resolved === null || resolved instanceof Refusal ? null : resolved;
  }

  /** True where shape and size are read and no shape can be made of them. */
  get isShapeRefused(): boolean {
    const signs = this.known();
    return signs === 0 ? this.resolved instanceof Refusal : (signs & Known.Refused) !== 0;
  }

  /** The shape about the former in force: as typed, else the least for this coating and grade. */
  get shapeInForce(): ResolvedShape | null {
    const { shape, row } = this;
    const least = this.leastFormer?.value ?? null;
    if (shape === null || row.former !== null || least === null || least === shape.former.value) return shape;
    const coated = this.resolveWith(row.dims, least);
    return coated instanceof Refusal ? shape : coated;
  }

  get path(): BarPath | null {
    return this.shape?.path ?? null;
  }

  /** Kind of the path, known of a code before the path is laid. */
  get pathKind(): BarPath["kind"] | null {
    const signs = this.known();
    return signs === 0 ? pathKindOfShape(this.shape) : pathKindOf(signs);
  }

  /** Bends of the path; null for a curve and for what has no path. */
  get bendCount(): number | null {
    const signs = this.known();
    const bends = signs === 0 ? undefined : bendsOf(signs);
    return bends === undefined ? bendsOfShape(this.shape) : bends;
  }

  /** The path where it is legs and turns. */
  get planarPath(): PlanarPath | null {
    const { path } = this;
    return path?.kind === "planar" ? path : null;
  }

  get developed(): DevelopedLength | Refusal | null {
    const { inHand } = this;
    if (inHand.developed === undefined)
      inHand.developed = this.shape === null ? null : developedLength(this.shape);
    return inHand.developed;
  }

  /** The exact length; null where it cannot be had. */
  get exactLength(): number | null {
    const { inHand } = this;
    inHand.exact ??= this.shape === null ? NaN : exactLengthOf(this.shape);
    return Number.isNaN(inHand.exact) ? null : inHand.exact;
  }

  get hasExactLength(): boolean {
    const signs = this.known();
    return signs === 0 ? this.exactLength !== null : (signs & Known.Exact) !== 0;
  }

  /** True where the printed formula is so far from the length of the centre line that it is to be told. */
  get isBesideFormula(): boolean {
    const signs = this.known();
    return signs === 0 ? this.standsBeside() : (signs & Known.Beside) !== 0;
  }

  private standsBeside(): boolean {
    const { cut, exactLength } = this;
    return cut !== null && exactLength !== null && Math.abs(cut.unrounded - exactLength) > BESIDE;
  }

  /** True where a straight with a bend at both ends is shorter than the standard has it. */
  get hasShortStraight(): boolean {
    const signs = this.known();
    return signs === 0 ? this.bendsTooSoon() : (signs & Known.ShortStraight) !== 0;
  }

  private bendsTooSoon(): boolean {
    const limit = this.standard.straightBetweenBends;
    if (limit === null) return false;
    const { diameter, shortestBetweenBends } = this;
    if (diameter === null || shortestBetweenBends === null) return false;
    return shortestBetweenBends < limit.value * diameter - SHORT;
  }

  /** The shortest straight with a bend at both ends; null where there is none or bends overlap. */
  get shortestBetweenBends(): number | null {
    const shortest = this.shape === null ? Infinity : shortestBetweenBends(this.shape);
    return Number.isFinite(shortest) ? shortest : null;
  }

  /** The cut length as computed, or why it cannot be had; null where the row names no shape and size that are held. */
  get cutOrRefusal(): CutLength | Refusal | null {
    const { inHand } = this;
    if (inHand.cut === undefined) inHand.cut = this.shape === null ? null : cutLength(this.shape);
    return inHand.cut;
  }

  /** mm as computed; null where it cannot be had. */
  get computedLength(): number | null {
    if (this.known() === 0) return this.cut?.length ?? null;
    const length = this.sheet.known.lengthOf(this.place);
    return Number.isNaN(length) ? null : length;
  }

  /** The cut length as computed; null where it cannot be had. */
  get cut(): CutLength | null {
    const cut = this.cutOrRefusal;
    return cut instanceof Refusal ? null : cut;
  }

  /** Limits of the shape that the dims do not meet. */
  get brokenLimits(): readonly LimitJudgement[] {
    const signs = this.known();
    return signs === 0 || (signs & Known.Broken) !== 0 ? this.limitsNotMet() : NO_LIMITS;
  }

  private limitsNotMet(): readonly LimitJudgement[] {
    const { inHand } = this;
    inHand.broken ??= this.shape === null ? NO_LIMITS : brokenShapeLimits(this.shape);
    return inHand.broken;
  }

  /** The length that is cut: as typed, else as computed. */
  get lengthInForce(): number | null {
    return this.row.length ?? this.computedLength;
  }

  /** Whether the typed length fits the dimensions; "unjudged" where one of the two is missing. */
  get lengthJudgement(): LengthJudgement {
    const signs = this.known();
    if (signs === 0) return this.lengthJudged();
    if ((signs & Known.Judged) === 0) return UNJUDGED;
    if ((signs & Known.Fits) !== 0) return FITS;
    return this.sheet.known.judgementOf(this.place, () => this.lengthJudged());
  }

  private lengthJudged(): LengthJudgement {
    const { inHand } = this;
    inHand.judgement ??= judgeLength(this);
    return inHand.judgement;
  }

  /** kg of one bar. */
  get massEach(): number | null {
    const { bar, lengthInForce } = this;
    return bar === null || lengthInForce === null ? null : (lengthInForce / 1000) * bar.massPerMetre;
  }

  /** Typed mass over computed mass, of the row or of one bar, whichever the sheet's mass is nearer to. */
  get massRatio(): number | null {
    const { mass } = this.row;
    if (mass === null || mass <= 0) return null;
    const { massEach, count } = this;
    if (massEach === null || massEach <= 0) return null;
    const ofRow = count === null || count <= 0 ? null : mass / (massEach * count);
    const ofBar = mass / massEach;
    return ofRow === null || Math.abs(Math.log(ofBar)) < Math.abs(Math.log(ofRow)) ? ofBar : ofRow;
  }

  /** Works out what is kept of this bar, if it is not yet. */
  settle(): void {
    this.known();
  }

  /** The bits of what is kept of this bar; 0 where nothing is, and it is worked out while the bar is in hand. */
  private known(): number {
    const { place } = this;
    if (place === APART) return 0;
    const signs = this.sheet.known.signsOf(place);
    return signs === 0 ? this.workOut() : signs;
  }

  private workOut(): number {
    // what codes of another list mean hangs on all bars, and is asked by each
    if (this.sheet.codesMeant(this.standard) !== null) return 0;
    const { shape } = this;
    const { kind } = this.lengthJudged();
    let signs: number = Known.Settled | signsOfPath(pathKindOfShape(shape), bendsOfShape(shape));
    if (this.resolved instanceof Refusal) signs |= Known.Refused;
    if (this.limitsNotMet().length > 0) signs |= Known.Broken;
    if (this.exactLength !== null) signs |= Known.Exact;
    if (this.standsBeside()) signs |= Known.Beside;
    if (this.bendsTooSoon()) signs |= Known.ShortStraight;
    if (kind !== "unjudged") signs |= kind === "fits" ? Known.Judged | Known.Fits : Known.Judged;
    this.sheet.known.settle(this.place, signs, this.cut?.length ?? Number.NaN);
    return signs;
  }

  private askFormer(): Cited<number> | null {
    const { use, coating } = this;
    const own = this.formerFor(use, coating);
    if (own !== null || coating === null || this.diameter === null) return own;
    return this.formerFor(use, null);
  }

  private formerFor(use: Use, coating: string | null): Cited<number> | null {
    const { diameter, standard, grade } = this;
    if (diameter === null) return null;
    const least = leastFormer(standard, diameter, use, grade?.name, coating ?? undefined);
    return isRefusal(least) ? null : least;
  }

  private resolveNow(): ResolvedShape | Refusal | null {
    const { shape, dims } = this.row;
    if (shape === null || this.diameter === null || this.isCodeOfAnother) return null;
    return this.resolveWith(dims);
  }

  /** The same bar with other dims, to try what a slip of the pen would explain. */
  resolveWith(
    dims: readonly (number | null)[],
    former = this.row.former,
    use = this.use,
  ): ResolvedShape | Refusal {
    const { definition } = this;
    return resolveShape({
      standard: this.standard,
      shape: this.row.shape ?? "",
      dims: definition === null ? NO_DIMS : dimsOfCode(definition, dims, this.row.radius),
      diameter: this.diameter ?? 0,
      former,
      use,
      grade: this.grade?.name,
    });
  }

  private nameShape(): NamedShape | null {
    const { kind } = this;
    if (kind.named === undefined) {
      const { shape } = kind;
      kind.isOfAnother = this.isCodeOfAnother;
      const named = shape === null || kind.isOfAnother ? null : shapeNamed(this.standard, shape);
      kind.named = isRefusal(named) ? null : named;
      // that it is of another hangs on all bars, and is asked by each
    } else if (kind.isOfAnother) this.sheet.codesMeant(this.standard);
    return kind.named;
  }
}

function pathKindOfShape(shape: ResolvedShape | null): BarPath["kind"] | null {
  return shape === null ? null : (shape.compiled?.template?.kind ?? shape.path?.kind ?? null);
}

function bendsOfShape(shape: ResolvedShape | null): number | null {
  const template = shape?.compiled?.template;
  if (template?.kind === "planar") return template.turns.length;
  return shape?.path?.kind === "planar" ? shape.path.turns.length : null;
}

/** The dims that the code takes, in their columns and without others, and its radius directly after the last letter. */
function dimsOfCode(
  { dims: letters }: ShapeDefinition,
  dims: readonly (number | null)[],
  radius: number | null,
): readonly (number | null)[] {
  const takesRadius = letters.includes("R");
  const count = takesRadius ? letters.length - 1 : letters.length;
  const last = letters[count - 1];
  const width = last === undefined ? 0 : placeOf(last)! + 1;
  if (!takesRadius && width === count && dims.length <= count) return dims;
  const taken = dims.slice(0, width);
  if (width > count) {
    for (let column = 0; column < taken.length; column += 1) {
      if (!letters.some((letter) => placeOf(letter) === column)) taken[column] = null;
    }
  }
  if (!takesRadius) return taken;
  while (taken.length < width) taken.push(null);
  taken.push(radius);
  return taken;
}
