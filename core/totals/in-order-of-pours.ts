/** What bars without a pour are called. */
export const NO_POUR = "no pour";

/** Pours in the order of their names, P2 before P10, bars without one last; groups of another kind as they come. */
export function inOrderOfPours<Group extends { readonly pour: string }>(
  groups: readonly Group[],
  groupedBy: string,
): readonly Group[] {
  if (groupedBy !== "pour") return groups;
  return [...groups].sort(({ pour: one }, { pour: other }) => {
    const isNone = [one, other].map((pour) => pour === "" || pour === NO_POUR);
    if (isNone.includes(true)) return Number(isNone[0]) - Number(isNone[1]);
    return one.localeCompare(other, "en", { numeric: true });
  });
}
