import { isCellError, type Sheet } from "../../../core/schedule/sheet";
import { greatest, least } from "../../../core/units/extremes";
import { parseAddress } from "../../workbook/cell-address";
import { type CellEdit, PartlyWritten } from "../../workbook/workbook-port";
import type { AuditView, FindingView } from "../engine/audit-view";
import { alikeKey } from "./arrange-findings";
import { editsOf, type FixKind, fixProof, isSafeFix, needsLook, stillStanding } from "./fixes-of-view";
import type { PaneHost } from "./pane-host";
import type { AppliedFix } from "./pane-state";

/** Fixes: looked at, written in one step, proved by a new judgement, and taken back. */
export class FixSteps {
  constructor(private readonly host: PaneHost) {}

  /** Findings of the same rule with a fix of the same kind. */
  alike(finding: FindingView): readonly FindingView[] {
    const kind = isSafeFix(finding) ? isSafeFix : needsLook;
    const findings = this.host.state().view?.findings ?? [];
    return findings.filter((each) => alikeKey(each) === alikeKey(finding) && kind(each));
  }

  /** Opens the look at fixes, or closes it where there are none; only what is looked at can be written. */
  async look(findings: readonly FindingView[]): Promise<void> {
    const keys = findings.map(({ key }) => key);
    this.host.set({ looked: keys.length === 0 ? null : keys, follows: null });
    const [first] = findings;
    if (first === undefined) return;
    await this.host.quietly(async () => {
      const { patience, engine, workbook } = this.host;
      const follows = await patience.wait(engine.follows(first.sheet, editsOf(findings)));
      const cells = follows.edits.map(({ cell }) => cell);
      // a formula follows by itself
      const formulas =
        cells.length === 0 ? new Set() : await patience.wait(workbook.formulaCells(first.sheet, cells));
      const edits = follows.edits.filter(({ cell }) => !formulas.has(cell));
      if (this.host.state().looked?.[0] !== keys[0]) return;
      this.host.set({ follows: { ...follows, edits } });
    });
  }

  lookedAt(): readonly FindingView[] {
    const looked = new Set(this.host.state().looked ?? []);
    return this.host.state().view?.findings.filter(({ key }) => looked.has(key)) ?? [];
  }

  /** Writes the fixes that are looked at, with what follows from them where the user agreed to that. */
  async writeLooked(isAlong: boolean): Promise<void> {
    const findings = this.lookedAt().filter((finding) => needsLook(finding) || isSafeFix(finding));
    const [first] = findings;
    if (first === undefined) return;
    const label =
      findings.length === 1 ? (first.fix?.label ?? "") : `${first.rule} in ${findings.length} rows`;
    await this.#write(findings, label, isAlong ? (this.host.state().follows?.edits ?? []) : []);
    await this.look([]);
  }

  /** Writes one safe fix and judges its rows again. */
  async applyFix(finding: FindingView): Promise<void> {
    if (!isSafeFix(finding)) return;
    await this.#write([finding], finding.fix?.label ?? "");
  }

  /** Writes every safe fix of a rule in one step and judges the rows again. */
  async applyKind({ findings, rule }: FixKind): Promise<void> {
    await this.#write(findings.filter(isSafeFix), rule);
  }

  /** A step written elsewhere in the pane joins those that can be taken back, the last first. */
  keepStep(step: AppliedFix): void {
    this.host.set({ fixes: [...this.host.state().fixes, step] });
    this.#noteEdits(step.sheet, step.edits);
  }

  /** Takes the last fix back, unless its cells were edited since. */
  async undoFix(): Promise<void> {
    const last = this.host.state().fixes.at(-1);
    if (last === undefined) return;
    await this.host.guard(async () => {
      const undone = await this.host.patience.wait(last.undo());
      this.host.set({ fixes: this.host.state().fixes.filter((fix) => fix !== last) });
      if (!undone) {
        const text = `${last.cells} was edited since, so nothing was taken back: undo your own edit first`;
        this.host.set({ notice: { kind: "problem", text } });
        return;
      }
      await this.#judgeWritten(last.sheet, last.edits);
      this.host.set({ notice: { kind: "done", text: `Taken back in ${last.cells}: ${last.label}` } });
    });
  }

  async #write(
    wanted: readonly FindingView[],
    label: string,
    along: readonly CellEdit[] = [],
  ): Promise<void> {
    const sheet = wanted[0]?.sheet;
    if (sheet === undefined) return;
    await this.host.guard(async () => {
      const before = await this.host.judge.upToDate(sheet);
      const findings = stillStanding(wanted, before);
      if (findings.length === 0) {
        throw new Error("the sheet has changed since this was found, so nothing was written: check again");
      }
      const edits = [...editsOf(findings), ...along.map(({ cell, to }) => ({ cell, to }))];
      const cells = cellList(edits);
      this.host.work(`Writing ${cells}`);
      // kept also where it is written after nobody waits for it any longer
      const written = this.host.workbook.writeCells(sheet, edits).then(
        (undo) => this.keepStep({ sheet, label, cells, edits, undo }),
        async (problem: unknown) => {
          if (problem instanceof PartlyWritten) await this.#keepPart(problem, sheet, label, edits.length);
          throw problem;
        },
      );
      await this.host.patience.wait(written);
      const after = await this.#judgeWritten(sheet, edits);
      const proof = fixProof(findings, before, after);
      this.host.set({ notice: { ...proof, text: `Done in ${cells}: ${label}. ${proof.text}` } });
    });
  }

  /** What was written before the workbook refused can be taken back like a whole step. */
  async #keepPart(
    { written, undo, message }: PartlyWritten,
    sheet: string,
    label: string,
    wanted: number,
  ): Promise<void> {
    const cells = cellList(written);
    this.keepStep({ sheet, label: `${label}, in part`, cells, edits: written, undo, isPart: true });
    const count = written.length === wanted ? "some or all of the" : `up to ${written.length} of the`;
    await this.#judgeWritten(sheet, written).catch(() => undefined);
    throw new Error(
      `${count} ${wanted} cells were written before it stopped; Take back restores them. ${message}`,
    );
  }

  async #judgeWritten(sheet: string, edits: readonly CellEdit[]): Promise<AuditView | undefined> {
    this.#noteEdits(sheet, edits);
    return this.host.judge.upToDate(sheet);
  }

  /** The workbook does not tell of what we wrote ourselves. */
  #noteEdits(sheet: string, edits: readonly CellEdit[]): void {
    const rows = edits.map(({ cell }) => Number(/\d+$/.exec(cell)?.[0]) - 1);
    this.host.judge.edited({ sheet, firstRow: least(rows), lastRow: greatest(rows) });
  }
}

/** True where each of the cells holds what was written; of a step written in part, where any does. */
export function standsIn(copy: Sheet, { edits, isPart }: Pick<AppliedFix, "edits" | "isPart">): boolean {
  const holds = ({ cell, to }: CellEdit): boolean => {
    const place = parseAddress(cell);
    if (place === null) return false;
    const now = copy.cell(place.row - copy.top, place.column - copy.left);
    return String(isCellError(now) ? now.error : (now ?? "")) === String(to ?? "");
  };
  return isPart === true ? edits.some(holds) : edits.every(holds);
}

function cellList(edits: readonly CellEdit[]): string {
  return edits.length > 5 ? `${edits.length} cells` : edits.map(({ cell }) => cell).join(", ");
}
