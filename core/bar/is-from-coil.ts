import type { BarFacts } from "./bar-facts";

const COIL =
  /\b(?:from coil|coiled|spirals?|helix|helical|helices|wendel\w*|vom ring|spirale\w*|elica|elicoidale|h[ée]lico[ïi]dal\w*|sur couronne|espiral\w*|zuncho|spiraal\w*|spir[áa]la|spiral\w*)(?![\p{L}])|スパイラル|コイル|螺旋|盘条|盤條|спирал/iu;

/** A helix, or a bar that its row says comes off a coil: no stock length and no length of straight bars bounds it. */
export function isFromCoil(facts: BarFacts): boolean {
  if (facts.pathKind === "helix" || facts.inWords(saysCoil)) return true;
  const typed = facts.typed("shape");
  return typeof typed === "string" && saysCoil(typed);
}

function saysCoil(words: string): boolean {
  return COIL.test(words);
}
