import { describe, expect, it } from 'vitest';
import {
  BAND,
  createRig,
  forecast,
  freshState,
  KM,
  readings,
  rest,
  withAdjuster,
} from '../../sim/index.ts';
import { restsOn } from '../../sim/workshop/index.ts';
import { quay } from '../brakes.ts';
import { near } from '../near.ts';

/** Forecasts of the teaching tables, by its rule: margin over rate, band half to twice. */
const { brake } = quay();
const first = (m: Parameters<typeof forecast>[1]) => {
  const f = forecast(brake, m).first;
  if (!f) throw new Error('no forecast');
  return f;
};

describe('forecast', () => {
  it('2.5 mm at 40 000 km: 20 000 km, band 10 000 to 40 000', () => {
    const f = first({ distance: 40000 * KM, lining: { front: 2.5 } });
    near(f.left / KM, 20000, { rel: 1e-9 }, 'left');
    near(f.low / KM, 10000, { rel: 1e-9 }, 'low');
    near(f.high / KM, 40000, { rel: 1e-9 }, 'high');
    expect(restsOn(f)).toContain('0.050 mm in 1000 km');
    expect(restsOn(f)).toContain('half or twice');
  });
  it('1.98 mm at 50 000 km: 9 500 km, band 4 800 to 19 000', () => {
    const f = first({ distance: 50000 * KM, lining: { front: 1.98, rear: 3.64 } });
    expect(f.what).toBe('front lining');
    // The table rounds to two digits.
    near(f.left / KM, 9500, { abs: 50 }, 'left');
    near(f.low / KM, 4800, { abs: 50 }, 'low');
    near(f.high / KM, 19000, { abs: 100 }, 'high');
  });
  it('second set at 40 000 km, drum 200.93 from 200.60, lining 2.42: the drum ends first', () => {
    const f = forecast(brake, {
      distance: 40000 * KM,
      lining: { front: 2.42 },
      drum: 200.93,
      drumFitted: 200.6,
    });
    expect(f.first?.what).toBe('drum');
    near(40000 + (f.first?.left ?? 0) / KM, 48000, { abs: 500 }, 'drum');
    const lining = f.lines.find((l) => l.what === 'front lining');
    near(40000 + (lining?.left ?? 0) / KM, 58000, { abs: 500 }, 'lining');
  });
  it('a wedge has no teeth: its steps are called that, in readings too', () => {
    const wedge = withAdjuster(brake, 'wedge');
    const { lines } = forecast(wedge, { distance: 40000 * KM, teeth: 10 });
    expect(lines.map((l) => l.unit)).toEqual(['steps']);
    expect(lines.map(restsOn).join()).toMatch(/^10 steps lost/);
    const rig = createRig(wedge);
    const now = rest(rig, freshState(wedge));
    const names = readings(wedge, freshState(wedge), now, now).map((r) => r.name);
    expect(names).toContain('Adjuster step');
    expect(names.join()).not.toMatch(/[Tt]ooth/);
  });
  it('teeth tell how far the adjuster reaches', () => {
    const f = first({ distance: 40000 * KM, teeth: 10 });
    near(f.left / KM, 40000, { rel: 1e-9 });
    expect(f.unit).toBe('teeth');
  });
  it('gives no number for what was not lost yet, and none left past the limit', () => {
    expect(forecast(brake, { distance: 0, lining: { front: 4 } }).first).toBe(null);
    expect(forecast(brake, { distance: 500 * KM, lining: { front: 4.49 } }).first).toBe(null);
    expect(first({ distance: 60000 * KM, lining: { front: 1.2 } }).left).toBe(0);
  });
  it('its band is a factor of two either way', () => {
    const f = first({ distance: 30000 * KM, lining: { front: 3 } });
    expect([f.left / f.low, f.high / f.left]).toEqual([BAND, BAND]);
    expect(BAND).toBe(2);
  });
});
