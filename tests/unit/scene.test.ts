import { describe, expect, it } from 'vitest';
import {
  adjusterKinds,
  type Finding,
  freshState,
  kindLaws,
  readScene,
  readSceneText,
  startState,
} from '../../sim/index.ts';
import { quayScene } from '../brakes.ts';

type Loose = { [key: string]: Loose } & { [key: number]: Loose };

/** Findings of the first teaching brake with changes. */
function findings(change: (scene: Loose) => void): readonly Finding[] {
  const scene = quayScene() as unknown as Loose;
  change(scene);
  const result = readScene(scene);
  return result.ok ? [] : result.findings;
}
const put = (value: unknown): Loose => value as Loose;

describe('a scene file', () => {
  it('reads into a brake that nobody can change', () => {
    const result = readScene(quayScene());
    if (!result.ok) throw new Error('not read');
    const seen: unknown[] = [];
    const walk = (value: unknown): void => {
      if (value === null || typeof value !== 'object' || seen.includes(value)) return;
      seen.push(value);
      expect(Object.isFrozen(value)).toBe(true);
      for (const inner of Object.values(value)) walk(inner);
    };
    walk(result.brake);
    expect(seen.length).toBeGreaterThan(40);
  });

  it('refuses many faults at once, each with its path, what was found and what is allowed', () => {
    const found = findings((s) => {
      s['paint'] = put('red');
      (s['drum'] as Loose)['colour'] = put(1);
      (s['drum'] as Loose)['rim'] = put('ten');
      delete (s['cylinder'] as Loose)['bore'];
      (s['vehicle'] as Loose)['mass'] = put(-5);
      s['wheel'] = put('middle');
      (s['shoes']?.['front'] as Loose)['toe'] = put([1]);
    });
    const by = Object.fromEntries(found.map((f) => [f.path, f]));
    expect(by['paint']?.found).toBe('an unknown key');
    expect(by['drum.colour']?.found).toBe('an unknown key');
    expect(by['drum.rim']).toMatchObject({ found: '"ten"', allowed: 'a number' });
    expect(by['cylinder.bore']).toMatchObject({ found: 'nothing' });
    expect(by['vehicle.mass']).toMatchObject({ found: '-5', allowed: 'more than 0' });
    expect(by['wheel']).toMatchObject({ found: '"middle"', allowed: 'left or right' });
    expect(Object.keys(by).some((path) => path.startsWith('shoes.front.toe'))).toBe(true);
  });

  it('starts the brake as it says, and new where it says nothing', () => {
    const told = { ...quayScene() } as Record<string, unknown>;
    told['start'] = {
      tooth: 3,
      drumDiameter: 200.3,
      wear: { front: 1.2, rear: 0.4 },
      temperature: 60,
      leverOffStop: 2,
    };
    const read = readScene(told);
    if (!read.ok) throw new Error('not read');
    const start = startState(read.brake);
    expect(start).toMatchObject({ tooth: 3, drumRadius: 100.15, temperature: 60, leverOffStop: 2 });
    expect([...start.wear.front].every((w) => w === 1.2)).toBe(true);
    expect([...start.wear.rear].every((w) => w === 0.4)).toBe(true);
    delete told['start'];
    const silent = readScene(told);
    if (!silent.ok) throw new Error('not read');
    expect(startState(silent.brake)).toEqual(freshState(silent.brake));
  });

  const impossible: readonly (readonly [string, string, (s: Loose) => void])[] = [
    [
      'a lining outside the drum',
      'shoes.rear.lining.groundRadius',
      (s) => {
        (s['shoes']?.['rear']?.['lining'] as Loose)['groundRadius'] = put(120);
      },
    ],
    [
      'a start on a tooth that is not there',
      'start.tooth',
      (s) => {
        (s['start'] as Loose)['tooth'] = put(21);
      },
    ],
    [
      'a start in a drum smaller than new',
      'start.drumDiameter',
      (s) => {
        (s['start'] as Loose)['drumDiameter'] = put(199);
      },
    ],
    [
      'a start with a lining worn away',
      'start.wear.rear',
      (s) => {
        (s['start'] as Loose)['wear'] = put({ front: 0, rear: 4.5 });
      },
    ],
    [
      'an arc that runs backwards',
      'shoes.front.lining.to',
      (s) => {
        (s['shoes']?.['front']?.['lining'] as Loose)['to'] = put(100);
      },
    ],
    [
      'teeth that run backwards',
      'adjuster.lever.toothAngle',
      (s) => {
        (s['adjuster']?.['lever'] as Loose)['toothAngle'] = put(-2.39);
      },
    ],
    [
      'teeth past the top',
      'adjuster.lever.toothAngle',
      (s) => {
        (s['adjuster']?.['lever'] as Loose)['toothAngle'] = put(8);
      },
    ],
    [
      'a spring of no length',
      'springs.0.ends',
      (s) => {
        (s['springs']?.[0]?.['ends']?.[1] as Loose)['at'] = put([-58, 61]);
      },
    ],
    [
      'a spring on one part only',
      'springs.1.ends',
      (s) => {
        (s['springs']?.[1]?.['ends']?.[1] as Loose)['on'] = put('front');
      },
    ],
    [
      'a strut that cannot lie between its seats',
      'adjuster.lengthAtZero',
      (s) => {
        (s['adjuster'] as Loose)['lengthAtZero'] = put(130);
      },
    ],
    [
      'a limit above the new lining',
      'shoes.rear.lining.thicknessMin',
      (s) => {
        (s['shoes']?.['rear']?.['lining'] as Loose)['thicknessMin'] = put(5);
      },
    ],
    [
      'a toe outside the drum',
      'shoes.rear.toe',
      (s) => {
        (s['shoes']?.['rear'] as Loose)['toe'] = put([90, 78]);
      },
    ],
    [
      'a piston that cannot turn its shoe',
      'shoes.rear.toe',
      (s) => {
        (s['shoes']?.['rear'] as Loose)['toe'] = put([27.5, -75]);
      },
    ],
    [
      'a drum whose limit is under its size',
      'drum.diameterMax',
      (s) => {
        (s['drum'] as Loose)['diameterMax'] = put(199);
      },
    ],
    [
      'a table that does not rise',
      'frictionAgainstTemperature.1.0',
      (s) => {
        (s['frictionAgainstTemperature']?.[1] as Loose)[0] = put(100);
      },
    ],
    [
      'a surface’s table that does not rise',
      'frictionOfSurfaces.wet.factorAgainstTemperature.1.0',
      (s) => {
        const table = s['frictionOfSurfaces']?.['wet']?.['factorAgainstTemperature'];
        (table?.[1] as Loose)[0] = put(90);
      },
    ],
    [
      'a standing state beyond the drum’s limit',
      'states.5.drumDiameter',
      (s) => {
        (s['states']?.[5] as Loose)['drumDiameter'] = put(205);
      },
    ],
    [
      'a standing state at a click past the last tooth',
      'states.2.click',
      (s) => {
        (s['states']?.[2] as Loose)['click'] = put(21);
      },
    ],
    [
      'a standing state both before and beyond',
      'states.2.more',
      (s) => {
        (s['states']?.[2] as Loose)['more'] = put(5);
      },
    ],
    [
      'a first duty whose stop has no pressure to ask for',
      'duties.0.stops.0.deceleration',
      (s) => {
        const stop = s['duties']?.[0]?.['stops']?.[0] as Partial<Loose>;
        delete stop['pressure'];
        stop['deceleration'] = put(2);
      },
    ],
  ];
  for (const [name, path, change] of impossible) {
    it(`refuses ${name}`, () => {
      const found = findings(change);
      expect(found.map((f) => f.path)).toContain(path);
      for (const f of found) {
        expect(f.found.length).toBeGreaterThan(0);
        expect(f.allowed.length).toBeGreaterThan(0);
      }
    });
  }

  it.each(adjusterKinds)('a %s has its own parts and no other’s', (kind) => {
    const own = quayScene().adjuster;
    const even = {
      kind,
      lengthAtZero: own.lengthAtZero,
      lostMotion: own.lostMotion,
      teeth: 20,
      pitch: 0.5,
    };
    const wrong = (adjuster: unknown): readonly Finding[] =>
      findings((s) => {
        s['adjuster'] = put(adjuster);
      });
    expect(wrong(even)).toEqual([]);
    const { pitch, ...levered } = { ...even, lever: own.lever };
    expect(pitch).toBe(0.5);
    if (kindLaws[kind].toothedLever) {
      expect(wrong(levered)).toEqual([]);
      // Growth told twice may be told differently.
      expect(wrong({ ...levered, pitch }).map((f) => f.path)).toEqual(['adjuster.pitch']);
    } else {
      const found = wrong({ ...levered, pitch });
      expect(found).toEqual([
        { path: 'adjuster.lever', found: 'an unknown key', allowed: `no lever in a ${kind}` },
      ]);
    }
  });

  it('an unknown key is told the nearest that there is, or all', () => {
    const found = findings((s) => {
      const drum = s['drum'] as Loose;
      drum['diametreNew'] = put(200);
      drum['heatcapacity'] = put(1);
      (drum['cooling'] as Loose)['paint'] = put(1);
      (s['cylinder'] as Loose)['borre'] = put(19);
      (s['states']?.[1] as Loose)['rounded'] = put(1);
    });
    const by = Object.fromEntries(found.map((f) => [f.path, f.allowed]));
    expect(by['drum.diametreNew']).toMatch(/nearest is diameterNew$/);
    expect(by['drum.heatcapacity']).toMatch(/nearest is heatCapacity$/);
    expect(by['drum.cooling.paint']).toBe('only the keys of the format: still, perKmh');
    expect(by['cylinder.borre']).toMatch(/nearest is bore$/);
    expect(by['states.1.rounded']).toMatch(/nearest is round$/);
  });

  it('may name its schema for an editor, and says nothing by it', () => {
    const { $schema, ...bare } = quayScene();
    expect($schema).toBe('./scene.schema.json');
    const [with_, without] = [readScene({ ...bare, $schema }), readScene(bare)];
    if (!with_.ok || !without.ok) throw new Error('not read');
    expect(with_.brake).toEqual(without.brake);
    const wrong = findings((s) => {
      s['$schema'] = put(3);
    });
    expect(wrong.map((f) => f.path)).toEqual(['$schema']);
  });

  it('tells which kinds of adjuster there are', () => {
    const found = findings((s) => {
      (s['adjuster'] as Loose)['kind'] = put('zip');
    });
    const [first] = found;
    expect(first?.path).toBe('adjuster.kind');
    for (const kind of adjusterKinds) expect(first?.allowed).toContain(kind);
  });

  it('refuses numbers that are not finite', () => {
    const text = JSON.stringify(quayScene()).replace('"rim":10', '"rim":1e999');
    const result = readSceneText(text);
    expect(result.ok).toBe(false);
    if (!result.ok) expect(result.findings[0]?.path).toBe('drum.rim');
  });

  it('refuses what is no JSON, nothing at all, and a list, without throwing', () => {
    for (const text of ['', '{', 'null', '[]', '"brake"', '{"format":"other"}']) {
      const result = readSceneText(text);
      expect(result.ok, text).toBe(false);
      if (!result.ok) expect(result.findings.length).toBeGreaterThan(0);
    }
  });
});
