import { describe, expect, it } from 'vitest';
import { judged, makeReaders, textOf } from '../read-fuzz.ts';
import { samples } from '../samples.ts';

// 200 000 cases by `npm run test:reads`.
const readers = await makeReaders();

describe.each(readers)('$name', (reader) => {
  it('is read as it was written', async () => {
    for (const seed of reader.seeds) {
      const came = await reader.read(seed);
      expect(came.taken, seed.slice(0, 60)).toBe(true);
    }
  });

  it('changed at random it is taken only when sound, or refused with a place, and nothing is thrown', async () => {
    for (let seed = 0; seed < samples('reads'); seed++) {
      expect(await judged(reader, seed), `${reader.name}, case ${seed}`).toEqual([]);
    }
  });
});

it('a case is the same each time, and few are as they were written', () => {
  for (const reader of readers) {
    const texts = Array.from({ length: 60 }, (_, n) => textOf(reader, n));
    expect(texts).toEqual(Array.from({ length: 60 }, (_, n) => textOf(reader, n)));
    expect(texts.filter((t) => reader.seeds.includes(t)).length, reader.name).toBeLessThan(20);
  }
});
