import { readFileSync } from 'node:fs';
import { parse, type Takes, UsageError } from './args.ts';
import { usage } from './help.ts';
import { asJson } from './json.ts';
import type { Say } from './print.ts';

/** What state the brake is in. */
const STATE = [
  'state',
  'wheel',
  'km',
  'temperature',
  'lever-off-stop',
  'surface',
  'stuck',
  'cup-friction',
  'springs',
  'kept-pressure',
  'groove',
  'oval',
  'off-centre',
] as const;

/** How it is pressed. */
const PRESS = ['pressure', 'drum', 'speed', 'cable', 'slope', ...STATE] as const;

const COMMANDS: Readonly<Record<string, Takes>> = {
  press: {
    options: PRESS,
    flags: ['flexible', 'json'],
  },
  stop: {
    options: ['speed', 'pressure', 'pedal', 'deceleration', 'failed', 'drum', ...STATE],
    flags: ['flexible', 'json'],
  },
  pedal: { options: ['pressure', 'failed', 'drum', ...STATE], flags: ['flexible', 'json'] },
  park: { options: ['cable', 'slope', ...STATE], flags: ['flexible', 'json'] },
  compare: {
    options: [...PRESS, 'read'],
    flags: ['flexible', 'json', 'csv'],
    several: ['scenes', 2],
  },
  off: { options: ['aside', ...STATE], flags: ['hub-rust', 'linings-rusted', 'flexible', 'json'] },
  fit: {
    options: ['thickness', 'ground', 'bore', 'wheel'],
    flags: ['flexible', 'json'],
  },
  figure: {
    options: [...PRESS, 'width', 'height', 'colours', 'layers'],
    flags: ['flexible', 'json'],
  },
  seek: {
    options: ['free', 'wish', 'pressure', 'cable', 'drum', ...STATE],
    flags: ['flexible', 'json'],
  },
  gather: { options: [], flags: ['json', 'csv'], several: ['files that vary --part wrote', 1] },
  vary: {
    options: [
      'of',
      'from',
      'to',
      'points',
      'and',
      'values',
      'read',
      'pressure',
      'cable',
      'drum',
      'jobs',
      'part',
      ...STATE,
    ],
    flags: ['flexible', 'json', 'csv', 'list', 'steps'],
  },
  wear: { options: ['km', 'wheel'], flags: ['flexible', 'json'] },
  life: {
    options: ['km', 'wheel', 'duty', 'reverse', 'adjuster', 'hot-lock', 'driven-by'],
    flags: ['flexible', 'json', 'one-by-one', 'past-limits', 'seized'],
  },
  check: { options: [], flags: ['json'] },
  ask: { options: [], flags: ['json'], words: 'what you would say of your brake' },
};

/** Of the package. */
function versionOf(): string {
  const text = readFileSync(new URL('../../package.json', import.meta.url), 'utf8');
  return (JSON.parse(text) as { readonly version: string }).version;
}

/**
 * Does what was typed; gives the exit code.
 *
 * @param say takes what is told, line by line; with --json faults too, so that a script reads one place
 * @param complain takes why a call cannot be carried out, in one line
 */
export async function main(words: readonly string[], say: Say, complain: Say): Promise<number> {
  try {
    const args = parse(words, COMMANDS);
    if (args.command === 'help') {
      say(usage);
      return 0;
    }
    if (args.command === 'version') {
      say(versionOf());
      return 0;
    }
    if (args.command === 'ask') {
      const { tell } = await import('./ask.ts');
      return tell(args, say);
    }
    // The simulator takes a while to load: not for a slip of the keyboard.
    const { run } = await import('./run.ts');
    return await run(args, say, complain);
  } catch (error) {
    if (!(error instanceof UsageError)) throw error;
    const { place, found, allowed } = error;
    if (words.includes('--json')) say(asJson({ error: { place, found, allowed } }));
    else complain(`${error.message}\nSee: npm run -s takeup -- --help`);
    return 2;
  }
}
