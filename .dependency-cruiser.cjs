/** The arrows of the house: who may stand on whom. */
const standsOn = (name, allowed) => ({
  name: `${name}-stands-only-on-${allowed.length > 0 ? allowed.join("-") : "nothing"}`,
  severity: "error",
  from: { path: `^packages/${name}/src`, pathNot: "\\.test\\.ts$|/testing/" },
  to: { path: "^packages/", pathNot: [name, ...allowed].map((one) => `^packages/${one}/`).join("|") },
});

module.exports = {
  forbidden: [
    standsOn("quantities", []),
    standsOn("water", ["quantities"]),
    standsOn("reverse-osmosis", ["quantities", "water"]),
    standsOn("kitchen", ["quantities", "water", "reverse-osmosis"]),
    standsOn("records", ["quantities"]),
    standsOn("assessment", ["quantities", "water", "reverse-osmosis", "records"]),
    standsOn("diagnosis", ["quantities", "water", "reverse-osmosis", "records"]),
    standsOn("pictures", ["quantities"]),
    standsOn("words", ["quantities", "records", "assessment", "diagnosis"]),
    standsOn("procedures", ["quantities", "water", "records"]),
    standsOn("book", ["quantities", "records", "assessment", "kitchen"]),
    standsOn("report", [
      "quantities",
      "records",
      "assessment",
      "pictures",
      "words",
      "book",
      "procedures",
      "kitchen",
    ]),
    {
      name: "packages-are-platform-free",
      severity: "error",
      from: { path: "^packages/[^/]+/src", pathNot: "\\.test\\.ts$|test-support" },
      to: { dependencyTypes: ["core"] },
    },
    {
      name: "nothing-reaches-into-another-internal",
      severity: "error",
      from: { path: "^(packages|apps)/([^/]+)/" },
      to: { path: "^packages/[^/]+/src/internal/", pathNot: "^packages/$2/" },
    },
    {
      name: "packages-never-use-apps",
      severity: "error",
      from: { path: "^packages/" },
      to: { path: "^apps/" },
    },
    {
      name: "no-circles",
      severity: "error",
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ["type-only"] } },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    exclude: { path: "/dist/" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
  },
};
