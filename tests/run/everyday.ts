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
  // Each station by its key, clean for assistive software.
  'access-keys',
  'phone-answers',
  // Press, wear on, the click, the drum, the slope.
  'keys',
  'space-key',
  'click',
  'wear',
  'park',
  // What is set stays, and goes back.
  'record-life',
  'offline',
  'one-file',
  'words-here',
];

/** Files of Node that are left to `npm run test:all`: what else is tested beside them, at greater length. */
export const atLength: readonly string[] = [];
