// @ts-check
// Import order of the simulator: a folder may import from those before it and from itself.
// `index.ts` is the door of the mechanics; the workshop stands between it and the page; `public.ts` is
// what of the mechanics others may use.
const order = [
  'units',
  'math',
  'words',
  'brake',
  'scene',
  'contact',
  'balance',
  'motion',
  'wear',
  'readings',
  'study',
  'index.ts',
  'public.ts',
  'workshop',
];
/** @param {string} place a folder, or a file that stands alone */
const at = (place) => (place.endsWith('.ts') ? `${place.replace('.', '\\.')}$` : `${place}/`);
/** @param {string[]} places */
const these = (places) => `(^|/)sim/(${places.map(at).join('|')})`;
const known = these(order);

const forbidden = order.slice(0, -1).map((place, i) => ({
  name: `sim-${place}-imports-later`,
  severity: 'error',
  from: { path: these([place]) },
  to: { path: these(order.slice(i + 1)) },
}));

// Import order of the page, by the same rule. What a station remembers, and the lists that it is made
// of, belong to the record; what the session is kept by, to the session.
const parts = '(wear-part|[^/]+/(part|wants|plan|complaints|van|lines|paper|fitting|fields))\\.ts$';
const page = [
  [
    'words',
    'ui/(adjusters|brought|cautions|click-show|decimal-comma|watch|format|formula-reader|full|glossary|language|life-(job|messages|run|worker)|vary-(book|job|messages|run|seek|seek-book|seek-job|worker)|look(ing)?-back|pace|part|reel|scenes|shown-press|slow|sound|theme|pictures|typed-formula|typed-size|units|words)\\.ts$',
  ],
  ['stage', 'ui/(stage|plot)/'],
  ['record', `ui/(record/(?!home\\.ts$)|questions/|ask/|lessons/|stations/${parts})`],
  ['session', 'ui/(session|fan-factor|life-play|lesson-hand|record/home)\\.ts$'],
  ['pieces', 'ui/(pieces|working)/'],
  ['stations', `ui/stations/(?!${parts})`],
  ['away', 'ui/away/'],
  ['app', 'ui/app/'],
  ['embed', 'ui/embed/'],
  ['main', 'ui/(main|speak(-at-once)?)\\.ts$'],
];
const pagePaths = page.map(([, path]) => `(^|/)${path}`);
/** The server, the command line, the build's own configuration: not of the page. */
const besides = '(^|/)ui/((serve|command|offline|package)/|(vite|one-file)\\.config\\.ts$)';

const pageForbidden = page.slice(0, -1).map(([place], i) => ({
  name: `ui-${place}-imports-later`,
  severity: 'error',
  from: { path: pagePaths[i] },
  to: { path: pagePaths.slice(i + 1) },
}));

module.exports = {
  forbidden: [
    ...forbidden,
    ...pageForbidden,
    {
      name: 'ui-without-a-place',
      severity: 'error',
      from: { path: '(^|/)ui/.*\\.ts$', pathNot: [...pagePaths, besides] },
      to: {},
    },
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
      // The mechanics give codes and quantities: what is said stands where somebody is spoken to. What a size and a
      // reading are called comes from the words with them; sentences do not.
      name: 'sim-mechanics-import-words',
      severity: 'error',
      from: { path: '(^|/)sim/', pathNot: '(^|/)sim/(words|scene|readings|study|workshop)/' },
      to: { path: '(^|/)sim/words/' },
    },
    {
      // The workshop gives meaning to what the mechanics tell at their door, and nothing else.
      name: 'sim-workshop-imports-past-the-door',
      severity: 'error',
      from: { path: '(^|/)sim/workshop/' },
      to: { path: '(^|/)sim/', pathNot: '(^|/)sim/(index\\.ts$|workshop/|words/en\\.ts$)' },
    },
    {
      name: 'ui-imports-past-the-door',
      severity: 'error',
      from: { path: '(^|/)ui/', pathNot: '(^|/)ui/speak(-at-once)?\\.ts$' },
      to: {
        path: '(^|/)sim/',
        pathNot: '(^|/)sim/((workshop/)?index|words/(en|section|embed))\\.ts$',
      },
    },
    {
      // The one place that loads another language than English.
      name: 'ui-speak-imports-more-than-words',
      severity: 'error',
      from: { path: '(^|/)ui/speak(-at-once)?\\.ts$' },
      to: { path: '(^|/)sim/', pathNot: '(^|/)sim/words/' },
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
      from: {
        path: '(^|/)ui/',
        pathNot: '(^|/)ui/(serve|command|package)/|(^|/)ui/(vite|one-file)\\.config\\.ts$',
      },
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
      comment:
        'Not by way of the record: each station’s part changes it, and it begins and reads with all parts. Both only when called, never while loading.',
      severity: 'error',
      from: {},
      to: {
        circular: true,
        viaOnly: { dependencyTypesNot: ['type-only'], pathNot: '^ui/record/' },
      },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    parser: 'swc',
    enhancedResolveOptions: { extensions: ['.ts', '.mjs', '.js', '.json'] },
  },
};
