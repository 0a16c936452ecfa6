import { setBack } from "../../core/shapes/centre-line";
import type { ResolvedShape } from "../../core/shapes/resolve-shape";

const KINDS = ["bends below 90", "right angles", "bends above 90", "half circles"] as const;
type Kind = (typeof KINDS)[number];

const ONE: Readonly<Record<Kind, string>> = {
  "bends below 90": "one bend below 90",
  "right angles": "one right angle",
  "bends above 90": "one bend above 90",
  "half circles": "one half circle",
};

/** What the bends of a shape take off the sum of its legs by geometry, kind by kind, in words. */
export function explainDifference({ path, diameter, radius, definition }: ResolvedShape): string {
  if (path?.kind === "helix") return "the printed formula leaves the pitch out";
  if (path?.kind !== "planar") return definition?.formulaNote ?? "";
  const counts = new Map<Kind, { count: number; taken: number }>();
  for (const turn of path.turns) {
    const angle = Math.abs(turn.angle);
    const inside = turn.radius ?? radius;
    const arc = (angle * Math.PI * (inside + diameter / 2)) / 180;
    const kind = kindOf(angle);
    const { count, taken } = counts.get(kind) ?? { count: 0, taken: 0 };
    counts.set(kind, { count: count + 1, taken: taken + 2 * setBack(angle, inside, diameter) - arc });
  }
  const parts = KINDS.flatMap((kind) => {
    const sum = counts.get(kind);
    if (sum === undefined) return [];
    const named = sum.count === 1 ? ONE[kind] : `${sum.count} ${kind}`;
    const [adds, takes] = sum.count === 1 ? ["adds", "takes off"] : ["add", "take off"];
    return [`${named} ${sum.taken < 0 ? adds : takes} ${plain(Math.abs(sum.taken))}`];
  });
  return `by geometry ${parts.join(", ")}; ${printedWords(counts, definition?.formulaNote)}`;
}

function printedWords(counts: ReadonlyMap<Kind, unknown>, note: string | undefined): string {
  if (counts.has("half circles") || counts.has("bends above 90")) {
    return note === undefined ? "the formula rounds its factors" : "for what the formula does see the note";
  }
  if (counts.has("bends below 90")) return "the formula charges bends below 90 nothing";
  return "the formula charges 0.5r + d for each";
}

function kindOf(angle: number): Kind {
  if (Math.abs(angle - 90) < 1e-6) return "right angles";
  if (angle < 90) return "bends below 90";
  return angle === 180 ? "half circles" : "bends above 90";
}

function plain(value: number): string {
  return String(Number(value.toFixed(1)));
}
