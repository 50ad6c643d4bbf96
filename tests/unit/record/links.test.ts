import { describe, expect, it } from 'vitest';
import { fromText, toText } from '../../../ui/record/json.ts';
import { linkOf, readLink, sendable } from '../../../ui/record/link.ts';
import { offered } from '../../record-moments.ts';

/** Longest link of anything that the page itself offers: what other programs pass on unharmed (common practice). */
const MOST = 2000;

const all = offered();

describe('every standing state, fault, van and question', () => {
  it('is there, each with its own name', () => {
    expect(all.length).toBeGreaterThan(130);
    expect(new Set(all.map(([name]) => name)).size).toBe(all.length);
  });

  it.each(all)('%s goes through a short link and through text unchanged', async (_name, m) => {
    const text = toText(m);
    const kept = fromText(text);
    expect(kept.ok ? toText(kept.moment) : kept.wrong).toBe(text);
    const link = await linkOf(m);
    expect(link.length).toBeLessThan(MOST);
    const at = link.indexOf('#');
    const [search, hash] = at < 0 ? [link, ''] : [link.slice(0, at), link.slice(at)];
    const there = await readLink(search, hash);
    expect(there.ok ? toText(there.moment) : there.wrong).toBe(toText(sendable(m)));
  });
});
