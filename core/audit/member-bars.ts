import type { AnswersOfBars } from "../bar/answers-of-bars";
import type { BarFacts } from "../bar/bar-facts";
import type { OfKind } from "../bar/bar-kind";
import { compiledShape } from "../shapes/compiled-shape";
import { greatest, least } from "../units/extremes";
import { Memo } from "../units/memo";

/** The bars that the links of one member may hold. */
export interface MemberBars {
  /** mm: of the thinnest bar that is thicker than every link, since thin ties are not told from links; null for none */
  readonly thinnest: number | null;
  /** mm: of the thickest bar that is no link */
  readonly thickest: number;
}

export type MembersWithLinks = ReadonlyMap<string, MemberBars>;

const LINK_WORDS =
  /\b(?:links?|stirrups?|ties?|ligatures?|fitments?|hoops?|cadres?|estribos?|b[üu]e?gel|etriye\w*|strzemi\w*|staffe|sengkang)(?![\p{L}])|箍筋|帯筋|あばら筋|хомут/u;

/**
 * Members of a sheet that hold both links and other bars with their size read. A bar is a link by its shape or
 * by the words of its row; what a bar of a row that names no member belongs to is not known.
 */
export function membersWithLinks(answers: AnswersOfBars): MembersWithLinks {
  return answers.whole(findMembers, linkOrBar);
}

/** The bars of the member that a link is of; null for what is no link of a member with other bars. */
export function barsAbout({ row, diameter }: BarFacts, members: MembersWithLinks): MemberBars | null {
  if (row.member === null || row.struckThrough || diameter === null) return null;
  return members.get(row.member) ?? null;
}

/** What members with links go by. */
function linkOrBar(facts: BarFacts): string {
  const { member, struckThrough } = facts.row;
  return JSON.stringify([member, struckThrough, facts.diameter, isLink(facts)]);
}

function findMembers(all: readonly BarFacts[]): MembersWithLinks {
  const byMember = new Map<string, { links: number[]; mains: number[] }>();
  for (const facts of all) {
    const { diameter } = facts;
    const { member, struckThrough } = facts.row;
    if (member === null || struckThrough || diameter === null) continue;
    let bars = byMember.get(member);
    if (bars === undefined) {
      bars = { links: [], mains: [] };
      byMember.set(member, bars);
    }
    (isLink(facts) ? bars.links : bars.mains).push(diameter);
  }
  const members = new Map<string, MemberBars>();
  for (const [member, { links, mains }] of byMember) {
    if (links.length === 0 || mains.length === 0) continue;
    const ofLinks = greatest(links);
    const thicker = mains.filter((diameter) => diameter > ofLinks);
    const thinnest = thicker.length === 0 ? null : least(thicker);
    members.set(member, { thinnest, thickest: greatest(mains) });
  }
  return members;
}

/** True of a bar that is a link by its shape or by the words of its row. */
export function isLink(facts: BarFacts): boolean {
  if (facts.use === "link" || saysLink(facts.row.remark)) return true;
  return facts.kind.ask(mayBeCircle, facts) && facts.pathKind === "circle";
}

/** The path of most codes is known to be none without being laid. */
function mayBeCircle({ definition }: OfKind): boolean {
  const template = definition === null ? null : compiledShape(definition).template;
  return template == null || template.kind === "circle";
}

const linkSaid = new Memo<string, boolean>();

/** True where words name a link. */
export function saysLink(remark: string | null): boolean {
  return remark !== null && linkSaid.of(remark, () => LINK_WORDS.test(remark.toLowerCase()));
}
