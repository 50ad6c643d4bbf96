import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { application, balance, readingOf, readings, rest } from '../../sim/index.ts';
import { sceneJsonSchema } from '../../ui/command/scene-json-schema.ts';
import { quay, quayScene } from '../brakes.ts';
import { near } from '../near.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'takeup-command-'));
afterAll(() => rmSync(folder, { recursive: true }));

function takeup(...args: string[]): { code: number | null; out: string; err: string } {
  const tsx = join(root, 'node_modules/tsx/dist/cli.mjs');
  const r = spawnSync(process.execPath, [tsx, join(root, 'ui/command/takeup.ts'), ...args], {
    cwd: root,
    encoding: 'utf8',
  });
  return { code: r.status, out: r.stdout, err: r.stderr };
}

describe('press', () => {
  it('gives the very numbers of the simulator, with units', () => {
    const r = takeup('press', 'quay-van', '--pressure', '4', '--json');
    expect(r.code, r.err).toBe(0);
    const data = JSON.parse(r.out);
    const { rig, brake, state } = quay();
    const judged = application(rig, state, { pressure: 4, turning: 1 });
    const i = balance(rig, judged.state, { pressure: 4, turning: 1 });
    const list = readings(brake, judged.state, i, rest(rig, judged.state));
    for (const key of [
      'brakeFactor',
      'brakeFactorFull',
      'torque',
      'toeForceFront',
      'peakFront',
      'pedalTravel',
    ]) {
      expect(data.readings[key].value, key).toBe(readingOf(list, key).value);
    }
    expect(data.readings.torque.unit).toBe('N·m');
    near(data.readings.brakeFactor.value, 2.29, { rel: 0.01 });
  });

  it('tells what there is nothing of as null, and a lock as a lock', () => {
    const stopped = JSON.parse(takeup('press', 'quay-van', '--drum', 'stopped', '--json').out);
    expect(stopped.readings.brakeFactor.value).toBe(null);
    const scene = quayScene();
    scene.shoes.front.lining.friction = 0.9;
    const path = join(folder, 'locks.json');
    writeFileSync(path, JSON.stringify(scene));
    const locked = takeup('press', path);
    expect(locked.code).toBe(0);
    expect(locked.out).toMatch(/front shoe locks/);
    expect(JSON.parse(takeup('press', path, '--json').out).readings.torque.value).toBe(null);
  });

  it('takes sizes in other units of the same kind', () => {
    const value = (pressure: string): number =>
      JSON.parse(takeup('press', 'quay-van', '--json', '--pressure', pressure).out).pressure.value;
    near(value('40 bar'), 4, { rel: 1e-12 });
    near(value('580.151 psi'), 4, { rel: 1e-5 });
  });

  it('covers hot, damp, stuck and parked brakes', () => {
    const value = (key: string, ...args: string[]): number =>
      JSON.parse(takeup('press', 'quay-van', '--json', ...args).out).readings[key].value;
    const sound = value('torque');
    expect(value('torque', '--surface', 'damp')).toBeGreaterThan(1.4 * sound);
    expect(value('torque', '--temperature', '400')).toBeLessThan(sound);
    expect(value('torque', '--stuck', 'front')).toBeLessThan(0.3 * sound);
    // Steel shoes grip harder when light (finite elements of one geometry: up to 9 % more).
    expect(value('torque', '--flexible')).toBeGreaterThan(sound);
    expect(value('torque', '--flexible')).toBeLessThan(1.12 * sound);
    near(value('slipForward', '--state', 'Worn-in', '--pressure', '0', '--cable', '300'), 344, {
      rel: 0.02,
    });
  });
});

describe('wear', () => {
  it('prints the click log and the end state', () => {
    const data = JSON.parse(takeup('wear', 'quay-van', '--km', '9000', '--json').out);
    expect(data.events.map((e: { tooth: number }) => e.tooth)).toEqual([1, 2]);
    near(data.events[0].distance.value, 3000, { abs: 100 });
    expect(data.end.tooth.value).toBe(2);
    expect(data.end.distance).toMatchObject({ value: 9000, unit: 'km' });
    expect(takeup('wear', 'quay-van', '--km', '9000').out).toMatch(/Click: tooth 2 at/);
  });
});

describe('check', () => {
  it('passes a sound scene and fails a bad one with its findings', () => {
    expect(takeup('check', 'quay-van')).toMatchObject({ code: 0 });
    const scene = quayScene();
    scene.drum.rim = -1;
    const path = join(folder, 'bad.json');
    writeFileSync(path, JSON.stringify({ ...scene, extra: 1 }));
    const bad = takeup('check', path);
    expect(bad.code).toBe(1);
    expect(bad.out).toMatch(/drum\.rim: found -1; allowed: more than 0/);
    expect(bad.out).toMatch(/extra: found an unknown key/);
    expect(JSON.parse(takeup('check', path, '--json').out).findings.length).toBe(2);
    expect(takeup('press', path).code).toBe(1);
  });
});

describe('what was typed wrong', () => {
  const wrong: readonly (readonly [string[], RegExp])[] = [
    [['pres', 'quay-van'], /command: found "pres"; allowed: press, wear, check/],
    [['press'], /SCENE: found nothing/],
    [['press', 'no-such'], /SCENE: found no file "no-such"/],
    [
      ['press', 'quay-van', '--pressure', 'much'],
      /--pressure: found "much"; allowed: a size such as 0 to 20 MPa/,
    ],
    [['press', 'quay-van', '--pressure', '-1'], /--pressure: found "-1"/],
    [['press', 'quay-van', '--pressure', '40 mm'], /--pressure: found "40 mm", which is no MPa/],
    [['press', 'quay-van', '--drum', 'sideways'], /allowed: forward, stopped, backward/],
    [['press', 'quay-van', '--speed', '4'], /--speed: found an unknown option/],
    [['press', 'quay-van', '--state', 'Lost'], /--state: found "Lost"; allowed: New, Worn-in/],
    [['wear', 'quay-van'], /--km: found nothing/],
    [['press', 'quay-van', '--pressure'], /--pressure: found no value/],
  ];
  for (const [args, message] of wrong) {
    it(args.join(' '), () => {
      const r = takeup(...args);
      expect(r.code).toBe(2);
      expect(r.err).toMatch(message);
    });
  }
});

it('the JSON Schema on file is the one its source writes', () => {
  const onFile = JSON.parse(readFileSync(join(root, 'scenes/scene.schema.json'), 'utf8'));
  expect(onFile).toEqual(JSON.parse(JSON.stringify(sceneJsonSchema())));
  expect(onFile.required).toContain('shoes');
  expect(onFile.additionalProperties).toBe(false);
});
