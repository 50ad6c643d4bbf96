import { linkOf } from '../../ui/record/link.ts';
import { offered } from '../record-moments.ts';
import type { Goal } from './timing.ts';

/** Longest link of what the page itself offers, letters. */
const MOST = 2000;

/** How long the links are: by what they lead to, the shortest, the middle one, the longest. */
export async function links(): Promise<Goal[]> {
  const kinds = new Map<string, { readonly name: string; readonly length: number }[]>();
  for (const [name, moment] of offered()) {
    const [first] = name.split(' ');
    const kind = first === 'fault' || first === 'van' || first === 'question' ? first : 'state';
    const rows = kinds.get(kind) ?? [];
    rows.push({ name, length: (await linkOf(moment)).length });
    kinds.set(kind, rows);
  }
  console.log('\nLinks, letters after the address of the page: least, middle, most');
  let longest = 0;
  for (const [kind, rows] of kinds) {
    rows.sort((a, b) => a.length - b.length);
    const [least, middle, most] = [rows[0], rows[rows.length >> 1], rows.at(-1)];
    longest = Math.max(longest, most?.length ?? 0);
    console.log(
      `  ${kind.padEnd(9)} ${String(rows.length).padStart(3)} of them  ${least?.length}  ${middle?.length}  ${most?.length} (${most?.name})`,
    );
  }
  return [{ name: `every link under ${MOST} letters`, reached: longest < MOST }];
}
