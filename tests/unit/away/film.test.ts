import { createHash } from 'node:crypto';
import { beforeAll, expect, it } from 'vitest';
import { played } from '../../../ui/away/clip/click-wave.ts';
import { vttOf } from '../../../ui/away/clip/cues.ts';
import type { FilmKind } from '../../../ui/away/clip/kinds.ts';
import { whyNot } from '../../../ui/away/clip/kinds.ts';
import type { Picture } from '../../../ui/away/clip/picture.ts';
import { bringSlow } from '../../../ui/brought.ts';
import { ClickShow } from '../../../ui/click-show.ts';
import { shipped } from '../../../ui/lessons/library.ts';
import { openLesson } from '../../../ui/lessons/wants.ts';
import { rigOf } from '../../../ui/record/derive.ts';
import { plainMoment } from '../../../ui/record/start.ts';
import { aboutToClick, allOf, filmOf, type Told } from '../../clip-film.ts';
import { near } from '../../near.ts';
import { long } from '../../samples.ts';

beforeAll(bringSlow);

const van = aboutToClick();

const hashOf = (pictures: readonly (Picture | null)[]): string =>
  createHash('sha256').update(JSON.stringify(pictures)).digest('hex');

const wordsOf = (p: Picture | null | undefined): string =>
  p?.words.map((w) => w.text).join(' | ') ?? '';

const lesson = shipped.find((l) => l.name === 'the-press');

it.each<[FilmKind, Told]>([
  ['press', {}],
  ['pull', { inPicture: true }],
])(
  '%s made twice is the same film, picture by picture, with the same words and sounds',
  async (kind, told) => {
    const made = await Promise.all(
      [0, 1].map(async () => {
        const ready = await filmOf(kind, told);
        const pictures = hashOf(allOf(ready));
        return { pictures, cues: ready.film.cues, sounds: ready.film.sounds };
      }),
    );
    expect(made[1]).toEqual(made[0]);
  },
);

it('a press is heard in the very picture that shows its lever hit, at any number of pictures a second', async () => {
  const show = ClickShow.of(rigOf(van), van.bench.state);
  expect(show.clicks).toBe(true);
  const at: number[] = [];
  for (const rate of [30, 60]) {
    const ready = await filmOf('press', { rate, undrawn: true });
    allOf(ready);
    const { film } = ready;
    expect(film.sounds).toHaveLength(1);
    const heard = film.sounds[0]?.at ?? 0;
    const told = film.cues.find((c) => c.text.startsWith('Click'))?.from ?? 0;
    // A sound that fell since the picture before is told with the picture.
    expect(heard).toBeGreaterThan(told - 1 / rate - 1e-6);
    expect(heard).toBeLessThanOrEqual(told + 1e-6);
    // No faster than the page shows it, after what stands before.
    expect(heard).toBeGreaterThan(0.6 + show.lasts(0, show.hitAt));
    at.push(heard);
  }
  // Each stage is slower by a whole number of times, reckoned from the picture after its beginning.
  near(at[1] ?? 0, at[0] ?? 0, { abs: 1 }, 'hit');
});

it.each<FilmKind>(['press', 'clicks', 'life', 'pull'])(
  '%s: each caption stands long enough to be read, and nothing stands after the last',
  async (kind) => {
    const { film, script } = await filmOf(kind, { undrawn: true });
    for (const _picture of film.pictures(script));
    expect(film.cues.length).toBeGreaterThan(0);
    // At least one and a half seconds, and 20 letters a second at most: common practice of subtitles.
    const short = film.cues
      .filter((c) => c.to - c.from < Math.max(1.5, c.text.length / 20) - 1.1 / film.rate)
      .map((c) => `${(c.to - c.from).toFixed(2)} s: ${c.text}`);
    expect(short).toEqual([]);
    expect(film.now - (film.cues.at(-1)?.to ?? 0)).toBeLessThan(0.1);
    const vtt = vttOf(film.cues, film.sounds, film.now);
    expect(vtt.match(/\[click\]/g)?.length ?? 0).toBe(played(film.sounds).length);
  },
);

it('a press ends soon after its brake is still', async () => {
  const { film, script } = await filmOf('press', { undrawn: true });
  const all = [...film.pictures(script)];
  // Pictures that show the one before again.
  const still = all.length - 1 - all.findLastIndex((p) => p !== null);
  expect(still / film.rate).toBeLessThan(0.6);
});

it('each picture tells how time runs and how much larger gaps are drawn', async () => {
  const pictures = allOf(await filmOf('press', { undrawn: true })).filter((p) => p !== null);
  const paces = new Set(pictures.map((p) => /Time (×\S+) · gaps ×20/.exec(wordsOf(p))?.[1]));
  expect(paces.has(undefined)).toBe(false);
  expect(paces).toContain('×1');
  const slow = [...paces].map((p) => Number(p?.split('/')[1] ?? 1));
  expect(Math.max(...slow)).toBeGreaterThanOrEqual(100);
});

it('a life fills twelve seconds evenly, each click where its distance is', async () => {
  const ready = await filmOf('life', { undrawn: true });
  const pictures = allOf(ready);
  const { film } = ready;
  const kmAt = (seconds: number): number => {
    const till = pictures.slice(0, Math.round(seconds * 30) + 1);
    const text = wordsOf(till.findLast((p) => p !== null));
    return Number((/([\d\u202f]+) km · tooth/.exec(text)?.[1] ?? '').replace(/\u202f/g, ''));
  };
  expect(kmAt(0)).toBe(0);
  const whole = kmAt(14);
  expect(whole).toBeGreaterThan(10000);
  // Half of the way after half of the time, to what the figures' tenth of a second and a row of it are worth.
  near(kmAt(6.6), whole / 2, { rel: 0.03 }, 'half way');
  expect(film.sounds.length).toBeGreaterThan(5);
  for (const { at } of film.sounds) {
    expect(at).toBeGreaterThan(0.6);
    expect(at).toBeLessThan(12.7);
  }
});

it('ten clicks are heard as ten, in order', async () => {
  const { film, script } = await filmOf('clicks', {
    undrawn: true,
    moment: plainMoment('apply', { kind: 'scene', name: 'quay-van' }, 'New'),
  });
  let n = 0;
  for (const _picture of film.pictures(script)) n += 1;
  expect(film.title).toContain('Ten clicks');
  expect(film.sounds).toHaveLength(10);
  expect(film.sounds.every(({ at }, i) => i === 0 || at > (film.sounds[i - 1]?.at ?? 0) + 1)).toBe(
    true,
  );
  near(film.now, n / 30, { abs: 1e-9 });
});

// Four minutes of pictures: for the long run. A talk that plays by itself is always looked at in the browser (lessons).
if (long)
  it('a talk says each of its sentences while it is shown, from its first to its last', async () => {
    const { film, script } = await filmOf('talk', { rate: 10, undrawn: true });
    let n = 0;
    for (const _picture of film.pictures(script)) n += 1;
    const talk = shipped.find((l) => l.kind === 'talk');
    expect(film.cues).toHaveLength(talk?.steps.length ?? 0);
    // Its seconds add up to four minutes.
    // Each begins with a picture of its own and ends with a whole one; the last stands for a second.
    near(n / 10, 241, { abs: (2 * (talk?.steps.length ?? 0)) / 10 + 1e-6 }, 'length');
    film.cues.forEach((cue, i) => {
      expect(cue.from).toBeCloseTo(i === 0 ? 0 : (film.cues[i - 1]?.to ?? 0), 9);
      expect(cue.to - cue.from).toBeGreaterThanOrEqual((talk?.steps[i]?.seconds ?? 0) - 0.15);
    });
  });

it('a step of a lesson asks, shows and says why; without one it says what is missing', async () => {
  expect(whyNot('step', van)).toContain('Open a lesson');
  if (!lesson) throw new Error('no lesson of that name');
  const open = openLesson.does(plainMoment('lessons'), lesson);
  expect(whyNot('step', open)).toBeNull();
  const ready = await filmOf('step', { moment: open, rate: 15, inPicture: true, undrawn: true });
  const pictures = allOf(ready);
  const [first, ...rest] = ready.film.cues;
  expect(first?.text).toContain('?');
  expect(rest.length).toBeGreaterThan(0);
  // What is said stands in the picture too, none of it lost to its lines.
  const said = first?.text.split(' ').slice(0, 3).join(' ') ?? 'nothing';
  expect(wordsOf(pictures[3])).toContain(said);
});
