// Which room may import which. One table; the rules below are made from it.
const core = {
  units: [],
  numerics: [],
  words: ["units"],
  air: ["units", "numerics", "words"],
  fuel: ["units", "numerics", "words"],
  parts: ["units", "numerics", "words"],
  metering: ["units", "numerics", "words", "air", "fuel", "parts"],
  belief: ["units", "numerics", "words"],
  advice: ["units", "numerics", "words", "air", "fuel", "parts", "metering", "belief", "baseline"],
  baseline: ["units", "numerics", "words", "air", "fuel", "parts", "metering"],
  sound: ["units", "numerics", "words"],
};
const packages = {
  core: [],
  records: ["core"],
  cli: ["core", "records", "server"],
  app: ["core", "records"],
  // Development only: measures the rest, and nothing imports it.
  proving: ["core", "records"],
  server: ["core", "records"],
  // Made sounds with a known truth: for tests and measurement only.
  "sound-lab": ["core"],
};

const test = "[.]test[.]ts$";
const folder = (name) => `^packages/core/src/${name}/`;

const forbidden = [
  {
    name: "no-cycles",
    severity: "error",
    comment: "files may not import one another in a circle",
    from: {},
    to: { circular: true },
  },
  {
    name: "resolves",
    severity: "error",
    comment: "every import must resolve",
    from: {},
    // What the bundler makes has no file.
    to: { couldNotResolve: true, pathNot: "^virtual:" },
  },
];
for (const [name, allowed] of Object.entries(core)) {
  const inside = [name, ...allowed].map(folder).join("|");
  forbidden.push({
    name: `core/${name}`,
    severity: "error",
    comment: `core/${name} may import: ${allowed.join(", ") || "nothing"}`,
    from: { path: folder(name), pathNot: test },
    to: { path: "^packages/|^node_modules/", pathNot: inside },
  });
}
for (const [name, allowed] of Object.entries(packages)) {
  const door = allowed.map(
    (other) => `^packages/${other}/src/(index|words/(en|de|es)(/(starting|refusals|flaws))?)[.]ts$`,
  );
  const inside = [`^packages/${name}/`, ...door].join("|");
  forbidden.push({
    name: `package ${name}`,
    severity: "error",
    comment: `packages/${name} may import: ${allowed.map((other) => `@jetwright/${other} (its doors only)`).join(", ") || "no other package"}`,
    from: { path: `^packages/${name}/`, pathNot: test },
    to: { path: "^packages/", pathNot: inside },
  });
}

module.exports = {
  forbidden,
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    doNotFollow: { path: "node_modules" },
    exclude: { path: "[.]stryker-tmp|coverage|test-results|^dist/" },
    enhancedResolveOptions: { exportsFields: ["exports"], conditionNames: ["import", "default"] },
  },
};
