/** Layer rules; each says why. The order of the folders is in .layers.cjs. */
const { layerRules } = require("./.layers.cjs");

const notFrom = (name, from, to, comment) => ({
  name,
  severity: "error",
  comment,
  from: { path: from },
  to: { path: to },
});

module.exports = {
  forbidden: [
    ...layerRules(),
    {
      name: "no-cycles",
      severity: "error",
      comment: "a cycle has no first thing to read",
      from: {},
      to: { circular: true },
    },
    {
      name: "core-is-pure",
      severity: "error",
      comment: "core runs in Excel, a browser and Node alike, so it may know none of them",
      from: { path: "^core/" },
      to: { pathNot: ["^core/", "node_modules/(zod|decimal\\.js|fastest-levenshtein)/"] },
    },
    {
      name: "data-imports-types-only",
      severity: "error",
      comment: "a data file is a printed page: rows and a citation, no behaviour",
      from: { path: "^core/.*\\.data\\.ts$" },
      to: { dependencyTypesNot: ["type-only"] },
    },
    {
      name: "one-standard-does-not-read-another",
      severity: "error",
      comment: "an edition must be replaceable without touching the others",
      from: { path: "^core/standards/([a-z0-9-]+)/" },
      to: {
        path: "^core/standards/[a-z0-9-]+/",
        pathNot: ["^core/standards/$1/", "^core/standards/shared/"],
      },
    },
    notFrom(
      "standards-through-the-port",
      "^core/(?!standards/)",
      "^core/standards/[a-z0-9-]+/",
      "the rest of core asks a standard through its port",
    ),
    notFrom(
      "xlsx-knows-no-bar",
      "^addin/xlsx/",
      "^(core/(?!units/(encode-xml|memory-of-threads)\\.ts|schedule/(sheet|cell-address)\\.ts)|addin/(?!xlsx/|workbook/))",
      "the codec reads and writes files of any content",
    ),
    notFrom(
      "nothing-imports-tests",
      "^(core|addin|manifest)/",
      "^tests/",
      "the product does not carry its tests",
    ),
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    exclude: { path: "addin/dist" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    enhancedResolveOptions: { extensions: [".ts", ".mjs", ".js", ".json"] },
  },
};
