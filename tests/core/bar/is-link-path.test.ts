import { describe, expect, it } from "vitest";
import { isLinkPath } from "../../../core/bar/is-link-path";

describe("isLinkPath", () => {
  it("should take for a link what goes all the way round", () => {
    expect(isLinkPath("130 +90 400 +90 300 +90 400 +90 300 +90 130")).toBe(true);
    expect(isLinkPath("hook135 400 +90 300 +90 400 +90 300 hook135")).toBe(true);
    expect(isLinkPath("4.5 -90 16 -90 12.5 -90 16 -90 12.5 -90 4.5")).toBe(true);
  });

  it("should not take a bar with a way out for a link", () => {
    // a stool, a top hat and a bar with sloping turns
    expect(isLinkPath("300 +90 400 +90 300 +90 400")).toBe(false);
    expect(isLinkPath("300 +90 400 -90 300 -90 400 +90 300")).toBe(false);
    expect(isLinkPath("300 +45 400 +45 300 +45 400 +45 300")).toBe(false);
  });
});
