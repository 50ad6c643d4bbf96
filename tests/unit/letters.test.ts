import { describe, expect, it } from 'vitest';
import { bandOf, LETTERS, letterOf, lettersBy } from '../../sim/brake/letters.ts';
import { lettersOf, readScene } from '../../sim/index.ts';
import { judgeOwn, teachingScenes } from '../../ui/stations/own/read.ts';
import { quay, quayScene } from '../brakes.ts';
import { near } from '../near.ts';

describe('edge code', () => {
  it('bands friction as SAE J866 does', () => {
    for (const [friction, letter] of [
      [0.1, 'C'],
      [0.15, 'C'],
      [0.151, 'D'],
      [0.25, 'D'],
      [0.251, 'E'],
      [0.35, 'E'],
      [0.38, 'F'],
      [0.45, 'F'],
      [0.55, 'G'],
      [0.551, 'H'],
      [0.9, 'H'],
    ] as const)
      expect(letterOf(friction), `${friction}`).toBe(letter);
    near(bandOf('F').middle, 0.4, { abs: 1e-12 });
    near(bandOf('E').least, 0.25, { abs: 1e-12 });
    near(bandOf('G').most, 0.55, { abs: 1e-12 });
    for (const letter of LETTERS) expect(letterOf(bandOf(letter).middle)).toBe(letter);
  });

  it('of the quay van is FF: 0.380 cold, 0.361 hot', () => {
    // Table 1 to 200 °C, 0.92 at 300, 0.68 at 400. Cold: 93, 121, 149 °C 1, 204 °C 0.9968; times 0.38, mean
    // 0.3797. Hot: 2·(0.9968 + 1 + 0.952) + 0.9744 + 0.9296 + 0.8816 + 0.8168 = 9.500 of ten: 0.361.
    const { brake } = quay();
    for (const side of ['front', 'rear'] as const) {
      const told = lettersOf(brake, side);
      expect(told.letters).toBe('FF');
      near(told.cold, 0.3797, { abs: 1e-4 }, 'cold');
      near(told.hot, 0.361, { abs: 1e-4 }, 'hot');
    }
  });

  it('tells a lining that fades by its second letter', () => {
    expect(lettersBy((t) => (t < 220 ? 0.4 : 0.2)).letters).toBe('FE');
  });
});

it('are taken in My brake as they are typed, or a number', () => {
  const base = teachingScenes()[0];
  if (!base) throw new Error('no scene');
  const own = { name: 'own-1', title: 'Mine', base };
  for (const [text, friction] of [
    ['FF', 0.4],
    [' ee ', 0.3],
    ['GD', 0.5],
    ['0.42', 0.42],
  ] as const) {
    const judged = judgeOwn(own, { friction: text });
    near(judged.sizes?.friction ?? Number.NaN, friction, { abs: 1e-12 }, text);
    expect(judged.draft.shoes.rear.lining.friction).toBe(judged.sizes?.friction);
  }
  expect(judgeOwn(own, { friction: 'FF' }).reads.friction).toMatchObject({
    echo: 'read as 0.35 to 0.45 cold, 0.40 taken',
  });
  for (const wrong of ['F', 'KK', '2'])
    expect(judgeOwn(own, { friction: wrong }).wrong.friction, wrong).toBeTruthy();
});

describe('letters in a scene', () => {
  const given = (friction: string | number) => {
    const scene = quayScene();
    for (const side of ['front', 'rear'] as const)
      Object.assign(scene.shoes[side].lining, { friction });
    return readScene(scene);
  };

  it('give the middle of their cold band', () => {
    const read = given('FF');
    if (!read.ok) throw new Error(JSON.stringify(read.findings));
    near(read.brake.shoes.front.lining.friction, 0.4, { abs: 1e-12 });
    // 0.40 cold and 0.38 hot by the scene's own table: F twice.
    expect(lettersOf(read.brake, 'rear').letters).toBe('FF');
  });

  it('are refused where the tables lead to other ones, or where they are none', () => {
    const read = given('FE');
    const [finding] = read.ok ? [] : read.findings;
    expect(finding).toMatchObject({
      path: 'shoes.front.lining.friction',
      allowed: 'FF, or a table that leads to FE',
    });
    for (const wrong of ['F', 'FFF', 'ff', 'AB', 2]) {
      const bad = given(wrong);
      expect(bad.ok ? [] : bad.findings.map((f) => f.path), `${wrong}`).toContain(
        'shoes.front.lining.friction',
      );
    }
  });
});
