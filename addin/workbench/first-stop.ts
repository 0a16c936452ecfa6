/** The first place inside an element's own tree that Tab stops at; null where there is none. */
export function firstStop(host: Element): HTMLElement | null {
  const all = (host.shadowRoot ?? host).querySelectorAll<HTMLElement>("*");
  for (const element of all) {
    const isStop = element.tabIndex >= 0 && !element.matches(":disabled, [disabled]");
    if (isStop && element.checkVisibility()) return element;
  }
  return null;
}
