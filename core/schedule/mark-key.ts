/** A mark without its leading zeros, blanks and its own member's name before it: 01, "1 " and B1-01 are "1". */
export function markKey(mark: string, member: string | null): string {
  let bare = mark.trim().toUpperCase();
  if (member !== null && bare.includes("-")) {
    const before = `${member.trim().toUpperCase()}-`;
    if (before !== "-" && bare.startsWith(before)) bare = bare.slice(before.length);
  }
  return bare[0] === "0" ? bare.replace(/^0+(?=[0-9A-Z])/, "") : bare;
}
