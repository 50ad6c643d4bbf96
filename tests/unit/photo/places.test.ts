import { beforeAll, describe, expect, it } from 'vitest';
import {
  createRig,
  freshState,
  gapsOf,
  type OwnAnswers,
  type OwnSeen,
  ownAnswers,
  ownScene,
  type PlaceKey,
  placeKeys,
  readScene,
  rest,
  type Scene,
  toReference,
  varianceOf,
} from '../../../sim/index.ts';
import type { OwnPhoto } from '../../../ui/record/own-photo.ts';
import type { OwnBrake } from '../../../ui/record/shelf.ts';
import { nameOf, proposed, readPhoto } from '../../../ui/stations/own/photo/read-photo.ts';
import { teachingScenes } from '../../../ui/stations/own/read.ts';
import { loadReader } from '../../../ui/typed-size.ts';
import { near } from '../../near.ts';
import { cases, isEnd, type PhotoCase, pointNamed, tapsOf } from './cases.ts';

beforeAll(loadReader);

const words = { name: 'own', title: 'Own', about: 'a', source: 'b' };
const sceneOf = (name: string): Scene => {
  const found = teachingScenes().find((s) => s.name === name);
  if (!found) throw new Error(name);
  return found;
};
const of = (name: string): PhotoCase => cases.find((c) => c.name === name) as PhotoCase;
const ends: Readonly<Record<string, PlaceKey>> = {
  linFA: 'endFA',
  linFB: 'endFB',
  linRA: 'endRA',
  linRB: 'endRB',
};
const keyOf = (name: string): PlaceKey => ends[name] ?? (pointNamed(name) as PlaceKey);

const placesOf = (all: PhotoCase['atRest']) =>
  Object.fromEntries(Object.entries(all).map(([name, at]) => [keyOf(name), at]));

const ownOf = (c: PhotoCase): OwnBrake => {
  const base = sceneOf(c.scene);
  return { name: 'own-a', title: 'Mine', base, texts: {}, sizes: {} };
};
/** A case as it is typed and tapped. */
const photoOf = (c: PhotoCase): OwnPhoto => {
  const { diameterNew } = sceneOf(c.scene).drum;
  const off = c.known.depth.edge - sceneOf(c.scene).shoes.front.lining.width;
  return {
    width: c.picture.width,
    height: c.picture.height,
    wheel: c.mirrored ? 'right' : 'left',
    texts: {
      across: c.known.liningDiameter.toFixed(2),
      plate: c.known.plateDiameter?.toFixed(1) ?? '',
      liningOff: off.toFixed(1),
      drumNow: diameterNew.toFixed(2),
    },
    taps: tapsOf(c),
    unseen: [],
    seen: null,
  };
};
const answers = (scene: Scene): OwnAnswers => {
  const a = ownAnswers(scene, 40);
  if (!a) throw new Error('answers');
  return a;
};

describe('places of one’s own brake', () => {
  it.each(cases.map((c) => [c.name, c] as const))(
    '%s: turned out to the reference pose',
    (_, c) => {
      const got = toReference(placesOf(c.atRest), c.known.clearance);
      for (const [name, at] of Object.entries(c.inReferencePose)) {
        const [x, y] = got[keyOf(name)] ?? [Number.NaN, Number.NaN];
        near(Math.hypot(x - at[0], y - at[1]), 0, { abs: 0.002 }, name);
      }
    },
  );

  it('true places give the teaching brake again, with the clearance that was measured', () => {
    for (const c of [of('usual'), of('from further, 2x lens'), of('no focal length in the file')]) {
      const base = sceneOf(c.scene);
      const places = toReference(placesOf(c.atRest), c.known.clearance);
      const seen = { places, clearance: c.known.clearance, plateRadius: null };
      const made = ownScene(base, {}, words, seen);
      near(answers(made).factor, answers(base).factor, { rel: 1e-4 }, c.scene);
      near(answers(made).ratio, answers(base).ratio, { rel: 2e-3 }, `${c.scene} lever`);
      const read = readScene(made);
      if (!read.ok) throw new Error('a brake');
      const still = rest(createRig(read.brake), freshState(read.brake));
      for (const side of ['front', 'rear'] as const) {
        const { centre } = gapsOf(read.brake.shoes[side], still.shoes[side]);
        near(centre, c.known.clearance, { abs: 0.002 }, `${c.scene} ${side}`);
      }
    }
  });

  it('what is not seen keeps the proportions, laid by heel and toe', () => {
    // Turned by 2° about the axis and 3 % larger, heel and toe say so; the seat follows alike.
    const base = sceneOf('quay-van');
    const a = Math.PI / 90;
    const moved = ([x, y]: readonly [number, number]): [number, number] => [
      1.03 * (x * Math.cos(a) - y * Math.sin(a)),
      1.03 * (x * Math.sin(a) + y * Math.cos(a)),
    ];
    const { anchor, toe, strutSeat } = base.shoes.front;
    const places = { heelF: moved(anchor.at), toeF: moved(toe) };
    const { shoes } = ownScene(base, {}, words, { places, clearance: null, plateRadius: null });
    const slid = shoes.front.strutSeat;
    near(slid[1], moved(strutSeat)[1], { abs: 1e-9 }, 'height of the seat');
    const hold = moved(base.shoes.front.holdDown.at);
    near(shoes.front.holdDown.at[0], hold[0], { abs: 1e-9 }, 'hold-down x');
    near(shoes.front.holdDown.at[1], hold[1], { abs: 1e-9 }, 'hold-down y');
    // Of the other shoe two places alone move: its seat with the strut, its toe with the pistons' one axis.
    const axis = (moved(toe)[1] + base.shoes.rear.toe[1]) / 2;
    near(shoes.rear.toe[1], axis, { abs: 1e-9 }, 'axis of the pistons');
    const { strutSeat: seat, toe: other } = shoes.rear;
    expect(shoes.rear).toEqual({ ...base.shoes.rear, strutSeat: seat, toe: other });
  });

  it('a size that was measured counts before the picture', () => {
    const base = sceneOf('quay-van');
    const places = { heelF: [-20, -75], heelR: [20, -75], pivot: [47, 70] } as const;
    const seen: OwnSeen = { places, clearance: null, plateRadius: 104 };
    const made = ownScene(base, { pinsApart: 33, leverNotch: 15 }, words, seen);
    expect(made.shoes.front.anchor.at).toEqual([-16.5, -75]);
    near(
      made.parkingLever.pivot[1] - made.shoes.rear.strutSeat[1],
      15,
      { abs: 1e-9 },
      'lever by caliper',
    );
    expect(made.look.plateRadius).toBe(104);
  });
});

describe('taps to a brake', () => {
  it.each(cases.map((c) => [c.name, c] as const))('%s: as the page reads it', (_, c) => {
    const own = ownOf(c);
    const photo = photoOf(c);
    const read = readPhoto(own, photo);
    expect(read.wrong).toEqual({});
    expect(read.findings).toEqual([]);
    for (const [name, truth] of Object.entries(c.atRest)) {
      if (isEnd(name) || c.tolerance.except?.includes(name)) continue;
      const place = read.places.get(pointNamed(name));
      if (!place) throw new Error(name);
      // Depths are those typed and the base's: up to 3 mm off those of the case, at most 0.5 mm a place.
      const off = Math.hypot(place.at[0] - truth[0], place.at[1] - truth[1]);
      expect(off, name).toBeLessThan(c.tolerance.positionMm + 0.5);
    }
    if (!read.seen) throw new Error('places');
    // Measured on 200 such pictures each: the factor to 1.5 to 2.3 %, the lever's ratio to 10 % (95 of 100);
    // without the rim places are half as far off again.
    const made = ownScene(own.base, {}, words, read.seen);
    const rel = c.known.plateDiameter ? 0.025 : 0.035;
    near(answers(made).factor, answers(own.base).factor, { rel }, 'factor');
    near(answers(made).ratio, answers(own.base).ratio, { rel: 0.12 }, 'ratio');
  });

  it('a slipped tap is told by its pair, and does not go into the brake', () => {
    const read = readPhoto(
      ownOf(of('a spring hole mistaken')),
      photoOf(of('a spring hole mistaken')),
    );
    const [suspect] = read.fit?.suspects ?? [];
    expect(suspect && nameOf(suspect.name)).toBe('Upper spring, leading hole');
    expect(read.seen?.places.upperF).toBe(undefined);
    expect(read.seen?.places.upperR).toBe(undefined);
    expect(read.seen?.places.lowerF).toBeDefined();
  });

  it('a partner is proposed as the mirror image', () => {
    for (const name of ['usual', 'right-hand wheel']) {
      const c = of(name);
      const photo = photoOf(c);
      const { heelR: truth, ...taps } = photo.taps;
      const less = { ...photo, taps };
      const at = proposed(less, readPhoto(ownOf(c), less), 'heelR');
      if (!at || !truth) throw new Error('a proposal');
      // 4 to 5 px a millimetre, parts' own mirror images 0.6 mm off, taps 2 px.
      expect(Math.hypot(at[0] - truth[0], at[1] - truth[1]), name).toBeLessThan(15);
    }
  });

  it('sizes that cannot be are told at their field, and nothing lies', () => {
    const c = of('usual');
    const photo = photoOf(c);
    const wide = readPhoto(ownOf(c), { ...photo, texts: { ...photo.texts, across: '203' } });
    expect(wide.wrong.across).toMatch(/found 203.00 mm in a drum of 200.00 mm; allowed/);
    expect(wide.fit).toBe(null);
    const word = readPhoto(ownOf(c), { ...photo, texts: { ...photo.texts, plate: 'big' } });
    expect(word.wrong.plate).toMatch(/found "big"; allowed/);
  });

  it('too few taps lie nowhere yet; neither rim nor hub neither', () => {
    const c = of('usual');
    const photo = photoOf(c);
    const only = (keep: (id: string) => boolean): OwnPhoto => ({
      ...photo,
      taps: Object.fromEntries(Object.entries(photo.taps).filter(([id]) => keep(id))),
    });
    expect(
      readPhoto(
        ownOf(c),
        only((id) => /edge[FR][12]/.test(id) || id === 'hub'),
      ).fit,
    ).toBe(null);
    expect(
      readPhoto(
        ownOf(c),
        only((id) => id.startsWith('edge')),
      ).fit,
    ).toBe(null);
    expect(
      readPhoto(
        ownOf(c),
        only((id) => id.startsWith('edge') || id === 'hub'),
      ).fit,
    ).not.toBe(null);
  });

  it('the band of the factor is that of random draws', () => {
    // Places drawn at random from their own covariances, 60 times, against the law of propagation.
    const c = of('usual');
    const own = ownOf(c);
    const read = readPhoto(own, photoOf(c));
    const { seen } = read;
    if (!seen) throw new Error('places');
    const make = (s: OwnSeen): Scene => ownScene(own.base, {}, words, s);
    let variance = 0;
    for (const [key, spread] of read.spreads) {
      variance += varianceOf(make, seen, key, spread, 40)?.factor ?? Number.NaN;
    }
    // A linear congruential generator and the sum of twelve: deviation 1 (Knuth, TAOCP 2, 3.4.1).
    let seed = 20261128;
    const chance = (): number => {
      seed = (seed * 1664525 + 1013904223) % 4294967296;
      return seed / 4294967296;
    };
    const normal = (): number => Array.from({ length: 12 }, chance).reduce((s, x) => s + x, -6);
    const drawn: number[] = [];
    for (let n = 0; n < 60; n++) {
      const places: Partial<Record<PlaceKey, readonly [number, number]>> = { ...seen.places };
      for (const key of placeKeys) {
        const at = seen.places[key];
        const spread = read.spreads.get(key);
        if (!at || !spread) continue;
        const [xx, xy, yy] = spread;
        const a = normal() * Math.sqrt(xx);
        const b = (a * xy) / xx + normal() * Math.sqrt(yy - (xy * xy) / xx);
        places[key] = [at[0] + a, at[1] + b];
      }
      const told = ownAnswers(make({ ...seen, places }), 40);
      if (told) drawn.push(told.factor);
    }
    expect(drawn.length).toBeGreaterThan(50);
    const mean = drawn.reduce((s, x) => s + x, 0) / drawn.length;
    const found = drawn.reduce((s, x) => s + (x - mean) * (x - mean), 0) / (drawn.length - 1);
    // Of 60 draws a deviation is known to 1/√(2·59), 9 %; two of that and as much for what is not linear.
    near(Math.sqrt(variance), Math.sqrt(found), { rel: 0.3 }, 'deviation of the factor');
  });
});
