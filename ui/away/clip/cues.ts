import { played } from './click-wave.ts';
import type { Cue, Sound } from './picture.ts';

/** What is said in a film, as captions (WebVTT) and as a plain transcript; its clicks are told too. */

/**
 * A caption stands at least so long, s, and so many letters of it are read a second: common practice of
 * subtitles is 15 to 20 letters a second and nothing under a second or two.
 */
export const LEAST = 1.5;
const LETTERS = 17;
/** How long a caption has to stand to be read, s. */
export const readable = (text: string): number => Math.max(LEAST, text.length / LETTERS);

const two = (n: number): string => String(n).padStart(2, '0');

/** 00:01:02.345, as WebVTT has it: W3C, WebVTT, 4.2. */
export function vttTime(seconds: number): string {
  const ms = Math.round(seconds * 1000);
  const s = Math.floor(ms / 1000);
  const rest = String(ms % 1000).padStart(3, '0');
  return `${two(Math.floor(s / 3600))}:${two(Math.floor(s / 60) % 60)}:${two(s % 60)}.${rest}`;
}

/** What a caption may not have as it is, and no empty line, which would end it. */
const safe = (text: string): string =>
  text
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/\s*\n+\s*/g, ' ');

/** What is said and heard, in the order of its beginning. */
const all = (cues: readonly Cue[], sounds: readonly Sound[], seconds: number): readonly Cue[] =>
  [
    ...cues,
    // One that comes while another's stands says the same: it goes on from there.
    ...played(sounds).map(({ at }, i, heard) => ({
      from: at,
      to: Math.min(seconds, at + LEAST, heard[i + 1]?.at ?? seconds),
      text: '[click]',
    })),
  ].sort((a, b) => a.from - b.from);

export const vttOf = (cues: readonly Cue[], sounds: readonly Sound[], seconds: number): string =>
  [
    'WEBVTT',
    ...all(cues, sounds, seconds).map(
      ({ from, text, to }) => `${vttTime(from)} --> ${vttTime(to)}\n${safe(text)}`,
    ),
    '',
  ].join('\n\n');

/** @param head its first lines: title, brake, where it can be made again */
export const transcriptOf = (
  head: readonly string[],
  cues: readonly Cue[],
  sounds: readonly Sound[],
  seconds: number,
): string =>
  `${[
    ...head,
    '',
    ...all(cues, sounds, seconds).map(({ from, text }) => `${vttTime(from).slice(3, 10)}  ${text}`),
  ].join('\n')}\n`;
