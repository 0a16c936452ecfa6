/** True where `a` is a later revision than `b`: none, "-" or 0 come first, then numbers and letters in order; C1 follows P5. */
export function isLaterRevision(a: string | null, b: string | null): boolean {
  const [stageA, numberA, letterA] = rank(a);
  const [stageB, numberB, letterB] = rank(b);
  // a letter and a number are two ways of counting, and nobody can say which is later
  if (stageA > 0 && stageB > 0 && letterA === "" && letterB === "" && numberA >= 0 !== numberB >= 0)
    return false;
  if (stageA !== stageB) return stageA > stageB;
  if (letterA !== letterB)
    return letterA.length - letterB.length > 0 || (letterA.length === letterB.length && letterA > letterB);
  return numberA > numberB;
}

function rank(revision: string | null): [stage: number, number: number, letters: string] {
  const text = (revision ?? "")
    .trim()
    .toUpperCase()
    .replace(/^REV\.?\s*/, "");
  if (text === "" || text === "-" || text === "0" || text === "00") return [0, 0, ""];
  const parts = /^([A-Z]*)\s*(\d*)$/.exec(text);
  if (parts === null) return [0, 0, ""];
  const letters = parts[1] ?? "";
  const number = parts[2] === "" || parts[2] === undefined ? 0 : Number(parts[2]);
  // P is preliminary and C for construction, where a number follows
  if ((letters === "P" || letters === "C") && parts[2] !== "") return [letters === "P" ? 1 : 2, number, ""];
  return [1, number, letters];
}
