/**
 * What `npm test` runs in the browser: the main jobs, each station once, what the page weighs, and the same bits as in
 * Node, in so much time that one waits for it. All files are `npm run test:all`, before what others get.
 */
export const everyday: readonly string[] = [
  // The brake in the browser ends in Node's bits.
  'golden',
  // What each station brings along, and what comes first.
  'load',
  // The whole job of instructor, student and do-it-yourselfer, by keys alone.
  'heard',
  // Each station by its key, clean for assistive software; on the phone too.
  'access-keys',
  'phone-answers',
  'small-stage',
  // Press and the click.
  'keys',
  'click',
  // Without a network, and in one file.
  'offline',
  'one-file',
  'words-here',
];

/** Files of Node that are left to `npm run test:all`: they take longest, and what they ask is asked of less elsewhere. */
export const atLength: readonly string[] = [
  'house/adjuster-kinds',
  'house/order',
  'unit/away/film',
  'unit/bending-life',
  'unit/more-commands',
  'unit/no-jumps',
  'unit/package/package',
  'unit/record/bending-checks',
  'unit/record/bending-stations',
  'unit/study/design',
  'unit/study/sample',
  'unit/vary-parts',
  'unit/vary-seek-job',
];
