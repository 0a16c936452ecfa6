import { isPointedAt } from "../../../core/audit/is-pointed-at";
import { openAudit, recheck } from "../../../core/audit/run-audit";
import { settingsFromText } from "../../../core/audit/settings-text";
import { inForceBy, standardNamed } from "../../../core/audit/standard-named";
import type { Sheet } from "../../../core/schedule/sheet";
import { sheetsOfBook } from "../../../core/schedule/sheets-of-book";
import { uprightSheet } from "../../../core/schedule/turned-sheet";
import { isShopSheet } from "../../../core/shop/is-shop-sheet";
import { isInspectionSheet } from "../../../core/tickets/is-inspection-sheet";
import type { AuditView } from "./audit-view";
import { aheadWords } from "./decision-words";
import type { Engine } from "./engine";
import type { KeptCheck } from "./kept-check";
import { auditView } from "./make-audit-view";
import { barView } from "./make-bar-view";
import { explainedView } from "./make-explained-view";
import { followView } from "./make-follow-view";
import { sheetsToRead } from "./other-sheets";
import { standardAsked } from "./standard-asked";

/** What is not needed for a check comes with the first page that is asked for. */
const shopPages = () => import(/* webpackChunkName: "later-shop-pages" */ "./shop-pages");

/** An engine that works where it stands. */
export function createLocalEngine(): Engine {
  const checks = new Map<string, KeptCheck>();
  const keep = async (kept: KeptCheck): Promise<AuditView> => {
    checks.set(kept.sheet.name, kept);
    const view = auditView(kept);
    if (kept.inspection === null) return view;
    return (await shopPages()).withMeasured(view, kept);
  };
  const known = (sheet: string): KeptCheck => {
    const kept = checks.get(sheet);
    if (kept === undefined) throw new Error(`sheet ${sheet} was not checked yet: check it first`);
    return kept;
  };
  return {
    async check(question) {
      const asked = standardAsked(question.standard);
      const settings = settingsFromText(question.settings);
      // a schedule may have the name of the Shop sheet: it is another list of the book
      const shop = question.shop !== null && isShopSheet(question.shop) ? question.shop : null;
      // as the command line: bars that stand in columns are read as rows
      const upright = (each: Sheet): Sheet =>
        isPointedAt(settings, each.name) ? each : uprightSheet(each, asked);
      const { before, behind } = question.otherSheets;
      const book = sheetsOfBook([...before, question.sheet, ...behind].map(upright), () => true);
      const sheet = book[before.length] as Sheet;
      const otherSheets = { before: book.slice(0, before.length), behind: book.slice(before.length + 1) };
      const others = [...otherSheets.before, ...otherSheets.behind];
      const sheets = sheetsToRead(sheet, question.shop, otherSheets);
      // as the command line: neither its user nor the workbook names one, so that the sheets may
      const isStandardAssumed = question.standard.trim() === "";
      const named = isStandardAssumed ? standardNamed(sheets, asked) : null;
      const standard = inForceBy(named, asked);
      return keep({
        sheet,
        shop,
        otherSheets: others.map(({ name }) => name),
        inspection: others.find(({ name }) => isInspectionSheet(name)) ?? null,
        settings,
        standardChosen: isStandardAssumed ? null : standard.id,
        audit: openAudit({
          ...{ sheets, only: sheet.name, standard, settings },
          ...{ isStandardAssumed, isStandardNamed: named !== null },
        }),
      });
    },
    async recheck({ sheet: edited, firstRow, lastRow }) {
      const last = known(edited.name);
      const { standard } = last.audit.report;
      const upright = isPointedAt(last.settings, edited.name) ? edited : uprightSheet(edited, standard);
      const { follows, elsewhere } = last.sheet;
      const sheet = {
        ...upright,
        ...(follows === undefined ? {} : { follows }),
        ...(elsewhere === undefined ? {} : { elsewhere }),
      };
      const isMoved =
        // an edited row goes through all bars that stand in columns
        sheet.isTurned === true ||
        last.sheet.isTurned === true ||
        last.sheet.top !== sheet.top ||
        last.sheet.left !== sheet.left;
      const first = isMoved ? 0 : firstRow - sheet.top;
      const end = isMoved || last.sheet.rowCount !== sheet.rowCount ? Infinity : lastRow - sheet.top;
      return keep({ ...last, sheet, audit: recheck(last.audit, sheet, first, end) });
    },
    async bar(name, line) {
      const last = checks.get(name);
      const reading = last?.audit.report.sheets[0]?.reading;
      if (last === undefined || reading === undefined) return null;
      return barView(last.sheet, reading, last.audit.report.standard, line - last.sheet.top);
    },
    explain: async (sheet) => explainedView(known(sheet)),
    ahead: async (sheet, decision) => aheadWords(known(sheet), decision),
    follows: async (sheet, edits) => followView(known(sheet), edits),
    totals: async (sheet) => (await shopPages()).totalsView(known(sheet)),
    findings: async (sheet) => (await shopPages()).findingsContent(known(sheet)),
    ownSheet: async (sheet, file) => {
      const { ownContent, ownContentOfFile } = await shopPages();
      return file === null ? ownContent(known(sheet)) : ownContentOfFile(file);
    },
    marks: async (sheet) => (await shopPages()).markViews(known(sheet)),
    ticket: async (sheet, row) => (await shopPages()).ticketView(known(sheet), row),
    trialEdits: async (sheet, trial) => (await shopPages()).trialEdits(known(sheet), trial),
    missingFacts: async (sheet, machine) => (await shopPages()).missingFacts(known(sheet), machine),
    page: async (kind, sheet, pours) => (await shopPages()).makePage(kind, known(sheet), pours),
    compare: async (sheet, older) => (await shopPages()).compareWith(known(sheet), older),
    withFiles: async (sheet, files) => (await shopPages()).jobView(known(sheet), files),
    basis: async (sheet) => (await shopPages()).basisOf(known(sheet)),
    async forget() {
      checks.clear();
    },
    stop() {},
  };
}
