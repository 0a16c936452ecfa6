const MOST_REMEMBERED = 50_000;

/**
 * A reader that keeps what it has read. Where reading throws, the answer is that of `failed`: one cell that is
 * beyond the program is told of, and stops no sheet.
 */
export function remember<K, T>(read: (typed: K) => T, failed: (reason: string) => T): (typed: K) => T {
  const remembered = new Map<K, T>();
  return (typed) => {
    const known = remembered.get(typed);
    if (known !== undefined) return known;
    const answer = tried(() => read(typed), failed);
    if (remembered.size > MOST_REMEMBERED) remembered.clear();
    remembered.set(typed, answer);
    return answer;
  };
}

function tried<T>(make: () => T, failed: (reason: string) => T): T {
  try {
    return make();
  } catch (error) {
    const what = error instanceof Error ? error.name : "error";
    return failed(`the program failed on this cell (${what}): write it in a plainer way`);
  }
}
