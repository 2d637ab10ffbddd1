/**
 * Who may import whom: arrows point one way, from the front door to the schema. Each rule names the folders that a folder
 * may reach; everything else of ours is forbidden. Types count as imports.
 */

/** A folder under src may reach itself and `reach`, nothing else of ours. */
const only = (folder, reach, comment) => ({
  name: `${folder}-reaches-only-its-own`,
  comment,
  severity: "error",
  from: { path: `^src/${folder}/` },
  to: { path: "^src/", pathNot: [`^src/${folder}/`, ...reach.map((path) => `^src/${path}`)] },
});

/** @type {import('dependency-cruiser').IConfiguration} */
export default {
  forbidden: [
    only("schema", [], "What crosses the disk border is the ground everybody stands on: it leans on nobody."),
    only("stats", [], "Statistics are checked against outside values on their own: they never hear of a bat."),
    only("hitting", ["schema/", "stats/"], "The sums of hitting take numbers and give numbers: no files, no pages."),
    only(
      "intake",
      ["schema/", "stats/"],
      "Intake says what was read, and never what it is worth: that is the report's.",
    ),
    only("report", ["schema/", "stats/", "hitting/"], "A report knows no language, no page and no file."),
    only(
      "charts",
      ["schema/", "report/schema\\.ts$"],
      "A chart shows a part of the report; a chart that could compute might disagree with it.",
    ),
    only("site", ["schema/", "report/schema\\.ts$", "charts/"], "Pages format what the report says, and see no rep."),
    only("seal", [], "The same sealing runs in the browser: it takes nothing along."),
    only("client", ["seal/"], "What goes into a page's script must stay small and know nothing of the season."),
    only("publish", ["schema/", "seal/"], "Publishing is handed finished files: it cannot change a figure."),
    only(
      "cli",
      ["build\\.ts$", "schema/", "publish/(stopped|lock)\\.ts$"],
      "Commands parse, call the front door and print; besides it they know how a command stops and who it is.",
    ),
    {
      name: "front-door-is-for-commands",
      comment:
        "The front door (build.ts and the rooms behind it) knows every stage; a stage that called it would close the circle.",
      severity: "error",
      from: { path: "^src/", pathNot: ["^src/cli/", "^src/preview\\.ts$", "^src/build(\\.ts$|/)"] },
      to: { path: "^src/build(\\.ts$|/)" },
    },
    {
      name: "front-door-knows-no-command",
      comment: "A build is the same whoever asks for it.",
      severity: "error",
      from: { path: "^src/build(\\.ts$|/)" },
      to: { path: "^src/cli/" },
    },
    {
      name: "no-circular",
      comment: "Files in a circle can only be read, tested and changed together.",
      severity: "error",
      from: {},
      to: { circular: true },
    },
    {
      name: "files-at-the-ends-only",
      comment:
        "Files, network and processes are touched by commands alone; every stage is handed its effects, so that a build with the same effects is the same build. The site's styles, font and languages are part of the program itself, and one file reads the first two, another lists the third.",
      severity: "error",
      from: { path: "^src/", pathNot: ["^src/cli/", "^src/site/(assets|catalogues)\\.ts$"] },
      to: { path: "^(node:)?(fs|fs/promises|child_process|net|http|https|worker_threads)$" },
    },
    {
      name: "no-test-in-source",
      comment: "What is shipped does not lean on its own tests.",
      severity: "error",
      from: { path: "^src/" },
      to: { path: "^tests/" },
    },
    {
      name: "no-unresolvable",
      comment: "An import that is not found is an import that no rule above has seen.",
      severity: "error",
      from: {},
      to: { couldNotResolve: true },
    },
    {
      name: "shipped-needs-only-dependencies",
      comment: "A build must work where only the dependencies proper are installed.",
      severity: "error",
      from: { path: "^src/" },
      to: { dependencyTypes: ["npm-dev"], dependencyTypesNot: ["type-only"], pathNot: "node_modules/@types/" },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    // Without this, imports that TypeScript erases would pass unseen.
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "node", "default", "types"],
      extensions: [".ts", ".tsx", ".mjs", ".js", ".json"],
    },
  },
};
