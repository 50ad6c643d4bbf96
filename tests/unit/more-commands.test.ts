import { expect, it } from 'vitest';
import {
  balance,
  KM,
  newFit,
  readingOf,
  readings,
  removal,
  rest,
  startState,
  wearOn,
} from '../../sim/index.ts';
import { benchBrake, quay } from '../brakes.ts';
import { near } from '../near.ts';
import { takeup } from '../takeup.ts';

it('compare: each brake has the figures of its own press, and is told from the first', async () => {
  const args = ['compare', 'quay-van', 'bench-brake', '--pressure', '4', '--drum', 'forward'];
  const { code, out } = await takeup(...args, '--json', '--read', 'torque,brakeFactor');
  expect(code).toBe(0);
  const { brakes } = JSON.parse(out);
  for (const [k, name] of ['quay-van', 'bench-brake'].entries()) {
    const { readings: alone } = JSON.parse(
      (await takeup('press', name, '--pressure', '4', '--json')).out,
    );
    expect(brakes[k].scene).toBe(name);
    expect(brakes[k].readings).toEqual({ torque: alone.torque, brakeFactor: alone.brakeFactor });
  }
  const [a, b] = brakes.map((x: (typeof brakes)[0]) => x.readings.torque.value);
  const plain = await takeup(...args, '--read', 'torque');
  expect(plain.out).toContain(`(−${((100 * (a - b)) / a).toFixed(1)} %)`);
  const csv = (await takeup(...args, '--read', 'torque', '--csv')).out.trim().split('\n');
  expect(csv[0]).toBe('reading,unit,quay-van,bench-brake');
  expect(csv[1]?.split(',').slice(2).map(Number)).toEqual([a, b]);
});

it('compare: a reading that is none, a brake alone, a scene with findings', async () => {
  const key = await takeup('compare', 'quay-van', 'bench-brake', '--read', 'torqe');
  expect([key.code, key.err]).toEqual([2, expect.stringMatching(/--read: found "torqe"/)]);
  const alone = await takeup('compare', 'quay-van');
  expect([alone.code, alone.err]).toEqual([2, expect.stringMatching(/2 or more scenes/)]);
  const bad = await takeup('compare', 'quay-van', 'tests/brakes.ts', '--json');
  expect(bad.code).toBe(1);
  expect(JSON.parse(bad.out).findings[0].scene).toBe('tests/brakes.ts');
});

it('off: what the mechanics find of the worn van, and of rust', async () => {
  const { rig, brake } = quay();
  const state = wearOn(rig, startState(brake), { distance: 60000 * KM }).state;
  const found = removal(rig, state);
  expect(found.heldBy).toBe('lip');
  const { code, out } = await takeup('off', 'quay-van', '--km', '60000', '--json');
  expect(code).toBe(0);
  const told = JSON.parse(out);
  expect(told.locks).toEqual(found.locks);
  expect(told.overlap.value).toBe(found.fit.greatest);
  expect(told.backOff).toEqual(found.backOff);
  const plain = await takeup('off', 'quay-van', '--km', '60000');
  expect(plain.out).toContain('The drum is held by: lip.');
  expect(plain.out).toContain(`Backed off by ${found.backOff.teeth} teeth`);
  expect((await takeup('off', 'quay-van')).out).toMatch(/The drum comes off\.\n.*\nNo lip/);
  const rust = await takeup('off', 'quay-van', '--hub-rust', '--linings-rusted', '--json');
  expect(JSON.parse(rust.out).locks).toEqual(['linings rusted on', 'rust at the hub']);
});

it('fit: as New shoes has it', async () => {
  const { rig } = quay();
  const args = ['fit', 'quay-van', '--ground', '99.5', '--thickness', '4.5', '--bore', '200.6'];
  const told = JSON.parse((await takeup(...args, '--json')).out);
  const found = newFit(rig, { thickness: 4.5, groundRadius: 99.5 }, 100.3);
  expect(told.bears).toBe(found.fit.where);
  expect(told.gap.value).toBe(found.fit.gap);
  near(told.share, found.torque / found.right, { rel: 1e-12 }, 'share');
  const off = await takeup('fit', 'quay-van', '--ground', '50');
  expect([off.code, off.err]).toEqual([2, expect.stringMatching(/--ground: found "50"/)]);
});

it('figure: the drawing as SVG, its layers those asked for, its shoes where the press puts them', async () => {
  const drawn = async (...more: string[]) => {
    const { code, out } = await takeup('figure', 'quay-van', ...more);
    expect(code).toBe(0);
    expect(out).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" viewBox="0 0 \d+ \d+"/);
    expect(out.trim()).toMatch(/<\/svg>$/);
    expect(out).not.toMatch(/NaN|undefined|Infinity/);
    return out;
  };
  const plain = await drawn('--layers', 'none');
  expect(plain).toContain('width="1600"');
  expect(plain).toContain('40.0 bar, drum forward');
  const paths = (svg: string): number => svg.match(/<path/g)?.length ?? 0;
  expect(paths(await drawn('--layers', 'forces,pressure'))).toBeGreaterThan(paths(plain) + 10);
  // Another press stands otherwise.
  expect(await drawn('--layers', 'none', '--pressure', '0')).not.toBe(plain);
  const wide = JSON.parse(
    await takeup('figure', 'quay-van', '--width', '800', '--json').then((r) => r.out),
  );
  expect([wide.width, wide.svg.includes('width="800"')]).toEqual([800, true]);
  const none = await takeup('figure', 'quay-van', '--layers', 'force');
  expect([none.code, none.err]).toEqual([
    2,
    expect.stringMatching(/--layers: found "force"; allowed: gaps/),
  ]);
});

it('what compare tells is what the mechanics read', async () => {
  const { brake, rig } = benchBrake();
  const state = startState(brake);
  const i = balance(rig, state, { pressure: 2, turning: 1 });
  const { value } = readingOf(readings(brake, state, i, rest(rig, state)), 'torque');
  const { out } = await takeup('compare', 'quay-van', 'bench-brake', '--pressure', '2', '--json');
  near(JSON.parse(out).brakes[1].readings.torque.value, value, { rel: 1e-12 }, 'N·m');
});

it('seek: the stretch of a size, and where there is none the bound in the way', async () => {
  const ask = ['seek', 'quay-van', '--free', 'cylinder.bore=15..23', '--wish'];
  const { code, out } = await takeup(...ask, 'torque=200..240', '--json');
  expect(code).toBe(0);
  const { reach } = JSON.parse(out);
  // Its ends, pressed: just what was wished, within what twelve halvings of a field leave.
  for (const [bore, torque] of [
    [reach[0].least, 200],
    [reach[0].most, 240],
  ]) {
    const one = ['--from', String(bore), '--to', String(bore), '--points', '1', '--json'];
    const vary = ['vary', 'quay-van', '--of', 'cylinder.bore', '--read', 'torque', ...one];
    const { curves } = JSON.parse((await takeup(...vary)).out);
    near(curves[0].points[0].values[0], torque, { abs: 0.2 }, 'N·m');
  }
  const none = await takeup(...ask, 'torque=900..');
  expect(none.code).toBe(1);
  expect(none.out).toMatch(/None between these bounds does/);
  expect(none.out).toMatch(/In the way: cylinder\.bore at its most, 23 mm\./);
  for (const [wish, told] of [
    ['torqe=1..2', /--wish: found "torqe=1\.\.2"; allowed: KEY=LEAST\.\.MOST/],
    ['torque=..', /--wish: found "torque=\.\."/],
  ] as const) {
    const bad = await takeup(...ask, wish);
    expect([bad.code, bad.err]).toEqual([2, expect.stringMatching(told)]);
  }
  const size = await takeup(
    'seek',
    'quay-van',
    '--free',
    'cylinder.bore=23..15',
    '--wish',
    'torque=1..',
  );
  expect([size.code, size.err]).toEqual([2, expect.stringMatching(/--free: found/)]);
});
