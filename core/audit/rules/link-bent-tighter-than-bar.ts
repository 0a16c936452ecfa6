import type { BarFacts } from "../../bar/bar-facts";
import { barsAbout, isLink, type MembersWithLinks, membersWithLinks } from "../member-bars";
import { defineRule } from "../rule";

export default defineRule({
  code: "BEND108",
  name: "link-bent-tighter-than-bar",
  severity: "doubtful",
  docs: {
    summary:
      "A link's bend and the bar that it holds do not go together: the bend is tighter than the bar is thick, or the bar thinner than the link.",
    why: "A thick bar does not lie in the corner of a tight bend, and a bend round a thin bar crushes the concrete inside it. Some codes say so; the others leave it to the designer.",
    failing: [
      {
        standard: "GB50204:2015",
        rows: [
          { member: "B1", size: "25", shape: "00", A: 6000, length: 6000 },
          {
            member: "B1",
            size: "8",
            grade: "HPB300",
            shape: "hook135 450 +90 200 +90 450 +90 200 hook135",
            length: 1460,
          },
        ],
      },
    ],
    passing: [
      {
        standard: "GB50204:2015",
        rows: [
          { member: "B1", size: "16", shape: "00", A: 6000, length: 6000 },
          {
            member: "B1",
            size: "8",
            grade: "HPB300",
            shape: "hook135 450 +90 200 +90 450 +90 200 hook135",
            length: 1460,
          },
        ],
      },
    ],
  },
  messages: {
    tight:
      "bent on {former} the link holds bars of {bar} no closer than its legs: {least} is asked for; ask the designer",
    thin: "a link of {link} is bent round bars of {bar}, where bars of its own size at least are asked for: ask the designer",
  },
  checkSheet({ answers }, _context, report) {
    for (const { facts, answer } of answers.those(tightAbout, membersWithLinks(answers))) {
      report({ outcome: "unsure", row: facts, at: "size", ...answer });
    }
  },
});

/** How the link is too tight about the thickest bar of its member. */
function tightAbout(facts: BarFacts, members: MembersWithLinks) {
  const { former, diameter } = facts;
  const about = barsAbout(facts, members);
  if (about === null || former === null || diameter === null) return null;
  const bar = { mm: about.thickest };
  const aboutBar = facts.standard.detailing("former of a link about its bar", bar.mm);
  const least = (aboutBar?.value.perDiameter ?? 0) * bar.mm;
  if (aboutBar !== null && former < least - 1e-6) {
    if (!isLink(facts)) return null;
    const values = { former: { mm: former }, bar, least: { mm: least } };
    return { messageId: "tight" as const, values, cite: aboutBar.cite };
  }
  const barOfLink = facts.standard.detailing("bar that a link is bent round", bar.mm);
  if (barOfLink === null || bar.mm >= (barOfLink.value.perLink ?? 0) * diameter - 1e-6) return null;
  if (!isLink(facts)) return null;
  return { messageId: "thin" as const, values: { link: { mm: diameter }, bar }, cite: barOfLink.cite };
}
