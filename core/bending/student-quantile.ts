/**
 * The value that Student's t with `freedom` degrees (any number over 0) stays below with probability
 * `share`, 0.5 to 1. By bisection on the regularised incomplete beta function.
 *
 * @example
 * studentQuantile(0.95, 6); // 1.943
 */
export function studentQuantile(share: number, freedom: number): number {
  // every bar that is asked of one fit has the same
  if (share !== last.share || freedom !== last.freedom) {
    last = { share, freedom, value: bisected(share, freedom) };
  }
  return last.value;
}

let last = { share: Number.NaN, freedom: Number.NaN, value: Number.NaN };

function bisected(share: number, freedom: number): number {
  let low = 0;
  let high = 1;
  while (studentShare(high, freedom) < share) high *= 2;
  for (let round = 0; round < 60; round += 1) {
    const middle = (low + high) / 2;
    if (studentShare(middle, freedom) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Probability that Student's t stays below `value`, 0 or more. */
function studentShare(value: number, freedom: number): number {
  return 1 - 0.5 * incompleteBeta(freedom / (freedom + value * value), freedom / 2, 0.5);
}

function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log(1 - x));
  if (x < (a + 1) / (a + b + 2)) return (front * betaFraction(x, a, b)) / a;
  return 1 - (front * betaFraction(1 - x, b, a)) / b;
}

/** Continued fraction of the incomplete beta function, Lentz's way. */
function betaFraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  let c = 1;
  let d = 1 / (1 - ((a + b) * x) / (a + 1) || tiny);
  let fraction = d;
  for (let m = 1; m < 300; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / (1 + even * d || tiny);
    c = 1 + even / c || tiny;
    fraction *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / (1 + odd * d || tiny);
    c = 1 + odd / c || tiny;
    fraction *= d * c;
    if (Math.abs(d * c - 1) < 1e-14) break;
  }
  return fraction;
}

/** Lanczos, g = 7, nine terms. */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const shifted = x - 1;
  const t = shifted + 7.5;
  const sum = LANCZOS.reduce(
    (total, term, index) => total + (index === 0 ? term : term / (shifted + index)),
    0,
  );
  return 0.5 * Math.log(2 * Math.PI) + (shifted + 0.5) * Math.log(t) - t + Math.log(sum);
}
