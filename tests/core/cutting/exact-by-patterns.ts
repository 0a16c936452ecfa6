import highsLoader from "highs";
import type { CuttingQuestion } from "../../../core/cutting";

interface Listed {
  readonly stock: number;
  readonly counts: number[];
}

/** Every pattern of every stock: plain recursion over mm, nothing shared with the planner. */
function allPatterns(
  question: CuttingQuestion,
  lengths: readonly number[],
  demand: readonly number[],
): Listed[] {
  const found: Listed[] = [];
  question.stock.forEach((bar, stock) => {
    const counts: number[] = [];
    const extend = (item: number, room: number): void => {
      if (item === lengths.length) {
        if (counts.some((count) => count > 0)) found.push({ stock, counts: counts.slice() });
        return;
      }
      const need = lengths[item]! + question.kerf;
      for (let count = 0; count <= demand[item]! && count * need <= room; count += 1) {
        counts[item] = count;
        extend(item + 1, room - count * need);
      }
      counts[item] = 0;
    };
    extend(0, bar.length - question.endCrop + question.kerf);
  });
  return found;
}

/**
 * Least stock length bought (remnants cost nothing), mm, over every pattern there is, and the bound of the linear relaxation;
 * both by HiGHS (general-purpose solver), which knows nothing of our planner.
 */
export async function exactByPatterns(
  question: CuttingQuestion,
): Promise<{ least: number; relaxed: number }> {
  const byLength = new Map<number, number>();
  for (const piece of question.pieces)
    byLength.set(piece.length, (byLength.get(piece.length) ?? 0) + piece.count);
  const lengths = [...byLength.keys()];
  const demand = [...byLength.values()];
  const patterns = allPatterns(question, lengths, demand);
  const objective = patterns
    .map((p, j) => `${question.stock[p.stock]!.remnant ? 0 : question.stock[p.stock]!.length} x${j}`)
    .join(" + ");
  const rows = lengths.map((_, item) => {
    const terms = patterns.flatMap((p, j) => (p.counts[item]! > 0 ? [`${p.counts[item]} x${j}`] : []));
    return `d${item}: ${terms.join(" + ")} >= ${demand[item]}`;
  });
  question.stock.forEach((bar, stock) => {
    if (bar.count === null) return;
    const terms = patterns.flatMap((p, j) => (p.stock === stock ? [`x${j}`] : []));
    rows.push(`s${stock}: ${terms.join(" + ")} <= ${bar.count}`);
  });
  const program = `Minimize\n obj: ${objective}\nSubject To\n ${rows.join("\n ")}\n`;
  const whole = `General\n ${patterns.map((_, j) => `x${j}`).join("\n ")}\n`;
  const highs = await highsLoader();
  return {
    relaxed: highs.solve(`${program}End\n`).ObjectiveValue,
    least: highs.solve(`${program}${whole}End\n`, { mip_rel_gap: 0 }).ObjectiveValue,
  };
}
