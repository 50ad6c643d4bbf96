import { describe, expect, it } from 'vitest';
import { KM, KMH, readScene, readSceneText } from '../../sim/index.ts';
import { tellFinding } from '../../sim/scene/finding.ts';
import { few } from '../../sim/scene/issues.ts';
import { nearest } from '../../sim/scene/nearest.ts';
import { sizeIn, sizesOf, withSize } from '../../sim/scene/sizes.ts';
import { unbearable } from '../../sim/scene/strut-path.ts';
import { mustRead, onPaper, quayScene } from '../brakes.ts';
import { near } from '../near.ts';

const RAD = Math.PI / 180;
/** The first teaching brake with other keys, by their paths. */
function scene(changes: Readonly<Record<string, unknown>> = {}) {
  const copy = structuredClone(quayScene()) as unknown as Record<string, unknown>;
  for (const [path, value] of Object.entries(changes)) {
    const keys = path.split('.');
    let at = copy;
    for (const key of keys.slice(0, -1)) at = at[key] as Record<string, unknown>;
    at[keys.at(-1) as string] = value;
  }
  return copy;
}
const read = (changes: Readonly<Record<string, unknown>> = {}) => onPaper(scene(changes));

/** The file's units (mm, kg, J, bar, degrees) into those inside: mm, tonne, s, so N, N·mm, MPa; by hand. */
describe('a brake that was read', () => {
  // Read in each test, not once while the file is loaded: what is tested is the reading.
  const brake = () => read();

  it('drum, cylinder and springs', () => {
    expect(brake().drum).toMatchObject({
      ...{ radiusNew: 100, radiusMax: 100.5, lipRadius: 100, outOfRoundMax: 0.1, rim: 10 },
      ...{ inertia: 60, heatCapacity: 1564e3, cooling: { still: 2500, perKmh: 120 } },
      ...{ expansion: 11e-6, wearRate: 3e-9 },
    });
    // π/4·19.05².
    near(brake().cylinder.area, 285.023, { abs: 1e-3 }, 'area');
    expect(brake().cylinder).toMatchObject({ outerRadius: 12.7, halfLength: 18, stroke: 8 });
    // 2·58, and from (−44, −66) a slanting one by 3 and 4.
    const springs = read({ 'springs.1.ends.1.at': [-14, -26] }).springs;
    expect(springs.map((s) => s.fittedLength)).toEqual([116, 50]);
  });

  it('shoes', () => {
    const { front, rear } = read({
      'shoes.front.lining.chamferArc': 8,
      'shoes.rear.anchor': {
        kind: 'abutment',
        at: [16, -78],
        normal: 30,
        heelRadius: 8,
        friction: 0.1,
      },
    }).shoes;
    expect(front).toMatchObject({
      side: 'front',
      mass: 0.62e-3,
      inertia: 7.2,
      anchor: { kind: 'pin', at: [-16, -78] },
    });
    const { lining, steel } = front;
    near(lining.from, 125 * RAD, { rel: 1e-12 }, 'from');
    near(lining.to, 235 * RAD, { rel: 1e-12 }, 'to');
    near(lining.chamferArc, 8 * RAD, { rel: 1e-12 }, 'slope');
    near(lining.cutEdgeArc, 3.2 * RAD, { rel: 1e-12 }, 'edge');
    near(steel.tableArc[0], 121.5 * RAD, { rel: 1e-12 }, 'table');
    near(steel.tableArc[1], 238.5 * RAD, { rel: 1e-12 }, 'table');
    expect(rear.side).toBe('rear');
    expect(rear.anchor).toMatchObject({
      kind: 'abutment',
      heelRadius: 8,
      friction: 0.1,
      stiffness: 1e5,
    });
    near(rear.anchor.kind === 'abutment' ? rear.anchor.normal : 0, 30 * RAD, { rel: 1e-12 });
    near(brake().look.accessHole.along, 33 * RAD, { rel: 1e-12 }, 'hole');
  });

  it('letters stand for the middle of their band', () => {
    // F: 0.35 to 0.45 (SAE J866).
    near(read({ 'shoes.front.lining.friction': 'FF' }).shoes.front.lining.friction, 0.4, {
      abs: 1e-12,
    });
  });

  it('parking lever: towards its guide, or in its own direction', () => {
    // From (51, −41) by 3 to the left and 4 down.
    const guided = read({ 'parkingLever.cableGuide': [21, -81] }).parkingLever;
    expect(guided.pull).toEqual([-0.6, -0.8]);
    expect(guided.pullFrom).toEqual([21, -81]);
    const told = read({ 'parkingLever.pullDirection': 120 }).parkingLever;
    near(told.pull[0], -0.5, { abs: 1e-12 }, 'x');
    near(told.pull[1], Math.sqrt(0.75), { abs: 1e-12 }, 'y');
    near(told.pullFrom[0], 51 - 50000, { abs: 1e-6 }, 'from x');
    near(told.pullFrom[1], -41 + 1e5 * Math.sqrt(0.75), { abs: 1e-6 }, 'from y');
  });

  it('adjuster', () => {
    const { adjuster } = brake();
    expect(adjuster.lever).toMatchObject({ noseRadius: 12, window: { x: 4.4, y: 11 } });
    near(adjuster.lever?.startAngle ?? 0, 70 * RAD, { rel: 1e-12 }, 'start');
    near(adjuster.lever?.toothAngle ?? 0, 2.39 * RAD, { rel: 1e-12 }, 'tooth');
    expect(adjuster.spring).toEqual({ rate: 1.5, fitted: 15, at: [17.5, -1] });
    expect(adjuster.hotLock).toBe(Number.POSITIVE_INFINITY);
    // A nose of 12 turned on from 70° lets the strut out by 12·(cos 70° − cos(70° + n·2.39°)).
    const out = (n: number) => 12 * (Math.cos(70 * RAD) - Math.cos((70 + n * 2.39) * RAD));
    near(adjuster.growth[20] as number, out(20), { rel: 1e-9 }, 'growth');
    const { lever: _, spring: __, ...own } = quayScene().adjuster;
    const even = read({
      adjuster: { ...own, kind: 'incremental', pitch: 0.5, hotLock: 90, perApplication: 2 },
    }).adjuster;
    expect(even).toMatchObject({ lever: null, spring: null, hotLock: 90, perApplication: 2 });
    expect([even.growth[0], even.growth[4], even.growth.length]).toEqual([0, 2, 21]);
  });

  it('hydraulics: bars, and a knee that goes with the load', () => {
    const plain = brake().hydraulics;
    expect(plain).toMatchObject({
      booster: null,
      rearValve: null,
      circuits: null,
      residual: 0,
      rollBack: 0,
      masterStroke: 32,
    });
    const valve = (rearValve: object) =>
      read({ 'hydraulics.rearValve': rearValve }).hydraulics.rearValve;
    expect(valve({ kind: 'fixed', knee: 30, slope: 0.4 })).toEqual({ knee: 3, slope: 0.4 });
    // A quarter of the way from 20 to 60 bar.
    expect(valve({ kind: 'load', kneeEmpty: 20, kneeLaden: 60, load: 0.25, slope: 0.4 })).toEqual({
      knee: 3,
      slope: 0.4,
    });
    expect(read({ 'hydraulics.residualPressure': 0.5 }).hydraulics.residual).toBe(0.05);
  });

  it('vehicle and duties', () => {
    near(brake().vehicle.mass, 1.15, { rel: 1e-12 });
    // 0.54 N/(m/s)² as a default.
    near(brake().vehicle.air, 0.54e-6, { rel: 1e-12 });
    const { duties } = read({
      duties: [
        {
          name: 'A',
          mass: 1500,
          stops: [
            { speed: 36, pressure: 20, perKm: 1 },
            { name: 'soft', speed: 18, deceleration: 2.5, perKm: 2, reverse: 0.5 },
          ],
          descents: [{ slope: 8, length: 3, speed: 36, perKm: 0.1 }],
          parking: { cable: 300, perKm: 0.5, tightened: 2, rust: 5 },
          weather: [
            { surface: 'wet', share: 0.2, film: 20 },
            { surface: 'damp', share: 0.1 },
          ],
        },
        { name: 'B', heat: false, stops: [{ speed: 36, pressure: 20, perKm: 1 }] },
      ],
    });
    const [a, b] = duties;
    expect(a).toMatchObject({ name: 'A', about: '', heat: true, mass: 1.5 });
    expect(a?.stops).toEqual([
      {
        name: 'stop',
        speed: 36 * KMH,
        asked: { by: 'pressure', pressure: 2 },
        perKm: 1,
        reverse: 0,
      },
      {
        name: 'soft',
        speed: 18 * KMH,
        asked: { by: 'deceleration', deceleration: 2500 },
        perKm: 2,
        reverse: 0.5,
      },
    ]);
    expect(36 * KMH).toBeCloseTo(10000, 9);
    expect(a?.descents).toEqual([
      { name: 'descent', slope: 0.08, length: 3 * KM, speed: 36 * KMH, perKm: 0.1 },
    ]);
    // 2 mm in 1000 km; 5 µm of rust.
    expect(a?.parking).toEqual({ cable: 300, perKm: 0.5, tightened: 0.002, rust: 0.005 });
    expect(a?.weather).toEqual([
      { surface: 'wet', share: 0.2, film: 0.02 },
      { surface: 'damp', share: 0.1 },
    ]);
    expect(b).toMatchObject({ heat: false, mass: null, parking: null, descents: [], weather: [] });
  });

  it('heat, films and friction', () => {
    const { heat } = brake();
    // kg/m³ are 1e-12 t/mm³; J/(kg·K) are 1e6 N·mm/(t·K).
    near(heat.drum.density, 7150e-12, { rel: 1e-12 }, 'density');
    near(heat.drum.specificHeat, 460e6, { rel: 1e-12 }, 'heat');
    near(heat.lining.density, 2000e-12, { rel: 1e-12 }, 'density');
    near(heat.lining.specificHeat, 1000e6, { rel: 1e-12 }, 'heat');
    expect([heat.drum.conductivity, heat.lining.conductivity, heat.shoes]).toEqual([50, 0.5, null]);
    const { shoes } = read({ heat: { shoes: { loss: 0.7, capacity: 500 } } }).heat;
    expect(shoes).toMatchObject({
      capacity: 500e3,
      loss: 700,
      expansion: 12e-6,
      liningExpansion: 0,
    });
    // Left out, that of both shoes' steel: (0.62 + 0.5) kg of 480 J/(kg·K).
    const steel = read({ heat: { shoes: { loss: 0.7 } }, 'shoes.rear.mass': 0.5 }).heat.shoes;
    near(steel?.capacity ?? 0, 537.6e3, { rel: 1e-9 }, 'capacity');
    const glaze = { above: 200, below: 0.5, energy: 3, depth: 40 };
    const { films } = read({
      films: { water: { full: 50 }, rust: { full: 2, wearRate: 1e-5 }, glaze },
    });
    expect(films).toMatchObject({ water: { full: 0.05 }, rust: { full: 0.002, wearRate: 1e-5 } });
    expect(films.glaze).toEqual({ above: 200, below: 0.5, energy: 3000, depth: 0.04 });
    expect(brake().films.glaze).toBeNull();
    expect(brake().rubbing).toBeNull();
    const law = {
      pressureExponent: 0.9,
      speedExponent: -0.1,
      atPressure: 1,
      atSpeed: 36,
      source: 'x',
    };
    const { rubbing } = read({ frictionAgainstPressureAndSpeed: law });
    expect(rubbing).toEqual({ ...law, atSpeed: 36 * KMH });
    // A surface that the scene leaves out is as usual; its own stands.
    const { surfaces } = read({
      frictionOfSurfaces: { wet: { factorAgainstTemperature: [[20, 0.3]], source: 'own' } },
    });
    expect(surfaces.wet).toEqual({ table: [[20, 0.3]], source: 'own' });
    expect(surfaces.damp.source).not.toBe('own');
  });

  it('start of both wheels, and states', () => {
    expect(brake().otherStart).toBeNull();
    const uneven = { toe: 0.1, heel: 0.3 };
    const { otherStart } = read({
      otherWheel: {
        tooth: 2,
        drumDiameter: 200.4,
        wear: { front: uneven, rear: { ...uneven, middle: 0.4 } },
      },
    });
    expect(otherStart).toMatchObject({
      tooth: 2,
      drumRadius: 100.2,
      temperature: 20,
      leverOffStop: 0,
    });
    // The middle lies halfway where nobody tells it.
    expect(otherStart?.wear).toEqual({
      front: { ...uneven, middle: 0.2 },
      rear: { ...uneven, middle: 0.4 },
    });
    const { states } = read({
      states: [
        { name: 'A', until: 'distance', distance: 5, more: 2, drumDiameter: 200.2 },
        { name: 'B', until: 'click', click: 3, less: 2, round: 10 },
        { name: 'C', until: 'worn', share: 0.5 },
        { name: 'D', until: 'drum limit' },
      ],
    });
    expect(states).toEqual([
      {
        name: 'A',
        drumRadius: 100.1,
        until: { kind: 'distance', distance: 5 * KM },
        beyond: 2 * KM,
        round: 0,
      },
      {
        name: 'B',
        drumRadius: null,
        until: { kind: 'click', click: 3 },
        beyond: -2 * KM,
        round: 10 * KM,
      },
      { name: 'C', drumRadius: null, until: { kind: 'worn', share: 0.5 }, beyond: 0, round: 0 },
      { name: 'D', drumRadius: null, until: { kind: 'drum limit' }, beyond: 0, round: 0 },
    ]);
  });
});

describe('what bears the strut', () => {
  const found = (changes: Readonly<Record<string, unknown>>) =>
    unbearable(read(changes)).map(({ path }) => path);
  it('is told by the size that cannot be', () => {
    expect(found({})).toEqual([]);
    expect(found({ strutPath: undefined })).toEqual([]);
    // The bar is 12 wide and its strut 103.2 long.
    expect(found({ 'strutPath.bar.slotWidth': 11.9 })).not.toContain('strutPath.bar.slotWidth');
    expect(found({ 'strutPath.bar.slotWidth': 12 })).toEqual(['strutPath.bar.slotWidth']);
    expect(found({ 'strutPath.bar.slotLength': 103.1 })).not.toContain('strutPath.bar.slotLength');
    expect(found({ 'strutPath.bar.slotLength': 103.2 })).toEqual(['strutPath.bar.slotLength']);
    expect(found({ 'strutPath.yield': 1 })).toContain('strutPath.yield');
    // A lever of a hair gives by more than a thousandth of a millimetre for each newton.
    expect(found({ 'strutPath.parkingLever.depth': 0.5 })).toContain('strutPath.parkingLever');
    expect(found({ 'strutPath.lever.depth': 0.5 })).toContain('strutPath.lever');
    expect(found({ 'strutPath.pins.diameter': 0.5 })).toContain('strutPath.pins');
  });
  it('is a finding of the whole file', () => {
    const result = readScene(scene({ 'strutPath.bar.slotWidth': 12 }));
    expect(result.ok ? [] : result.findings).toMatchObject([
      { path: 'strutPath.bar.slotWidth', found: '12 mm' },
    ]);
  });
  it('pins stand in the plate that the scene has, 3 mm as usual', () => {
    expect(read().strutPath?.pins).toMatchObject({ diameter: 9.2, plate: 3 });
    expect(read({ 'across.plate': 2 }).strutPath?.pins?.plate).toBe(2);
    expect(
      read({ 'strutPath.pins': undefined, 'strutPath.lever': undefined }).strutPath,
    ).toMatchObject({ pins: null, lever: null });
  });
});

describe('what is told of a file', () => {
  it('a finding in one line, with its reason where it has one', () => {
    const finding = { path: 'drum.rim', found: '60 mm', allowed: 'at most 50 mm' };
    const bare = tellFinding(finding);
    expect(bare).toMatch(/drum\.rim.*60 mm.*at most 50 mm/);
    expect(tellFinding({ ...finding, reason: 'why' })).toBe(`${bare}. why`);
  });
  it('a hundred findings whole, of more a hundred and how many', () => {
    const some = (n: number) =>
      Array.from({ length: n }, (_, i) => ({ path: `${i}`, found: '', allowed: '' }));
    expect(few(some(100))).toHaveLength(100);
    expect(few(some(103))).toHaveLength(101);
    expect(few(some(103)).at(-1)?.found).toMatch(/^3 more/);
  });
  it('long values are cut at sixty letters', () => {
    const told = (wheel: string) => {
      const result = readScene(scene({ wheel }));
      return result.ok ? '' : result.findings[0]?.found;
    };
    // With its quotation marks 60 and 61.
    expect(told('x'.repeat(58))).toBe(`"${'x'.repeat(58)}"`);
    expect(told('x'.repeat(59))).toBe(`"${'x'.repeat(56)}…`);
  });
  it('no JSON, and a version that is not there', () => {
    const text = readSceneText('{');
    expect(text.ok ? [] : text.findings.map((f) => [f.path, f.allowed])).toEqual([
      ['(file)', 'JSON'],
    ]);
    const newer = readScene(scene({ version: 3 }));
    expect(newer.ok ? [] : newer.findings.map((f) => f.path)).toEqual(['version']);
    expect(mustRead(scene({ version: 2 })).name).toBe('quay-van');
  });
  it('the nearest word that there is, at most a third of its letters apart', () => {
    expect(nearest('diametreNew', ['diameterMax', 'diameterNew'])).toBe('diameterNew');
    expect(nearest('borre', ['stroke', 'bore'])).toBe('bore');
    expect(nearest('ROUND', ['round', 'rounded'])).toBe('round');
    expect(nearest('rounded', ['round', 'less'])).toBe('round');
    // Swapped neighbours are one change, two letters of six are a third, three are not.
    expect(nearest('ab', ['ba'])).toBe('ba');
    expect(nearest('abcdef', ['abcdxy'])).toBe('abcdxy');
    expect(nearest('abcdef', ['abcxyz'])).toBeNull();
    // A part of a word, from three letters on.
    expect(nearest('lin', ['liningFriction'])).toBe('liningFriction');
    expect(nearest('li', ['liningFriction'])).toBeNull();
    expect(nearest('xyz', [])).toBeNull();
  });
});

describe('sizes of a scene', () => {
  const read1 = readScene(quayScene());
  if (!read1.ok) throw new Error('the quay van is read');
  const given = read1.scene;
  const listed = () => sizesOf(given);
  const of = (id: string) => {
    const found = listed().find((s) => s.id === id);
    if (!found) throw new Error(id);
    return found;
  };
  it('each with its value, unit and bounds; none of what has nothing to do with forces', () => {
    expect(of('drum.diameterNew')).toMatchObject({
      value: 200,
      unit: 'mm',
      range: [0, 1000],
      whole: false,
    });
    expect(of('adjuster.teeth')).toMatchObject({
      value: 20,
      unit: '',
      range: [1, 2000],
      whole: true,
    });
    expect(of('drum.wearRate')).toMatchObject({ value: 3e-9, unit: 'mm²/N', range: [0, 1e-3] });
    expect(of('cylinder.at.1')).toMatchObject({ value: 78, unit: 'mm', range: [-1000, 1000] });
    expect(of('cylinder.at.1').name).toMatch(/, upward$/);
    expect(of('adjuster.lever.window.0').unit).toBe('mm');
    expect(new Set(listed().map((s) => s.id)).size).toBe(listed().length);
    const all = listed()
      .map((s) => s.id)
      .join(' ');
    expect(all).not.toMatch(/\b(version|duties|states|start|look|webHoles|films)\b/);
    expect(all).not.toMatch(/frictionAgainstTemperature|frictionOfSurfaces/);
  });
  it('of both shoes together where they are alike or each other’s mirror image', () => {
    expect(of('shoes.lining.width').at.map(({ path, sign }) => [path.join('.'), sign])).toEqual([
      ['shoes.front.lining.width', 1],
      ['shoes.rear.lining.width', 1],
    ]);
    expect(of('shoes.toe.0').at.map(({ sign }) => sign)).toEqual([1, -1]);
    // Seats at −59.2 and 45 are neither.
    expect(listed().some((s) => s.id === 'shoes.strutSeat.0')).toBe(false);
    expect(of('shoes.rear.strutSeat.0').value).toBe(45);
    const ids = listed().map((s) => s.id);
    expect(ids.indexOf('shoes.lining.width')).toBe(ids.indexOf('shoes.front.lining.width') - 1);
  });
  it('are set, both at once and mirrored, and asked', () => {
    const wide = withSize(given, of('shoes.lining.width'), 40) as typeof given;
    expect([wide.shoes.front.lining.width, wide.shoes.rear.lining.width]).toEqual([40, 40]);
    expect(given.shoes.front.lining.width).toBe(32);
    const toes = withSize(given, of('shoes.toe.0'), -30) as typeof given;
    expect([toes.shoes.front.toe, toes.shoes.rear.toe]).toEqual([
      [-30, 78],
      [30, 78],
    ]);
    expect(sizeIn(toes, of('shoes.toe.0'))).toBe(-30);
    expect(sizeIn(wide, of('shoes.rear.lining.width'))).toBe(40);
    expect(sizeIn({}, of('shoes.rear.lining.width'))).toBeNaN();
    expect(sizeIn({ shoes: null }, of('shoes.rear.lining.width'))).toBeNaN();
    expect(wide.shoes.front.steel).toBe(given.shoes.front.steel);
  });
});
