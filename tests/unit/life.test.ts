import { describe, expect, it } from 'vitest';
import {
  type BrakeState,
  balance,
  createLife,
  createRig,
  descended,
  driveLife,
  excess,
  gapsOf,
  KM,
  KMH,
  type Life,
  type LifeOptions,
  lifeAt,
  rest,
  SOUND,
  standingState,
  swapShoes,
  wearOn,
  withAdjuster,
  withReverse,
} from '../../sim/index.ts';
import { eventText } from '../../sim/workshop/index.ts';
import { quay } from '../brakes.ts';
import { near } from '../near.ts';

/**
 * Lives of the first teaching brake against the teaching tables. Wear there runs about 0.8 %
 * faster than the closed fixed point allows (see the teaching brake's own tests), so distances are given
 * its 1 % and that.
 */
const { rig, brake, state: fresh } = quay();
const [plain] = brake.duties;
if (!plain) throw new Error('the scene has a plain duty');
const LIFE = { rel: 0.018 };
const drive = (options: LifeOptions = {}, state = fresh, duty = plain): Life =>
  driveLife(rig, state, duty, options);
const kmOf = (l: Life, kind: string): number[] =>
  l.events.filter((e) => e.kind === kind).map((e) => e.distance / KM);
const last = (l: Life) => {
  const row = l.rows.at(-1);
  if (!row) throw new Error('a life has rows');
  return row;
};
const ill = (change: Partial<BrakeState['condition']>, s = fresh): BrakeState => ({
  ...s,
  condition: { ...SOUND, ...change },
});
const duty = (name: string) => {
  const found = brake.duties.find((d) => d.name === name);
  if (!found) throw new Error(name);
  return found;
};

describe('a life to the limit', () => {
  const whole = drive();

  it('ends at the leading lining’s limit, on tooth 15', () => {
    expect(whole.end).toBe('lining limit');
    expect(whole.events.at(-1)?.side).toBe('front');
    near(whole.distance / KM, 59500, LIFE, 'km');
    expect(whole.state().tooth).toBe(15);
    near(last(whole).liningFront, 1.5, { abs: 0.001 }, 'leading');
    near(last(whole).liningRear, 3.47, { abs: 0.02 }, 'trailing');
    near(2 * last(whole).drumRadius, 200.5, { abs: 0.01 }, 'drum');
    // The unworn edge stands out by what the bore has worn: 0.25 on radius.
    near(last(whole).lip, 0.25, { abs: 0.005 }, 'lip');
    expect(whole.progress).toBe(1);
  });

  it('has a row before and a row after each click, at one distance, the sawtooth upright', () => {
    const clicks = whole.events.filter((e) => e.kind === 'click');
    expect(clicks.length).toBe(15);
    for (const click of clicks) {
      const pair = whole.rows.filter((r) => r.distance === click.distance && r.at !== 'run');
      expect(pair.map((r) => r.at)).toEqual(['before click', 'after click']);
      expect(pair[1]?.tooth).toBe(click.tooth);
      near(pair[0]?.clearance ?? 0, 0.42, { abs: 0.02 }, 'before');
      near(pair[1]?.clearance ?? 0, 0.27, { abs: 0.02 }, 'after');
    }
  });

  it('every event gives its moment back', () => {
    for (const e of whole.events) {
      expect(e.state.distance).toBe(e.distance);
      expect(e.state.tooth).toBe(e.tooth);
    }
    const click = whole.events[3];
    if (!click) throw new Error('a fourth click');
    // The next press there does not step again: it has just stepped.
    const i = balance(rig, click.state, { pressure: 2, turning: 1 });
    near(i.separation - i.strutLength, 0.9, { abs: 0.02 }, 'play after the click');
  });

  it('can be taken up anywhere along its rows', () => {
    const [a, b] = [whole.rows[20], whole.rows[21]];
    if (!a || !b) throw new Error('rows');
    const between = lifeAt(whole.rows, (a.distance + b.distance) / 2);
    near(between?.drumRadius ?? 0, (a.drumRadius + b.drumRadius) / 2, { rel: 1e-12 }, 'drum');
    expect(lifeAt(whole.rows, 0)?.tooth).toBe(0);
    expect(lifeAt(whole.rows, 1e12)?.tooth).toBe(15);
    // Driven on from a state in the middle it ends where the whole one ended.
    const half = drive({}, lifeAt(whole.rows, 30000 * KM) ?? fresh);
    near(half.distance, whole.distance, { rel: 1e-3 });
  });

  it('does not depend on the pieces it is driven in', () => {
    const pieces = createLife(rig, fresh, plain, { distance: 20000 * KM });
    let before = -1;
    while (!pieces.done) {
      pieces.advance(700 * KM);
      expect(pieces.progress).toBeGreaterThan(before);
      before = pieces.progress;
    }
    const once = createLife(rig, fresh, plain, { distance: 20000 * KM });
    once.advance(20000 * KM);
    expect(once.done).toBe(true);
    expect(pieces.state().wear.front).toEqual(once.state().wear.front);
    expect(kmOf(pieces, 'click')).toEqual(kmOf(once, 'click'));
  });

  it('stop by stop it is the same life: clicks within 0.5 %, lining within 0.1 %', () => {
    const distance = 16000 * KM;
    const single = drive({ distance, oneByOne: true });
    const lumps = drive({ distance });
    const [a, b] = [kmOf(single, 'click'), kmOf(lumps, 'click')];
    expect(b.length).toBe(a.length);
    a.forEach((km, i) => {
      near(b[i] as number, km, { rel: 0.005 }, `click ${i + 1}`);
    });
    near(last(lumps).liningFront, last(single).liningFront, { rel: 0.001 }, 'leading');
    near(last(lumps).liningRear, last(single).liningRear, { rel: 0.001 }, 'trailing');
    near(last(lumps).drumRadius, last(single).drumRadius, { rel: 1e-6 }, 'drum');
    expect(single.state().applications).toBe(16000);
    expect(lumps.state().applications).toBe(16000);
  });

  it('wears the same in whatever chunks it is asked', () => {
    const far = wearOn(rig, fresh, { distance: 1000 * KM }).state;
    let near1 = fresh;
    for (let n = 0; n < 40; n++) near1 = wearOn(rig, near1, { distance: 25 * KM }).state;
    near(near1.drumRadius - 100, far.drumRadius - 100, { rel: 1e-3 }, 'drum');
    expect(near1.applications).toBe(far.applications);
  });
});

describe('driven backward too (teaching tables)', () => {
  it('half of it: both linings reach 1.5 together, much later; the teeth run out before', () => {
    const l = drive({}, fresh, withReverse(plain, 0.5));
    near(l.distance / KM, 88300, LIFE, 'life');
    near(last(l).liningFront, last(l).liningRear, { abs: 0.01 }, 'alike');
    near(kmOf(l, 'teeth used up')[0] ?? 0, 77600, LIFE, 'last tooth');
    const i = balance(rig, l.state(), { pressure: 2, turning: 1 });
    near(i.separation - i.strutLength, 2.23, { abs: 0.04 }, 'separation');
  });
  it('one stop in ten: 63 600 km, tooth 16', () => {
    const l = drive({}, fresh, withReverse(plain, 0.1));
    near(l.distance / KM, 63600, LIFE, 'life');
    expect(l.state().tooth).toBe(16);
  });
  it('always backward it is the mirror of always forward', () => {
    const distance = 8000 * KM;
    const back = drive({ distance }, fresh, withReverse(plain, 1));
    const forward = drive({ distance });
    near(last(back).liningRear, last(forward).liningFront, { rel: 1e-4 }, 'leading');
    near(last(back).liningFront, last(forward).liningRear, { rel: 1e-4 }, 'trailing');
  });
  it('shoes swapped at 30 000 km: 79 000 km, other lining 2.13, tooth 20 of 20', () => {
    const half = drive({ distance: 30000 * KM }).state();
    const l = drive({}, swapShoes(half));
    near(l.distance / KM, 79000, LIFE, 'life');
    near(last(l).liningFront, 1.5, { abs: 0.01 }, 'leading');
    near(last(l).liningRear, 2.13, { abs: 0.02 }, 'other');
    expect(l.state().tooth).toBe(20);
  });
});

describe('an adjuster that does not step (teaching tables)', () => {
  const held = (km: number) => drive({ distance: km * KM }, ill({ adjusterSeized: true }));
  it('after 5 000 km: 0.30 to 0.49; lost 0.25, 0.09, drum radius 0.02', () => {
    const row = last(held(5000));
    near(row.clearance, 0.49, { abs: 0.01 }, 'clearance');
    near(4.5 - row.liningFront, 0.25, { abs: 0.01 }, 'leading');
    near(4.5 - row.liningRear, 0.09, { abs: 0.01 }, 'trailing');
    near(row.drumRadius - 100, 0.02, { abs: 0.005 }, 'drum');
  });
  it('after 20 000 km: 1.04; freed, one press clicks five teeth', () => {
    const l = held(20000);
    near(last(l).clearance, 1.04, { abs: 0.01 }, 'clearance');
    const freed = drive({ toNextClick: true }, { ...l.state(), condition: SOUND });
    expect(freed.end).toBe('click');
    expect(freed.state().tooth).toBe(5);
  });
  it('its gap grows by the wear at the middles of both linings and of the drum', () => {
    // Rest pose unchanged: each centre gap grows by its lining's loss there and the bore's; both gaps
    // stand alike, so their mean grows by the mean loss (plane geometry, to the shoe's small turn).
    const l = held(20000);
    const s = l.state();
    const lost = (w: Float64Array): number => ((w[23] as number) + (w[24] as number)) / 2;
    const sum = (lost(s.wear.front) + lost(s.wear.rear)) / 2 + (s.drumRadius - 100);
    near(last(l).clearance - (l.rows[0]?.clearance ?? 0), sum, { rel: 0.01 });
  });
  it('a piston leaves its bore before the table of a worn-out, seized brake rubs', () => {
    const loose = quay((scene) => {
      scene.cylinder.stroke = 3;
    });
    const l = driveLife(
      loose.rig,
      { ...loose.state, condition: ill({ adjusterSeized: true }).condition },
      plain,
    );
    expect(l.end).toBe('piston run-out');
    expect(l.events.at(-1)?.side).toBe('front');
  });
});

describe('clicks against wear, in closed form', () => {
  it('from click to click the strut grows by what wear parts the seats', () => {
    // Wear moves the seats apart by its depth at the place that bears, times (seat height over pin) /
    // (lever arm of the touch): between two clicks at the same pressure the sums of both must be one
    // tooth. Rigid hinged shoes: seats part by h·(φ_front − φ_rear), and the bearing turn φ grows by
    // (lining + drum depth)/(a·sin ψ) at every angle ψ alike, since steady wear keeps the sine.
    const l = drive({ distance: 45000 * KM });
    const clicks = l.events.filter((e) => e.kind === 'click');
    const [a, b] = [clicks[8], clicks[9]];
    if (!a || !b) throw new Error('ten clicks');
    const { anchor, strutSeat } = brake.shoes.front;
    const h = strutSeat[1] - anchor.at[1];
    const pin = Math.hypot(...anchor.at);
    const middle = Math.sin(Math.PI - Math.atan2(anchor.at[1], anchor.at[0]) - Math.PI) * pin;
    const depth = (side: 'front' | 'rear'): number => {
      const at = (s: BrakeState) =>
        ((s.wear[side][23] as number) + (s.wear[side][24] as number)) / 2;
      return at(b.state) - at(a.state) + (b.state.drumRadius - a.state.drumRadius);
    };
    const parted = (h * (depth('front') + depth('rear'))) / Math.abs(middle);
    const { growth } = brake.adjuster;
    // The play sensed before a click is a tooth over the lost motion: teeth 9 and 10 differ little.
    const tooth = (growth[b.tooth] as number) - (growth[a.tooth] as number);
    near(parted, tooth, { rel: 0.02 });
  });
});

describe('heat in a life', () => {
  const hills = duty('Hill descents');
  it('steps on a hot drum and drags when cold; with a hot lock it does neither', () => {
    const l = drive({ distance: 6000 * KM }, fresh, hills);
    expect(kmOf(l, 'stepped hot').length).toBeGreaterThan(0);
    expect(kmOf(l, 'drag at rest').length).toBeGreaterThan(0);
    const locked = createRig(withAdjuster(brake, 'toothed lever', { hotLock: 120 }));
    const safe = driveLife(locked, fresh, hills, { distance: 6000 * KM });
    expect(kmOf(safe, 'drag at rest')).toEqual([]);
  });
  it('lumps follow the heat of single stops: drum within 0.1 %, lining within 0.1 %', () => {
    const distance = 2000 * KM;
    const [a, b] = [true, false].map((oneByOne) =>
      last(drive({ distance, oneByOne }, fresh, hills)),
    );
    near((b?.drumRadius ?? 0) - 100, (a?.drumRadius ?? 0) - 100, { rel: 1e-3 }, 'drum');
    near(b?.liningFront ?? 0, a?.liningFront ?? 0, { rel: 1e-3 }, 'leading');
    expect(b?.state.applications).toBe(a?.state.applications);
  });
  it('its event says how hot, and what is left cold', () => {
    const e = drive({ distance: 6000 * KM }, fresh, hills).events.find(
      (x) => x.kind === 'stepped hot',
    );
    expect(e && eventText(brake, e)).toMatch(
      /^Stepped on a drum of \d+ °C at [\d ]+ km: .*clearance cold/,
    );
  });
  it('every duty of the scene can be driven, each stop warming the drum', () => {
    for (const d of brake.duties) {
      const l = drive({ distance: 400 * KM, rowEvery: KM }, fresh, d);
      expect(l.end, d.name).toBe('distance');
      near(l.distance, 400 * KM, { rel: 1e-12 }, d.name);
      if (d.heat)
        expect(Math.max(...l.rows.map((r) => r.temperature)), d.name).toBeGreaterThan(20.5);
    }
  });
  it('a deceleration is met by the pressure it needs', () => {
    // 1150 kg at 1.5 m/s²: share 0.3 over two brakes at 0.27 m is 69.9 N·m each (Newton's second law).
    const rounds = duty('Parcel rounds');
    const l = drive({ distance: 50 * KM, oneByOne: true }, fresh, {
      ...rounds,
      weather: [],
      heat: false,
    });
    const row = last(l);
    const bar = [...Array(4000).keys()]
      .map((n) => n / 100)
      .find((p) => {
        const i = balance(rig, row.state, { pressure: p / 10, turning: 1 });
        return -(i.shoes.front.torqueOnDrum + i.shoes.rear.torqueOnDrum) >= 69862;
      });
    const i = balance(rig, row.state, { pressure: (bar ?? 0) / 10, turning: 1 });
    const r = i.shoes.front;
    expect(r.pistonTravel).toBeGreaterThan(0);
    // Pedal travel of the row is that of the same press.
    near(
      row.pedalTravel,
      4 *
        (1 +
          (2 * brake.cylinder.area * (i.shoes.front.pistonTravel + i.shoes.rear.pistonTravel) +
            120 * i.pressure) /
            ((Math.PI / 4) * 20.64 ** 2)),
      { rel: 0.005 },
    );
  });
});

describe('other events', () => {
  it('second set in a worn drum: the drum is past its limit near 48 000 km, before the lining', () => {
    const second = { ...fresh, drumRadius: 100.3 };
    const l = drive({ stopAtLimit: false, distance: 60000 * KM }, second);
    near(kmOf(l, 'drum limit')[0] ?? 0, 48000, { abs: 500 }, 'drum');
    near(kmOf(l, 'lining limit')[0] ?? 0, 58000, { rel: 0.02 }, 'lining');
    expect(drive({}, second).end).toBe('drum limit');
  });
  it('a lever off its stop is told, and the next click comes late by what the cable took up', () => {
    // Teaching tables: about 3 600 km for 3 mm at the hook, at the settled rate of wear.
    const set = standingState(rig, 'Worn-in');
    const home = drive({ toNextClick: true }, set);
    const off = drive({ toNextClick: true }, { ...set, leverOffStop: 3 });
    expect(off.events[0]?.kind).toBe('lever off its stop');
    near((off.distance - home.distance) / KM, 3600, { rel: 0.05 });
  });
  it('a cable that goes on being tightened keeps it from stepping at all', () => {
    const kept = { ...plain, parking: { cable: 300, perKm: 0.01, tightened: 1e-3 } };
    const l = drive({ distance: 12000 * KM }, fresh, kept);
    expect(kmOf(l, 'click')).toEqual([]);
    expect(kmOf(drive({ distance: 12000 * KM }), 'click').length).toBe(3);
  });
  it('worn teeth lose one at a parking pull and click again', () => {
    const parked = { ...plain, parking: { cable: 265, perKm: 0.01, tightened: 0 } };
    const l = drive(
      { distance: 2000 * KM },
      ill({ teethHold: 1000 }, standingState(rig, 'Worn-in')),
      parked,
    );
    const start = l.rows[0]?.distance ?? 0;
    expect(start).toBe(20000 * KM);
    expect(l.end).toBe('distance');
    expect(l.rows.length).toBe(1);
    const on = drive(
      { distance: 22000 * KM },
      ill({ teethHold: 1000 }, standingState(rig, 'Worn-in')),
      parked,
    );
    expect(kmOf(on, 'tooth lost').length).toBeGreaterThanOrEqual(19);
    expect(kmOf(on, 'click').length).toBeGreaterThanOrEqual(18);
  });
  it('a brake that locks is not driven', () => {
    const damp = quay((s) => {
      s.shoes.front.lining.friction = 0.9;
    });
    const l = driveLife(damp.rig, damp.state, plain);
    expect([l.end, l.distance, l.events[0]?.kind]).toEqual(['locks', 0, 'locks']);
  });
  it('rivets are told before the table, where a lining has them', () => {
    const riveted = quay((s) => {
      Object.assign(s.shoes.front.lining, { rivetHeight: 1.2 });
    });
    const l = driveLife(riveted.rig, riveted.state, plain, { stopAtLimit: false });
    const kinds = l.events.map((e) => e.kind).filter((k) => /lining|rivet|table/.test(k));
    expect(kinds).toEqual(['lining limit', 'rivet contact', 'table contact']);
    expect(l.end).toBe('worn through');
  });
});

describe('excess split', () => {
  it('adds up, and each part is what its cause is', () => {
    const hill = { slope: 0.12, length: 4 * KM, speed: 40 * KMH };
    const clicked = standingState(rig, 'Just clicked');
    const hot = { ...clicked, temperature: descended(brake, 20, hill) };
    const e = excess(rig, hot, { pressure: 4, turning: 1 });
    const i = balance(rig, hot, { pressure: 4, turning: 1 });
    near(e.sensed, i.separation - i.strutLength, { rel: 1e-9 }, 'sensed');
    near(
      e.gap + e.linings + e.drum + e.growth + e.elasticity - e.takenUp,
      e.sensed,
      { rel: 1e-9 },
      'sum',
    );
    // Growth of the bore R·α·ΔT parts the seats as the drum's wear does, millimetre for millimetre.
    const bore = clicked.drumRadius - 100;
    const grown = clicked.drumRadius * 11e-6 * (hot.temperature - 20);
    near(e.growth / grown, e.drum / bore, { rel: 0.01 }, 'growth');
    near(e.takenUp, brake.adjuster.growth[10] as number, { rel: 1e-12 }, 'taken up');
    // One step is due: it needs less than what is sensed; cold it would not be.
    expect(e.sensed).toBeGreaterThan(e.needed);
    expect(e.sensed - e.growth).toBeLessThan(e.needed);
  });
  it('a new cold brake has its gap and a little elasticity', () => {
    const e = excess(rig, fresh, { pressure: 2, turning: 1 });
    near(e.sensed, 1.01, { abs: 0.02 }, 'sensed');
    expect([e.linings, e.drum, e.growth, e.takenUp]).toEqual([0, 0, 0, 0]);
    // 20 to 80 bar add 0.025 mm at the strut before a click (teaching tables).
    const before = standingState(rig, 'Before a click');
    const [soft, hard] = [2, 8].map((p) => excess(rig, before, { pressure: p, turning: 1 }));
    near((hard?.elasticity ?? 0) - (soft?.elasticity ?? 0), 0.025, { abs: 0.01 }, 'elasticity');
    near(gapsOf(brake.shoes.front, rest(rig, fresh).shoes.front).centre, 0.3, { abs: 0.01 }, 'gap');
  });
});
