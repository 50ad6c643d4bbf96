import { nearest } from '../../sim/index.ts';
import { type Arguments, quoted, UsageError } from './args.ts';

/** The keys that --read asks for; the nearest is told of one that is none. */
export function keysOf(
  args: Arguments,
  known: readonly string[],
  usual: readonly string[],
): readonly string[] {
  const text = args.options.get('read');
  if (text === undefined) return usual;
  const asked = text.split(',').map((k) => k.trim());
  for (const key of asked) {
    if (known.includes(key)) continue;
    const near = nearest(key, known);
    const one = args.command === 'vary' ? 'one of --list' : 'a key of press --json';
    throw new UsageError('--read', quoted(key), near ? `${near}, or another: ${one}` : one);
  }
  return asked;
}
