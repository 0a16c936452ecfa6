/** mm that starters stand out of the concrete, in words such as "projects 1500"; null where none is said. */
export function projectionSaid(words: string): number | null {
  const said = /\bproj\w*\D{0,10}?(\d{3,5})\b/.exec(words)?.[1];
  return said === undefined ? null : Number(said);
}
