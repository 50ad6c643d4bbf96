/** What slow motion has beyond finer steps: loaded when the brake moves and nobody waits for it. */
export { ClickShow } from './click-show.ts';
export { LookBack } from './look-back.ts';
export { Watch } from './watch.ts';
