/**
 * The floors of the house, from the ground up: a folder imports from floors below its own, never from one
 * beside it or above. The rules of .dependency-cruiser.cjs and the map in DEVELOPERS.md follow this list.
 */
const CORE = [
  ["units"],
  ["geometry", "bars"],
  ["standards"],
  ["shapes"],
  ["bending", "schedule"],
  ["shop"],
  ["own"],
  ["bar"],
  ["audit", "cutting", "estimating"],
  ["totals"],
  ["tickets"],
  ["jobs", "formulas"],
];
const ADDIN = [
  ["workbook"],
  ["xlsx", "print"],
  ["functions", "pane", "demo"],
  ["excel", "workbench", "command-line"],
];

/** What may be imported against the order, and why. */
const EXCEPT = [
  { from: "core/bars/", to: "core/standards/(citation|port)\\.ts$", why: "the shape of a bar's facts" },
];

const floors = (top, list) =>
  list.flatMap((folders, floor) => folders.map((folder) => ({ path: `${top}/${folder}`, floor })));

/** Every folder with its floor. */
const FOLDERS = { core: floors("core", CORE), addin: floors("addin", ADDIN) };

/** Pairs of folders of which the first must not import the second. */
function forbiddenPairs() {
  return Object.values(FOLDERS).flatMap((all) =>
    all.flatMap((from) =>
      all
        .filter((to) => to.path !== from.path && to.floor >= from.floor)
        .map((to) => ({ from: from.path, to: to.path })),
    ),
  );
}

/** One rule a folder, for dependency-cruiser; and one that a folder must stand in the list. */
function layerRules() {
  const pairs = forbiddenPairs();
  const all = Object.values(FOLDERS).flat();
  const rules = all.flatMap(({ path }) => {
    const to = pairs.filter((pair) => pair.from === path).map((pair) => pair.to);
    if (to.length === 0) return [];
    const excepted = EXCEPT.filter(({ from }) => from === `${path}/`).map((one) => `^${one.to}`);
    return [
      {
        name: `${path.replace("/", "-")}-below`,
        severity: "error",
        comment: `${path} stands below or beside what it imports: see the floors in .layers.cjs`,
        from: { path: `^${path}/` },
        to: { path: `^(${to.join("|")})/`, ...(excepted.length > 0 && { pathNot: excepted }) },
      },
    ];
  });
  const unknown = Object.keys(FOLDERS).map((top) => ({
    name: `${top}-folder-has-a-floor`,
    severity: "error",
    comment: "a new folder is given its place in .layers.cjs and in the map of DEVELOPERS.md",
    from: {
      path: `^${top}/(?!(${FOLDERS[top].map(({ path }) => path.slice(top.length + 1)).join("|")}|dist|webpack)/)[^/]+/`,
    },
    to: {},
  }));
  return [...rules, ...unknown];
}

module.exports = { FOLDERS, forbiddenPairs, layerRules };
