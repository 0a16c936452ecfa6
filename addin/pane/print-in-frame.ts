import type { PrintedPage } from "./engine/printed-page";

/** Prints a page of our own from a frame that nobody sees; nothing in it can run. */
export function printInFrame({ title, html }: Pick<PrintedPage, "title" | "html">): void {
  document.querySelector("iframe.printed-page")?.remove();
  const frame = document.createElement("iframe");
  frame.className = "printed-page";
  frame.title = title;
  frame.setAttribute("aria-hidden", "true");
  frame.tabIndex = -1;
  frame.style.cssText = "position: fixed; width: 0; height: 0; border: 0; visibility: hidden";
  frame.srcdoc = html;
  frame.addEventListener("load", () => frame.contentWindow?.print());
  document.body.append(frame);
}
