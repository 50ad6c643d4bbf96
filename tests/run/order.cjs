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

const forbidden = order.slice(0, -1).map((folder, i) => ({
  name: `sim-${folder}-imports-later`,
  severity: 'error',
  from: { path: `(^|/)sim/${folder}/` },
  to: { path: `(^|/)sim/(${order.slice(i + 1).join('|')})/|(^|/)sim/index\\.ts$` },
}));

module.exports = {
  forbidden: [
    ...forbidden,
    {
      name: 'sim-imports-outside',
      severity: 'error',
      from: { path: '(^|/)sim/' },
      to: { path: '^(ui|tests)/' },
    },
    {
      name: 'sim-imports-node',
      severity: 'error',
      from: { path: '(^|/)sim/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'ui-imports-past-the-door',
      severity: 'error',
      from: { path: '(^|/)ui/' },
      to: { path: '(^|/)sim/', pathNot: '(^|/)sim/index\\.ts$' },
    },
    {
      name: 'only-pixi-files-import-pixi',
      severity: 'error',
      from: { path: '(^|/)ui/', pathNot: '(^|/)ui/[^/]+/pixi[^/]*\\.ts$' },
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
    exclude: { path: 'node_modules/(?!pixi)' },
    tsPreCompilationDeps: true,
    parser: 'swc',
    enhancedResolveOptions: { extensions: ['.ts', '.mjs', '.js', '.json'] },
  },
};
