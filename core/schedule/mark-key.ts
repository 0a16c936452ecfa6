/** A mark without its leading zeros, blanks and its own member's name before it: 01, "1 " and B1-01 are "1". */
export function markKey(mark: string, member: string | null): string {
  let bare = mark.trim().toUpperCase();
  const before = member === null ? "" : `${member.trim().toUpperCase()}-`;
  if (before !== "" && bare.startsWith(before)) bare = bare.slice(before.length);
  return bare.replace(/^0+(?=[0-9A-Z])/, "");
}
