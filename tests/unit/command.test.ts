import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import {
  application,
  balance,
  freshState,
  KM,
  KMH,
  parked,
  pedalCurve,
  readingOf,
  readings,
  rest,
  slopeHeld,
  standingState,
  stopAt,
  wearOn,
} from '../../sim/index.ts';
import { eventText } from '../../sim/workshop/index.ts';
import { CLIMB_TAKES, quay, quayScene } from '../brakes.ts';
import { near } from '../near.ts';
import { type Answer, takeup } from '../takeup.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'takeup-command-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** The command as it is typed, in a process of its own. */
function typed(...args: string[]): Answer {
  const tsx = join(root, 'node_modules/tsx/dist/cli.mjs');
  const r = spawnSync(process.execPath, [tsx, join(root, 'ui/command/takeup.ts'), ...args], {
    cwd: root,
    encoding: 'utf8',
  });
  return { code: r.status, out: r.stdout, err: r.stderr };
}

describe('press', () => {
  it('gives the very numbers of the simulator, with units', async () => {
    const r = await takeup('press', 'quay-van', '--pressure', '4', '--json');
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

  it('tells the drum’s face for a stop from the speed that is asked for', async () => {
    const face = async (...args: string[]): Promise<number> =>
      JSON.parse((await takeup('press', 'quay-van', '--json', ...args)).out).readings.stopFace
        .value;
    // Same torque: energy grows with v², time with v, so the flux over the root of the time with v^1.5.
    near((await face('--speed', '40')) - 20, ((await face('--speed', '10')) - 20) * 8, {
      rel: 1e-9,
    });
    expect(await face()).toBe(await face('--speed', '40'));
  });

  it('prints the same numbers as lines', async () => {
    const r = await takeup('press', 'quay-van');
    expect(r.out).toMatch(/^Quay van: 40\.0 bar, drum forward\n/);
    expect(r.out).toMatch(/Brake factor, after springs +2\.29\n/);
    expect(r.out).toMatch(/Line pressure +40\.0 bar\n/);
  });

  it('tells null where there is nothing to tell', async () => {
    const stopped = JSON.parse(
      (await takeup('press', 'quay-van', '--drum', 'stopped', '--json')).out,
    );
    expect(stopped.readings.brakeFactor.value).toBe(null);
    expect(stopped.locked).toBe(null);
  });

  it('presses a standing state, and one worn on by hand to the same distance', async () => {
    const torque = async (...args: string[]): Promise<number> =>
      JSON.parse((await takeup('press', 'quay-van', '--json', ...args)).out).readings.torque.value;
    const { rig, brake } = quay();
    const judged = application(rig, standingState(rig, 'Worn-in'), { pressure: 4, turning: 1 });
    const i = balance(rig, judged.state, { pressure: 4, turning: 1 });
    const told = readingOf(readings(brake, judged.state, i, rest(rig, judged.state)), 'torque');
    expect(await torque('--state', 'Worn-in')).toBe(told.value);
    expect(await torque('--km', '20000')).toBe(told.value);
  });

  it('takes sizes in other units of the same kind', async () => {
    const value = async (pressure: string): Promise<number> =>
      JSON.parse((await takeup('press', 'quay-van', '--json', '--pressure', pressure)).out).pressure
        .value;
    near(await value('580.151 psi'), 4, { rel: 1e-5 });
  });

  it('covers hot, damp, stuck and parked brakes', async () => {
    const value = async (key: string, ...args: string[]): Promise<number> =>
      JSON.parse((await takeup('press', 'quay-van', '--json', ...args)).out).readings[key].value;
    const sound = await value('torque');
    expect(await value('torque', '--surface', 'damp')).toBeGreaterThan(1.4 * sound);
    expect(await value('torque', '--temperature', '400')).toBeLessThan(sound);
    expect(await value('torque', '--stuck', 'front')).toBeLessThan(0.3 * sound);
    // Steel shoes grip harder when light (finite elements of one geometry: up to 9 % more).
    expect(await value('torque', '--flexible')).toBeGreaterThan(sound);
    expect(await value('torque', '--flexible')).toBeLessThan(1.12 * sound);
    const { rig } = quay();
    const p = parked(rig, standingState(rig, 'Worn-in'), 300);
    const park = ['--state', 'Worn-in', '--pressure', '0', '--cable', '300'];
    expect(await value('slipForward', ...park)).toBe(p.forward * 1e-3);
    expect(await value('slopeUp', ...park)).toBe(100 * slopeHeld(rig, p.backward));
    near(await value('slipForward', ...park), 344, { rel: 0.02 });
  });

  it('covers what is out of order', async () => {
    const value = async (key: string, ...args: string[]): Promise<number> =>
      JSON.parse((await takeup('press', 'quay-van', '--json', ...args)).out).readings[key].value;
    const sound = await value('torque');
    // A cup takes its friction off the piston's push: 40 N of the 1140 N at 40 bar, of which the springs
    // leave 989 N (bore 19.05 mm, 1.99 to 2.29 in the teaching tables).
    near(await value('torque', '--cup-friction', '40'), sound * (1 - 40 / 989), { rel: 0.01 });
    expect(await value('torque', '--springs', '50 %')).toBeGreaterThan(1.05 * sound);
    // Teaching tables: 13 N·m when 8 bar stay in the line, on the worn-in brake; the climbing lever takes its part.
    const kept = ['--state', 'Worn-in', '--pressure', '0', '--kept-pressure', '8 bar'];
    near(await value('torque', ...kept), 13.3 - CLIMB_TAKES, { abs: 0.7 });
    // A groove of 60 N holds the shoes back until they break out.
    const groove = ['--pressure', '6 bar', '--drum', 'stopped', '--groove'];
    expect(await value('separation', ...groove, '60')).toBeLessThan(0.5);
    expect(await value('separation', ...groove, '0')).toBeGreaterThan(0.9);
    // A lever off its stop by 6 mm opens the shoes: less clearance.
    const off = await value('restClearanceMean', '--pressure', '0', '--lever-off-stop', '6');
    expect(off).toBeLessThan((await value('restClearanceMean', '--pressure', '0')) - 0.1);
    // Radius ± 0.12: across the bore 0.48 between greatest and least. Off centre nothing.
    const bore = async (...args: string[]): Promise<number> =>
      (await value('turnBoreGreatest', ...args)) - (await value('turnBoreLeast', ...args));
    near(await bore('--oval', '0.12'), 0.48, { abs: 1e-9 });
    near(await bore('--off-centre', '0.2'), 0, { abs: 1e-9 });
  });

  it('tells what a slope asks for and what the cable leaves over', async () => {
    const park = ['press', 'quay-van', '--json', '--state', 'Worn-in', '--pressure', '0'];
    const { readings: told } = JSON.parse(
      (await takeup(...park, '--cable', '300', '--slope', '20')).out,
    );
    // Teaching tables: 299 N·m a wheel, 265 N nose down, 268 N nose up, 97 N at the hand lever.
    near(told.slopeTorque.value, 299, { rel: 0.003 });
    near(told.cableNoseDown.value, 265, { rel: 0.02 });
    near(told.cableNoseUp.value, 268, { rel: 0.02 });
    near(told.handNoseUp.value, 97, { rel: 0.02 });
    near(told.marginNoseDown.value, 100 * (344 / 299 - 1), { abs: 1 });
    const bare = JSON.parse((await takeup(...park, '--slope', '20 %')).out).readings;
    expect(bare.cableNoseDown.value).toBe(told.cableNoseDown.value);
    expect(bare.marginNoseDown).toBe(undefined);
  });

  it('covers shoes on abutments, rigid and bending', async () => {
    const torque = async (...args: string[]): Promise<number> =>
      JSON.parse((await takeup('press', 'ferry-runabout', '--json', ...args)).out).readings.torque
        .value;
    const rigid = await torque();
    // Teaching tables: 153 N·m for rigid shoes; steel ones grip harder when new (finite elements).
    near(rigid, 153, { rel: 0.02 });
    expect(await torque('--flexible')).toBeGreaterThan(rigid);
    expect(await torque('--flexible')).toBeLessThan(1.25 * rigid);
  });
});

describe('stop', () => {
  it('tells distance, deceleration and energy, as lines and as JSON', async () => {
    const data = JSON.parse((await takeup('stop', 'quay-van', '--json')).out);
    const { rig, state } = quay();
    const s = stopAt(rig, state, 50 * KMH, 4);
    expect(data.readings.stopDistance).toMatchObject({ value: s.distance * 1e-3, unit: 'm' });
    expect(data.readings.dragPower.value).toBe(0);
    expect(data.notes[0]).toMatch(/30 % of the braking/);
    const { out } = await takeup('stop', 'quay-van', '--speed', '31.07 mph');
    // 19.8 m at 226.5 N·m (the teaching tables' torque), and longer as the climbing lever takes 6.3 of them.
    expect(out).toMatch(/Stopping distance +20\.4 m\n/);
  });

  it('takes a push of the foot or a deceleration instead', async () => {
    const asked = async (...args: string[]) =>
      JSON.parse((await takeup('stop', 'quay-van', '--json', ...args)).out);
    // 334.6 N at the foot make 40 bar: area 334.59 mm² and 4 : 1.
    near((await asked('--pedal', '334.59')).pressure.value, 4, { rel: 1e-4 });
    const slow = await asked('--deceleration', '3 m/s²');
    near(slow.readings.stopDeceleration.value, 3, { rel: 1e-6 });
    near(slow.readings.stopTorque.value, 139.725, { abs: 1e-9 });
    const most = ['stop', 'farm-trailer', '--deceleration', '20'];
    expect(JSON.parse((await takeup(...most, '--json')).out).pressure.value).toBe(null);
    expect((await takeup(...most)).out).toMatch(/no pressure does it/);
    const both = await takeup('stop', 'quay-van', '--pedal', '100', '--pressure', '4');
    expect(both.err).toMatch(/^--pressure and --pedal: found both; allowed: one of them/);
  });
});

describe('wheels that start unlike', () => {
  const scene = { ...quayScene(), otherWheel: { wear: { front: 0, rear: 2 } } };
  const path = join(folder, 'unlike.json');
  writeFileSync(path, JSON.stringify(scene));
  const asked = async (...args: string[]) => {
    const { out } = await takeup(...args, '--json');
    return JSON.parse(out).readings ?? JSON.parse(out).end ?? JSON.parse(out).error;
  };

  it('are asked for one by one, and stop together', async () => {
    const left = await asked('press', path);
    expect((await asked('press', path, '--wheel', 'left')).torque).toEqual(left.torque);
    const right = await asked('press', path, '--wheel', 'right');
    near(right.liningRear.value, left.liningRear.value - 2, { abs: 1e-9 });
    near((await asked('wear', path, '--km', '0', '--wheel', 'right')).liningRear.value, 2.5, {
      abs: 1e-9,
    });
    const both = await asked('stop', path);
    // A press may click before it is read, a stop does not; and each tooth has its own growth, so its own climb.
    near(both.wheelRight.value, right.torque.value, { rel: 2e-3 });
    expect((await asked('stop', path, '--wheel', 'left')).wheelRight).toBe(undefined);
    const state = await asked('press', path, '--wheel', 'left', '--state', 'New');
    expect(state).toMatchObject({ place: '--state and --wheel', found: 'both' });
  });
});

describe('pedal', () => {
  it('tells the curve, the touch and what is left', async () => {
    const { curve, readings: told } = JSON.parse((await takeup('pedal', 'quay-van', '--json')).out);
    const { rig, state } = quay();
    const c = pedalCurve(rig, state, 4);
    expect(curve.points.map((p: { travel: number }) => p.travel)).toEqual(
      c.points.map((p) => p.total),
    );
    expect(told.pedalReserve.value).toBe(c.reserve);
    const { out } = await takeup('pedal', 'quay-van');
    expect(out).toMatch(/^Quay van: the pedal to 40\.0 bar, drum forward\n +bar +foot N/);
    expect(out).toMatch(/\n40\.0 +335 +18\.1 +7\.38\n/);
  });
});

describe('wear', () => {
  it('prints the click log and the end state', async () => {
    const data = JSON.parse((await takeup('wear', 'quay-van', '--km', '9000', '--json')).out);
    expect(data.events.map((e: { tooth: number }) => e.tooth)).toEqual([1, 2]);
    near(data.events[0].distance.value, 3000, { abs: 100 });
    const { rig, brake } = quay();
    const { state, events } = wearOn(rig, freshState(brake), { distance: 9000 * KM });
    expect(data.events.map((e: { text: string }) => e.text)).toEqual(
      events.map((e) => eventText(brake, e)),
    );
    const free = rest(rig, state);
    const left = readingOf(readings(brake, state, free, free), 'liningFront').value;
    expect(data.end.liningFront.value).toBe(left);
    expect(data.end.tooth.value).toBe(2);
    expect(data.end.distance).toMatchObject({ value: 9000, unit: 'km' });
    expect((await takeup('wear', 'quay-van', '--km', '9000')).out).toMatch(/Click: tooth 2 at/);
  });
});

describe('a shoe that locks', () => {
  const scene = quayScene();
  scene.shoes.front.lining.friction = 0.9;
  const path = join(folder, 'locks.json');
  writeFileSync(path, JSON.stringify(scene));

  it('is told instead of a torque', async () => {
    const r = await takeup('press', path);
    expect(r.code).toBe(0);
    expect(r.out).toMatch(/The front shoe locks by itself/);
    expect(r.out).toMatch(/Brake torque +– N·m/);
    const data = JSON.parse((await takeup('press', path, '--cable', '300', '--json')).out);
    expect(data.locked).toBe('front');
    for (const key of ['torque', 'brakeFactor', 'dragFront', 'slipForward', 'slopeDown']) {
      expect(data.readings[key].value, key).toBe(null);
    }
  });

  it('holds forward only: backward it is the rear shoe that leads', async () => {
    const data = JSON.parse((await takeup('press', path, '--drum', 'backward', '--json')).out);
    expect(data.locked).toBe(null);
    expect(data.readings.torque.value).toBeGreaterThan(0);
  });

  it('is not driven on', async () => {
    const data = JSON.parse((await takeup('wear', path, '--km', '5000', '--json')).out);
    expect(data).toMatchObject({ locked: 'front', events: [] });
    expect(data.end.distance.value).toBe(0);
    const press = await takeup('press', path, '--km', '5000');
    expect(press.code).toBe(2);
    expect(press.err).toMatch(/--km: found a brake whose front shoe locks/);
  });
});

describe('check', () => {
  it('passes a sound scene and fails a bad one with its findings', async () => {
    const sound = await takeup('check', 'quay-van');
    expect(sound.code).toBe(0);
    // Teaching tables: 0.92 at 300 °C; surfaces are common practice and say so.
    expect(sound.out).toMatch(/friction against temperature: .*0\.92 at 300 °C.*from memory/);
    expect(sound.out).toMatch(
      /friction of a greasy lining: 0\.5 of a dry one's \(common practice\)/,
    );
    const scene = quayScene();
    scene.drum.rim = -1;
    const path = join(folder, 'bad.json');
    writeFileSync(path, JSON.stringify({ ...scene, extra: 1 }));
    const bad = await takeup('check', path);
    expect(bad.code).toBe(1);
    expect(bad.out).toMatch(/drum\.rim: found -1; allowed: more than 0/);
    expect(bad.out).toMatch(/extra: found an unknown key/);
    expect(JSON.parse((await takeup('check', path, '--json')).out).findings.length).toBe(2);
    const pressed = await takeup('press', path);
    expect(pressed).toMatchObject({ code: 1, out: '' });
    expect(pressed.err).toMatch(/^drum\.rim: found -1; allowed: more than 0/m);
  });
  it('takes a file with a byte-order mark, and tells bytes that are no text', async () => {
    const text = JSON.stringify(quayScene());
    const path = join(folder, 'marked.json');
    const answer = async (bytes: Uint8Array): Promise<Answer> => {
      writeFileSync(path, bytes);
      return takeup('check', path);
    };
    for (const encoding of ['utf8', 'utf16le'] as const) {
      expect(await answer(Buffer.from(`\ufeff${text}`, encoding)), encoding).toMatchObject({
        code: 0,
      });
    }
    expect(await answer(Buffer.from([0x7b, 0xff, 0x7d]))).toMatchObject({
      code: 1,
      out: '(file): found bytes that are no text; allowed: JSON in UTF-8\n',
    });
  });
});

describe('what was typed wrong', () => {
  const wrong: readonly (readonly [string[], RegExp])[] = [
    [
      ['pres', 'quay-van'],
      /command: found "pres"; allowed: press, stop, pedal, park, compare, off, fit, figure, seek, gather, vary, wear, life, check/,
    ],
    [['press'], /SCENE: found nothing/],
    [['press', 'no-such'], /SCENE: found no file "no-such"/],
    [['press', 'scenes'], /SCENE: found the folder "scenes"/],
    [['check', 'quay-van', 'farm-trailer'], /after SCENE: found "farm-trailer"/],
    [
      ['press', 'quay-van', '--pressure', 'much'],
      /--pressure: found "much"; allowed: a size such as 0 to 20 MPa/,
    ],
    [['press', 'quay-van', '--pressure', '-1'], /--pressure: found "-1"; allowed: 0 to 20 MPa/],
    [['wear', 'quay-van', '--km', '2000000'], /--km: found "2000000"; allowed: 0 to 1000000 km/],
    [['press', 'quay-van', '--pressure', '40 mm'], /--pressure: found "40 mm", which is no MPa/],
    [['press', 'quay-van', '--oval', '-0.1'], /--oval: found "-0\.1"; allowed: 0 to 1 mm/],
    [['press', 'quay-van', '--slope', '200'], /--slope: found "200"; allowed: 0 to 100 %/],
    [['press', 'quay-van', '--cable', 'hard'], /--cable: found "hard"; allowed: a size/],
    [['press', 'quay-van', '--lever-off-stop', '2 N'], /--lever-off-stop: found "2 N"/],
    [['press', 'quay-van', '--surface', 'icy'], /allowed: dry, damp, wet, glazed, greasy/],
    [['press', 'quay-van', '--flexible', 'yes'], /after SCENE: found "yes"/],
    [['press', 'quay-van', '--drum', 'sideways'], /allowed: forward, stopped, backward/],
    [['press', 'quay-van', '--weight', '4'], /--weight: found an unknown option/],
    [['press', 'quay-van', '--state', 'Lost'], /--state: found "Lost"; allowed: New, Worn-in/],
    [['wear', 'quay-van'], /--km: found nothing/],
    [['press', 'quay-van', '--pressure'], /--pressure: found no value/],
    [['press', 'quay-van', '--pressure', '--flexible'], /--pressure: found no value/],
    [['press', 'quay-van', '--pressure', '4', '--pressure=5'], /--pressure: found twice/],
    [['press', 'quay-van', '--json=yes'], /--json: found "yes"; allowed: no value/],
    [
      ['wear', 'quay-van', '--pressure', '4'],
      /unknown option of "wear"; allowed: --km, --wheel, --flex/,
    ],
    [['press', 'quay-van', '--state', 'New', '--km', '5'], /--state and --km: found both/],
    [['constructor', 'quay-van'], /command: found "constructor"/],
    [['press', 'quay-van', '--pressure', '2+2 MPa'], /--pressure: found "2\+2 MPa"/],
    [
      ['press', 'quay-van', '--pressure', '4 mPa'],
      /read as 4e-9 MPa \(m is milli; was 4 MPa meant\?\)/,
    ],
    [['press', 'quay-van', '-x'], /^-x: found an option of one letter/],
    [['press', 'quay\nvan'], /^SCENE: found no file "quay\\u000avan"/],
    [['press', 'quay\0van'], /^SCENE: found "quay\\u0000van", with a character that no path has/],
    [['press', `${'long'.repeat(100)}.json`], /^SCENE: found "longlong.*, a name too long/],
    [
      ['press', 'README.md/quay-van'],
      /^SCENE: found "README.md\/quay-van", which leads through a file/,
    ],
    [['press', '/dev/zero'], /^SCENE: found "\/dev\/zero", which is no file/],
    [['press', join(folder, 'round')], /round", whose links lead round in a circle/],
    [['press', join(folder, 'a folder')], /^SCENE: found the folder ".*a folder"/],
  ];
  mkdirSync(join(folder, 'a folder'));
  symlinkSync('round', join(folder, 'round'));
  for (const [args, message] of wrong) {
    it(JSON.stringify(args.join(' ')), async () => {
      const r = await takeup(...args);
      expect(r).toMatchObject({ code: 2, out: '' });
      expect(r.err).toMatch(message);
      expect(r.err.trimEnd().split('\n')).toEqual([
        expect.stringMatching(/.+: found .+; allowed: .+/),
        'See: npm run -s takeup -- --help',
      ]);
    });
  }

  it('is told as JSON where JSON was asked for', async () => {
    for (const [args, message] of wrong) {
      const r = await takeup(...args, '--json');
      // What follows an option is its value.
      if (!r.out) continue;
      expect(r).toMatchObject({ code: 2, err: '' });
      const { place, found, allowed } = JSON.parse(r.out).error;
      expect(`${place}: found ${found}; allowed: ${allowed}`).toMatch(message);
    }
    const path = join(folder, 'not.json');
    writeFileSync(path, 'no JSON');
    const r = await takeup('press', path, '--json');
    expect(r).toMatchObject({ code: 1, err: '' });
    expect(JSON.parse(r.out)).toMatchObject({
      command: 'press',
      findings: [{ path: '(file)', allowed: 'JSON' }],
    });
  });
});

it('tells what it takes and the shape of --json', async () => {
  const help = await takeup('--help');
  expect(help.code).toBe(0);
  for (const word of [
    'press SCENE',
    'stop SCENE',
    'pedal SCENE',
    'wear SCENE',
    'check SCENE',
    '{ name, symbol, value, unit }',
  ]) {
    expect(help.out).toContain(word);
  }
  for (const asked of [
    [],
    ['help'],
    ['-h'],
    ['press', '-h'],
    ['help', 'press'],
    ['press', '--help'],
  ]) {
    expect(await takeup(...asked)).toEqual(help);
  }
});

it('tells its version', async () => {
  const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  for (const asked of ['--version', '-v', 'version']) {
    expect(await takeup(asked)).toEqual({ code: 0, out: `${version}\n`, err: '' });
  }
});

it('works as a process of its own', () => {
  const r = typed('press', 'quay-van', '--pressure', '40 bar');
  expect(r.code, r.err).toBe(0);
  expect(r.out).toMatch(/Brake factor, after springs +2\.29\n/);
  const wrong = typed('press', 'quay-van', '--weight', '4');
  expect(wrong).toMatchObject({ code: 2, out: '' });
  expect(wrong.err).toMatch(
    /^--weight: found an unknown option.*\nSee: npm run -s takeup -- --help\n$/,
  );
});
