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
export function membersWithLinks({ answers, bars }: SheetFacts): readonly MemberBars[] {
  return answers.whole(placesOfLinks, linkOrBar).map(({ links, ...thick }) => ({
    ...thick,
    links: links.map((place) => bars[place] as BarFacts),
  }));
}

/** What members with links go by. */
function linkOrBar(facts: BarFacts): string {
  const { member, struckThrough } = facts.row;
  return JSON.stringify([member, struckThrough, facts.diameter, isLink(facts)]);
}

interface MemberPlaces extends Omit<MemberBars, "links"> {
  readonly links: readonly number[];
}

function placesOfLinks(all: readonly BarFacts[]): readonly MemberPlaces[] {
  const byMember = new Map<string, { places: number[]; links: number[]; mains: number[] }>();
  all.forEach((facts, place) => {
    const { diameter } = facts;
    const { member, struckThrough } = facts.row;
    if (member === null || struckThrough || diameter === null) return;
    const bars = byMember.get(member) ?? { places: [], links: [], mains: [] };
    byMember.set(member, bars);
    if (isLink(facts)) {
      bars.places.push(place);
      bars.links.push(diameter);
    } else bars.mains.push(diameter);
  });
  return [...byMember.values()].flatMap(({ places, links, mains }) => {
    if (links.length === 0 || mains.length === 0) return [];
    const ofLinks = Math.max(...links);
    const thicker = mains.filter((diameter) => diameter > ofLinks);
    const thinnest = thicker.length === 0 ? null : Math.min(...thicker);
    return [{ links: places, thinnest, thickest: Math.max(...mains) }];
  });
}

function isLink(facts: BarFacts): boolean {
  return facts.use === "link" || facts.pathKind === "circle" || saysLink(facts.row.remark);
}

function saysLink(remark: string | null): boolean {
  return remark !== null && LINK_WORDS.test(remark.toLowerCase());
}
