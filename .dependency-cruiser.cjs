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
      name: 'core-is-pure',
      comment: 'core and catalogue use no package, no Node module, no DOM',
      severity: 'error',
      from: { path: '^packages/(core|catalogue)/src' },
      to: { dependencyTypes: ['core', 'npm', 'npm-dev', 'npm-optional', 'npm-peer', 'npm-unknown', 'unknown'] },
    },
    {
      name: 'packages-run-in-a-browser',
      comment: 'only apps touch the machine',
      severity: 'error',
      from: { path: '^packages/[^/]+/src' },
      to: { dependencyTypes: ['core'] },
    },
    { name: 'no-circular', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'no-tests-in-source',
      severity: 'error',
      from: { path: '^(packages|apps)/[^/]+/src' },
      to: { path: '/test/' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'node', 'default'] },
  },
};
