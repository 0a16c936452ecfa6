/** How one series of a chart is painted, RRGGBB: its bars, the line about them, the words on them. */
export interface SeriesLook {
  readonly fill: string;
  readonly line: string;
  readonly words: string;
}

/** Eight fills that carry white words, each with a contrast of 4.5 or more to them and to a white page. */
export const SERIES_COLOURS: readonly string[] = [
  "1f5f99",
  "8a4b00",
  "2b6e3f",
  "7a3b8f",
  "9c2f4a",
  "3f5560",
  "6b5b00",
  "00696b",
];

/** Eight fills that carry dark words; on a white page a dark line about them keeps them apart from it. */
export const LIGHT_SERIES_COLOURS: readonly string[] = [
  "8cc4f5",
  "ffb173",
  "8fd6a4",
  "d9a8ec",
  "ffa3b5",
  "b7c9d2",
  "e6d35f",
  "7fdadb",
];

/** Words on the light fills. */
export const ON_LIGHT_SERIES = "1c1c1c";

/** Look of the series of that number on a white page: sixteen differ, the dark ones first. */
export function seriesLook(series: number): SeriesLook {
  const count = SERIES_COLOURS.length;
  const place = series % count;
  return Math.floor(series / count) % 2 === 0
    ? { fill: SERIES_COLOURS[place]!, line: "ffffff", words: "ffffff" }
    : { fill: LIGHT_SERIES_COLOURS[place]!, line: "404040", words: ON_LIGHT_SERIES };
}
