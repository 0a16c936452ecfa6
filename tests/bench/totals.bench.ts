import { tonnageByPour } from "../../core/totals/tonnage-by-pour";

export default {
  name: "totals",
  async run() {
    const lines = Array.from({ length: 1_000_000 }, (_, i) => ({
      pour: `P${i % 40}`,
      size: `H${[8, 10, 12, 16, 20, 25, 32, 40][i % 8]}`,
      mass: ((i * 7919) % 1_000_003) / 1000,
    }));
    const start = performance.now();
    const { total } = tonnageByPour(lines);
    const exact = performance.now() - start;
    const plainStart = performance.now();
    let plain = 0;
    for (const line of lines) plain += line.mass;
    const plainTime = performance.now() - plainStart;
    return {
      figures: {
        "1,000,000 rows by pour and size, ms": Math.round(exact),
        "one plain float sum of the same, ms": Math.round(plainTime),
        "tonnes, exact": total,
        "tonnes, plain float": plain / 1000,
      },
    };
  },
};
