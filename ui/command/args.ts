/** A fault in what was typed: told in one line, exit code 2. */
export class UsageError extends Error {}

export interface Arguments {
  readonly command: string;
  readonly scene: string;
  readonly options: ReadonlyMap<string, string>;
  readonly flags: ReadonlySet<string>;
}

const FLAGS = ['json', 'help', 'flexible'];

/** Splits words into command, scene, --options with a value and --flags without. */
export function parse(
  words: readonly string[],
  known: Readonly<Record<string, readonly string[]>>,
): Arguments {
  const plain: string[] = [];
  const options = new Map<string, string>();
  const flags = new Set<string>();
  for (let i = 0; i < words.length; i++) {
    const word = words[i] as string;
    if (!word.startsWith('--')) {
      plain.push(word);
      continue;
    }
    const [name = '', joined] = word.slice(2).split('=', 2);
    if (FLAGS.includes(name)) {
      flags.add(name);
      continue;
    }
    const value = joined ?? words[++i];
    if (value === undefined || value.startsWith('--')) {
      throw new UsageError(`--${name}: found no value after it`);
    }
    options.set(name, value);
  }
  const [command = '', scene = '', ...more] = plain;
  if (flags.has('help') || command === '') return { command: 'help', scene, options, flags };
  const allowed = known[command];
  if (!allowed) {
    throw new UsageError(`command: found "${command}"; allowed: ${Object.keys(known).join(', ')}`);
  }
  if (scene === '')
    throw new UsageError('SCENE: found nothing; allowed: a path or a name in scenes/');
  if (more.length > 0)
    throw new UsageError(`after SCENE: found "${more.join(' ')}"; allowed: options only`);
  for (const name of options.keys()) {
    if (!allowed.includes(name)) {
      throw new UsageError(
        `--${name}: found an unknown option of "${command}"; allowed: ${allowed.map((n) => `--${n}`).join(', ') || 'none'}`,
      );
    }
  }
  return { command, scene, options, flags };
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
  const plain = /^-?\d+(\.\d+)?$/.test(text) ? Number(text) : Number.NaN;
  if (plain >= range[0] && plain <= range[1]) return plain;
  // The unit library takes a while to load: only when there is more than a plain number.
  const { readQuantity } = await import('../units.ts');
  const result = readQuantity(text, unit, range);
  if (result.ok) return result.value;
  throw new UsageError(`--${name}: found ${result.found}; allowed: ${result.allowed}`);
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
  if (!found) throw new UsageError(`--${name}: found "${text}"; allowed: ${choices.join(', ')}`);
  return found;
}
