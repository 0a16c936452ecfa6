import { measureAuditQuality } from "../corpus/mutations/audit-quality";
import type { Bench } from "./bench";

const bench: Bench = {
  name: "audit quality: planted mistakes found, false alarms",
  async run() {
    const { kinds, cleanRows, cleanAlarms, besideRows, besideAlarms } = measureAuditQuality();
    const recall = kinds.map(({ mistake, planted, found }) => [
      `${mistake.number} ${mistake.name}, recall`,
      `${(found / planted).toFixed(2)} (${found} of ${planted})`,
    ]);
    return {
      figures: {
        "kinds planted": kinds.length,
        "kinds always found": kinds.filter(({ planted, found }) => planted > 0 && found === planted).length,
        "clean rows": cleanRows,
        "false alarms per 1,000 clean rows": perThousand(cleanAlarms.length, cleanRows),
        "rows beside a planted mistake": besideRows,
        "false alarms per 1,000 of those": perThousand(besideAlarms.length, besideRows),
        ...(Object.fromEntries(recall) as Record<string, string>),
      },
    };
  },
};

export default bench;

function perThousand(alarms: number, rows: number): number {
  return Math.round((1e5 * alarms) / rows) / 100;
}
