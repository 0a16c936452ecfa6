import type { BarFacts } from "../bar/bar-facts";
import type { SheetFacts } from "../bar/sheet-facts";

/** The links of one member, and the bars that they may hold. */
export interface MemberBars {
  readonly links: readonly BarFacts[];
  /** mm: of the thinnest bar that is thicker than every link, since thin ties are not told from links; null for none */
  readonly thinnest: number | null;
  /** mm: of the thickest bar that is no link */
  readonly thickest: number;
}

const LINK_WORDS =
  /\b(?:links?|stirrups?|ties?|ligatures?|fitments?|hoops?|cadres?|estribos?|b[üu]e?gel|etriye\w*|strzemi\w*|staffe|sengkang)(?![\p{L}])|箍筋|帯筋|あばら筋|хомут/u;

/**
 * Members of a sheet that hold both links and other bars with their size read. A bar is a link by its shape or
 * by the words of its row; what a bar of a row that names no member belongs to is not known.
 */
export function membersWithLinks(sheet: SheetFacts): readonly MemberBars[] {
  const byMember = new Map<string, { links: BarFacts[]; mains: BarFacts[] }>();
  for (const facts of sheet.bars) {
    const { member, struckThrough } = facts.row;
    if (member === null || struckThrough || facts.diameter === null) continue;
    const bars = byMember.get(member) ?? { links: [], mains: [] };
    byMember.set(member, bars);
    (isLink(facts) ? bars.links : bars.mains).push(facts);
  }
  return [...byMember.values()].flatMap(({ links, mains }) => {
    if (links.length === 0 || mains.length === 0) return [];
    const diameters = mains.map(({ diameter }) => diameter as number);
    const ofLinks = Math.max(...links.map(({ diameter }) => diameter as number));
    const thicker = diameters.filter((diameter) => diameter > ofLinks);
    const thinnest = thicker.length === 0 ? null : Math.min(...thicker);
    return [{ links, thinnest, thickest: Math.max(...diameters) }];
  });
}

function isLink(facts: BarFacts): boolean {
  return facts.use === "link" || facts.pathKind === "circle" || saysLink(facts.row.remark);
}

function saysLink(remark: string | null): boolean {
  return remark !== null && LINK_WORDS.test(remark.toLowerCase());
}
