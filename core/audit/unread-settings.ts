/**
 * The text that stands for settings of which a part is missing in the file, so that whoever reads
 * settings can say so; `reason` names the part and the remedy.
 */
export function unreadSettings(reason: string): string {
  return JSON.stringify({ unread: reason });
}
