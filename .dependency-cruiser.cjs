/** The arrows of the design: an import between packages is one of these, and there are no others. */
const ALLOWED = {
  core: [],
  catalogue: [],
  garage: ['core', 'catalogue'],
  planner: ['core', 'catalogue', 'garage'],
  solver: ['core'],
};
const arrows = Object.entries(ALLOWED).map(([from, to]) => ({
  name: `arrows-${from}`,
  comment: `packages/${from} may import only ${to.length ? to.join(', ') : 'itself'}`,
  severity: 'error',
  from: { path: `^packages/${from}/src` },
  to: { path: '^(packages|apps)/', pathNot: [from, ...to].map((p) => `^packages/${p}/src`) },
}));

module.exports = {
  forbidden: [
    ...arrows,
    {
      name: 'apps-stand-alone',
      comment: 'an app imports packages, never another app',
      severity: 'error',
      from: { path: '^apps/([^/]+)/' },
      to: { path: '^apps/', pathNot: '^apps/$1/' },
    },
    {
      name: 'core-is-pure',
      comment: 'core and catalogue use no package, no Node module, no DOM',
      severity: 'error',
      from: { path: '^packages/(core|catalogue)/src' },
      to: { pathNot: '^packages/' },
    },
    {
      name: 'packages-run-in-a-browser',
      comment: 'only apps touch the machine',
      severity: 'error',
      from: { path: '^packages/[^/]+/src' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'no-circular',
      comment: 'a file that needs another is not needed by it',
      severity: 'error',
      from: {},
      // Types are gone before anything runs; only a circle of code is one.
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'no-tests-in-source',
      severity: 'error',
      from: { path: '^(packages|apps)/[^/]+/src' },
      to: { path: '/test/' },
    },
    {
      name: 'unreached',
      comment: 'neither an app, a script nor a test leads to this file',
      severity: 'error',
      from: { path: '^(apps/[^/]+/src/main\\.tsx?|apps/web/src/worker/planner-worker\\.ts|apps/web/browser/|scripts/|bench/|tests/|(packages|apps)/[^/]+/test/)' },
      to: { path: '^(packages|apps)/[^/]+/src/', pathNot: '/src/(main\\.tsx?|vite-env\\.d\\.ts|worker/planner-worker\\.ts)$', reachable: false },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '/dist/' },
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'node', 'default'] },
  },
};
