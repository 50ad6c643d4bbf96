/** Control characters as their escapes: a message stays one line, and does nothing to a terminal. */
const plainly = (text: string): string =>
  text.replace(/\p{Cc}/gu, (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`);

/** A call that cannot be carried out: told in one line, or as JSON, exit code 2. */
export class UsageError extends Error {
  readonly place: string;
  readonly found: string;
  readonly allowed: string;
  constructor(place: string, found: string, allowed: string) {
    super(plainly(`${place}: found ${found}; allowed: ${allowed}`));
    this.place = plainly(place);
    this.found = plainly(found);
    this.allowed = plainly(allowed);
  }
}

export interface Arguments {
  readonly command: string;
  /** Or the words, of a command that takes some. */
  readonly scene: string;
  /** Of a command that takes several: all of them, the scene the first. */
  readonly files: readonly string[];
  readonly options: ReadonlyMap<string, string>;
  readonly flags: ReadonlySet<string>;
}

/** What a command takes: options with a value, flags without. */
export interface Takes {
  readonly options: readonly string[];
  readonly flags: readonly string[];
  /** Takes words in place of a scene: what they are, for a call without. */
  readonly words?: string;
  /** Takes several scenes or files: what they are, and how many at least. */
  readonly several?: readonly [what: string, least: number];
}

/** The word, or its beginning where it is long. */
export const quoted = (text: string): string =>
  `"${text.length > 60 ? `${text.slice(0, 60)}…` : text}"`;

const HELP = ['--help', '-h'];
const VERSION = ['--version', '-v'];

/** Splits words into command, scene, --options with a value and --flags without. */
export function parse(
  words: readonly string[],
  commands: Readonly<Record<string, Takes>>,
): Arguments {
  const [command = '', ...rest] = words;
  const options = new Map<string, string>();
  const flags = new Set<string>();
  const asked = (names: readonly string[]): boolean => words.some((word) => names.includes(word));
  if (command === '' || command === 'help' || asked(HELP)) {
    return { command: 'help', scene: '', files: [], options, flags };
  }
  if (command === 'version' || asked(VERSION)) {
    return { command: 'version', scene: '', files: [], options, flags };
  }
  const takes = Object.hasOwn(commands, command) ? commands[command] : undefined;
  if (!takes) {
    const allowed = Object.keys(commands).join(', ');
    throw new UsageError('command', quoted(command), allowed);
  }
  const plain: string[] = [];
  for (let i = 0; i < rest.length; i++) {
    const word = rest[i] as string;
    if (!word.startsWith('-')) {
      plain.push(word);
      continue;
    }
    if (!word.startsWith('--')) {
      throw new UsageError(word, 'an option of one letter', '-h, -v, or a name after two dashes');
    }
    const equals = word.indexOf('=');
    const name = word.slice(2, equals < 0 ? undefined : equals);
    const joined = equals < 0 ? undefined : word.slice(equals + 1);
    if (takes.flags.includes(name)) {
      if (joined !== undefined) {
        throw new UsageError(`--${name}`, quoted(joined), 'no value');
      }
      flags.add(name);
      continue;
    }
    if (!takes.options.includes(name)) {
      const allowed = [...takes.options, ...takes.flags].map((n) => `--${n}`).join(', ');
      throw new UsageError(`--${name}`, `an unknown option of "${command}"`, allowed);
    }
    if (options.has(name)) throw new UsageError(`--${name}`, 'twice', 'once');
    const value = joined ?? rest[++i];
    if (value === undefined || (joined === undefined && value.startsWith('--'))) {
      throw new UsageError(`--${name}`, 'no value after it', 'a value');
    }
    options.set(name, value);
  }
  if (takes.words !== undefined) {
    const said = plain.join(' ').trim();
    if (said === '') throw new UsageError('WORDS', 'nothing', takes.words);
    return { command, scene: said, files: [], options, flags };
  }
  if (takes.several) {
    const [what, least] = takes.several;
    if (plain.length < least)
      throw new UsageError('FILES', `${plain.length} of them`, `${least} or more ${what}`);
    return { command, scene: plain[0] as string, files: plain, options, flags };
  }
  const [scene = '', ...more] = plain;
  if (scene === '') {
    throw new UsageError('SCENE', 'nothing', 'a path or a name in scenes/');
  }
  if (more.length > 0) {
    throw new UsageError('after SCENE', quoted(more.join(' ')), 'options only');
  }
  return { command, scene, files: [scene], options, flags };
}

/** A size within bounds in a unit, typed with that unit, another of its kind, or none; or the default. */
export async function sizeOf(
  args: Arguments,
  name: string,
  fallback: number,
  unit: string,
  range: readonly [number, number],
): Promise<number> {
  const text = args.options.get(name);
  if (text === undefined) return fallback;
  // Per cent is no unit to the library.
  const bare = unit === '%' ? text.replace(/\s*%$/, '') : text;
  const plain = /^-?\d+(\.\d+)?$/.test(bare) ? Number(bare) : Number.NaN;
  if (plain >= range[0] && plain <= range[1]) return plain;
  if (!Number.isNaN(plain)) {
    throw new UsageError(`--${name}`, quoted(text), `${range[0]} to ${range[1]} ${unit}`);
  }
  // The unit library takes a while to load: only when there is more than a plain number.
  const { readQuantity } = await import('../units.ts');
  const result = readQuantity(text, unit, range);
  if (result.ok) return result.value;
  throw new UsageError(`--${name}`, result.found, result.allowed);
}

/** One of some words, or the default. */
export function choiceOf<T extends string>(
  args: Arguments,
  name: string,
  choices: readonly T[],
  fallback: T,
): T {
  const text = args.options.get(name);
  if (text === undefined) return fallback;
  const found = choices.find((c) => c === text);
  if (!found) {
    throw new UsageError(`--${name}`, quoted(text), choices.join(', '));
  }
  return found;
}
