/** An `<svg>` of our own making as an element, parsed as XML so that nothing in it can run. */
export function svgElement(text: string): Element {
  return document.importNode(new DOMParser().parseFromString(text, "image/svg+xml").documentElement, true);
}
