/** The pane's three places, by what is done there. */
export const PLACES = ["check", "pours", "bench"] as const;

export type Place = (typeof PLACES)[number];

const KEPT_UNDER = "barwright.place";

/** The place last used on this machine. */
export function lastPlace(): Place {
  try {
    const kept = localStorage.getItem(KEPT_UNDER);
    return PLACES.find((place) => place === kept) ?? "check";
  } catch {
    // storage is closed to the page
    return "check";
  }
}

export function keepPlace(place: Place): void {
  try {
    localStorage.setItem(KEPT_UNDER, place);
  } catch {
    // then the pane opens where findings are
  }
}
