// @ts-check
// Import order of the simulator: a folder may import from those before it and from itself.
const order = [
  'units',
  'math',
  'brake',
  'scene',
  'contact',
  'balance',
  'motion',
  'wear',
  'readings',
  'study',
];
/** @param {string[]} folders */
const these = (folders) =>
  `(^|/)sim/(${[...folders.map((folder) => `${folder}/`), 'index\\.ts$'].join('|')})`;
const known = these(order);

const forbidden = order.map((folder, i) => ({
  name: `sim-${folder}-imports-later`,
  severity: 'error',
  from: { path: `(^|/)sim/${folder}/` },
  to: { path: these(order.slice(i + 1)) },
}));

module.exports = {
  forbidden: [
    ...forbidden,
    {
      // A file or folder that has no place in the order would escape every rule above.
      name: 'sim-without-a-place',
      severity: 'error',
      from: {},
      to: { path: '(^|/)sim/', pathNot: known },
    },
    {
      name: 'sim-without-a-place-imports',
      severity: 'error',
      from: { path: '(^|/)sim/', pathNot: known },
      to: {},
    },
    {
      name: 'sim-imports-outside',
      severity: 'error',
      from: { path: '(^|/)sim/' },
      to: { path: '^(ui|tests|scenes)/' },
    },
    {
      name: 'sim-imports-node',
      severity: 'error',
      from: { path: '(^|/)sim/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      // The engine belongs to Motion, the schema library to scene files: neither may spread.
      name: 'sim-imports-a-package',
      severity: 'error',
      from: { path: '(^|/)sim/', pathNot: '(^|/)sim/(motion|scene)/' },
      to: { path: 'node_modules/' },
    },
    {
      name: 'sim-scene-imports-a-package',
      severity: 'error',
      from: { path: '(^|/)sim/scene/' },
      to: { path: 'node_modules/', pathNot: 'node_modules/valibot/' },
    },
    {
      name: 'sim-motion-imports-a-package',
      severity: 'error',
      from: { path: '(^|/)sim/motion/' },
      to: { path: 'node_modules/', pathNot: 'node_modules/planck-js/' },
    },
    {
      name: 'ui-imports-past-the-door',
      severity: 'error',
      from: { path: '(^|/)ui/' },
      to: { path: '(^|/)sim/', pathNot: '(^|/)sim/index\\.ts$' },
    },
    {
      name: 'ui-imports-tests',
      severity: 'error',
      from: { path: '(^|/)ui/' },
      to: { path: '^tests/' },
    },
    {
      // What Node runs: the server, the command line, the build's own configuration.
      name: 'page-imports-node',
      severity: 'error',
      from: { path: '(^|/)ui/', pathNot: '(^|/)ui/(serve|command)/|(^|/)ui/vite\\.config\\.ts$' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'only-pixi-files-import-pixi',
      severity: 'error',
      from: { path: '(^|/)ui/', pathNot: '/pixi[^/]*\\.ts$' },
      to: { path: 'node_modules/pixi\\.js' },
    },
    {
      name: 'no-cycles',
      severity: 'error',
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    parser: 'swc',
    enhancedResolveOptions: { extensions: ['.ts', '.mjs', '.js', '.json'] },
  },
};
