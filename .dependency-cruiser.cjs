/** Layer rules; each says why. */
const area = (name) => `^core/${name}/`;
const notFrom = (name, from, to, comment) => ({
  name,
  severity: "error",
  comment,
  from: { path: from },
  to: { path: to },
});

module.exports = {
  forbidden: [
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
      to: { pathNot: ["^core/", "node_modules/(zod|decimal\\.js)/"] },
    },
    {
      name: "data-imports-types-only",
      severity: "error",
      comment: "a data file is a printed page: rows and a citation, no behaviour",
      from: { path: "^core/.*\\.data\\.ts$" },
      to: { dependencyTypesNot: ["type-only"] },
    },
    notFrom("units-stand-alone", area("units"), "^core/(?!units/)", "units are the ground floor"),
    notFrom(
      "geometry-is-plain-maths",
      area("geometry"),
      "^core/(?!units/|geometry/)",
      "geometry knows no bars",
    ),
    notFrom(
      "bars-know-units-only",
      area("bars"),
      "^core/(?!units/|bars/|standards/(citation|port))",
      "sizes are facts, not rules",
    ),
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
      "standards-below-shapes",
      area("standards"),
      "^core/(shapes|bending|schedule|audit|totals|cutting|formulas)/",
      "a standard answers questions and knows nobody who asks",
    ),
    notFrom(
      "standards-through-the-port",
      "^core/(?!standards/)",
      "^core/standards/[a-z0-9-]+/",
      "the rest of core asks a standard through its port",
    ),
    notFrom(
      "shapes-below-schedule",
      area("shapes"),
      "^core/(bending|schedule|audit|totals|cutting|formulas)/",
      "a shape does not know the sheet it is written in",
    ),
    notFrom(
      "bending-and-schedule-apart",
      area("bending"),
      "^core/(schedule|audit|totals|cutting|formulas)/",
      "the machine's part must run without a sheet",
    ),
    notFrom(
      "schedule-below-audit",
      area("schedule"),
      "^core/(audit|totals|cutting|formulas)/",
      "reading is one step, judging another",
    ),
    notFrom(
      "audit-totals-cutting-apart",
      "^core/(audit|totals|cutting)/",
      "^core/formulas/",
      "formulas are a surface of core, not a part of it",
    ),
    notFrom(
      "functions-know-no-pane",
      "^addin/functions/",
      "^addin/(pane|excel|workbench|command-line)/",
      "a worksheet function must run where no pane is open",
    ),
    notFrom(
      "pane-knows-a-port",
      "^addin/pane/",
      "^addin/(excel|workbench|command-line|functions)/",
      "the pane never learns which grid it stands beside",
    ),
    notFrom(
      "xlsx-knows-no-bar",
      "^addin/xlsx/",
      "^(core/(?!schedule/(sheet|cell-address)\\.ts)|addin/(?!xlsx/|workbook/))",
      "the codec reads and writes files of any content",
    ),
    notFrom(
      "workbook-is-words",
      "^addin/workbook/",
      "^addin/(?!workbook/)",
      "what is said about a workbook holds for a file, a grid and Excel alike",
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
