import { type Arguments, quoted, UsageError } from './args.ts';
import { fileText } from './load.ts';
import type { Say } from './print.ts';
import type { Head, ToldPoint } from './vary-plan.ts';
import { tellCurves } from './vary-told.ts';

/** One machine's share of a `vary`, as `--part` writes it. */
export interface Part {
  readonly command: 'vary part';
  readonly part: number;
  readonly parts: number;
  /** All that was asked, in one text: parts of different questions do not go together. */
  readonly asked: string;
  readonly head: Head;
  /** Units of the whole; this part has every `parts`-th. */
  readonly units: number;
  readonly done: readonly {
    readonly unit: number;
    readonly curve: number;
    readonly points: readonly ToldPoint[];
  }[];
}

/** A part file, as far as it must be one to be gathered. @throws UsageError */
function partOf(file: string): Part {
  const no = (found: string) =>
    new UsageError(file, found, 'what "vary --part K/N" wrote, whole and unchanged');
  const text = fileText(file);
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    throw no('no JSON');
  }
  if (typeof data !== 'object' || data === null) throw no('no object');
  const p = data as Partial<Part>;
  if (p.command !== 'vary part') throw no(quoted(String(p.command)));
  if (!Number.isInteger(p.part) || !Number.isInteger(p.parts) || !Number.isInteger(p.units))
    throw no('no numbers of parts');
  if (typeof p.asked !== 'string' || !Array.isArray(p.done) || !p.head) throw no('no points');
  return p as Part;
}

/** `gather`: parts of one question put together, told as the single run would. */
export function gather(args: Arguments, say: Say): number {
  const parts = args.files.map((file) => ({ file, part: partOf(file) }));
  const first = parts[0]?.part as Part;
  const seen = new Set<number>();
  for (const { file, part } of parts) {
    if (part.asked !== first.asked || part.parts !== first.parts)
      throw new UsageError(file, 'a part of another question', 'parts of one');
    if (seen.has(part.part)) throw new UsageError(file, `part ${part.part} again`, 'each once');
    seen.add(part.part);
  }
  const missing = Array.from({ length: first.parts }, (_, k) => k + 1).filter((k) => !seen.has(k));
  if (missing.length > 0)
    throw new UsageError('FILES', `no part ${missing.join(', ')}`, `all ${first.parts} parts`);
  const done = parts.flatMap(({ part }) => part.done).sort((a, b) => a.unit - b.unit);
  if (done.length !== first.units || done.some((d, k) => d.unit !== k))
    throw new UsageError('FILES', `${done.length} pieces`, `the ${first.units} of the whole`);
  const curves = first.head.values.map((_, k) =>
    done.filter((d) => d.curve === k).flatMap((d) => d.points),
  );
  const { flags } = args;
  tellCurves(
    first.head,
    curves,
    flags.has('json') ? 'json' : flags.has('csv') ? 'csv' : 'text',
    say,
  );
  return 0;
}
