import { describe, expect, it } from 'vitest';
import { readQuantity } from '../../ui/units.ts';
import { near } from '../near.ts';

/** Inch 25.4 mm exactly, pound-force 4.4482216152605 N exactly (international yard and pound, 1959). */
const good: readonly (readonly [string, string, number])[] = [
  ['3.8 mm', 'mm', 3.8],
  ['3.8mm', 'mm', 3.8],
  ['3,8 mm', 'mm', 3.8],
  ['3.8 MM', 'mm', 3.8],
  ['3.8', 'mm', 3.8],
  ['3,8', 'mm', 3.8],
  ['0.060"', 'mm', 1.524],
  ['.060 in', 'mm', 1.524],
  ['0.060 inch', 'mm', 1.524],
  ['60 thou', 'mm', 1.524],
  ['60 mil', 'mm', 1.524],
  ['7 57/64 in', 'mm', 200.421875],
  ['7-57/64 in', 'mm', 200.421875],
  ['5/32 in', 'mm', 3.96875],
  ['5/32"', 'mm', 3.96875],
  ['1 1/2 in', 'mm', 38.1],
  ['1½ in', 'mm', 38.1],
  ['½"', 'mm', 12.7],
  ['200,42 mm', 'mm', 200.42],
  ['Ø 200.42 mm', 'mm', 200.42],
  ['20.042 cm', 'mm', 200.42],
  ['250 µm', 'mm', 0.25],
  ['250 μm', 'mm', 0.25],
  ['250 um', 'mm', 0.25],
  ['250 micron', 'mm', 0.25],
  ['−0.12 mm', 'mm', -0.12],
  ['40 bar', 'MPa', 4],
  ['40 Bar', 'MPa', 4],
  ['4 MPa', 'MPa', 4],
  ['580 psi', 'MPa', 3.99895922],
  ['1,200 psi', 'MPa', 8.27370874],
  ['1 200 psi', 'MPa', 8.27370874],
  ['4000 kPa', 'MPa', 4],
  ['40.79 kgf/cm²', 'MPa', 4.00013],
  ['35 N·m', 'N m', 35],
  ['35 Nm', 'N m', 35],
  ['35 N m', 'N m', 35],
  ['35 N*m', 'N m', 35],
  ['26 lb-ft', 'N m', 35.2512669],
  ['26 lbf ft', 'N m', 35.2512669],
  ['12 lbf in', 'N m', 1.35581795],
  ['3.5 N/mm', 'N/mm', 3.5],
  ['20 lbf/in', 'N/mm', 3.5025367],
  ['180 °C', 'degC', 180],
  ['180 C', 'degC', 180],
  ['180 degC', 'degC', 180],
  ['356 °F', 'degC', 180],
  ['90°', 'deg', 90],
  ['90 deg', 'deg', 90],
  ['60 km/h', 'km/h', 60],
  ['60 kph', 'km/h', 60],
  ['37.28227 mph', 'km/h', 60],
  // As typed at a bench: curly quotes, fraction slashes, words, a comma from a European keyboard.
  ['7 57/64"', 'mm', 200.421875],
  ['7 57/64”', 'mm', 200.421875],
  ['7 57/64″', 'mm', 200.421875],
  ["7 57/64''", 'mm', 200.421875],
  ['7 57⁄64 in', 'mm', 200.421875],
  ['7 57/64 inches', 'mm', 200.421875],
  ['7 57/64 in.', 'mm', 200.421875],
  ['0,060 in', 'mm', 1.524],
  ['.060”', 'mm', 1.524],
  ['1/16"', 'mm', 1.5875],
  ['1/16 in', 'mm', 1.5875],
  ['8"', 'mm', 203.2],
  ['7⅞ in', 'mm', 200.025],
  ['60 thousandths', 'mm', 1.524],
  ['60 thousandths of an inch', 'mm', 1.524],
  ['60 mils', 'mm', 1.524],
  ['8 hundredths', 'mm', 0.08],
  ['3.8 millimetres', 'mm', 3.8],
  ['3.8 millimeters', 'mm', 3.8],
  ['3.8 mm.', 'mm', 3.8],
  ['3. mm', 'mm', 3],
  ['3.8\u00a0mm', 'mm', 3.8],
  ['+3.8 mm', 'mm', 3.8],
  [' 3.8  mm ', 'mm', 3.8],
  ['⌀200,42', 'mm', 200.42],
  ['ø 200.42', 'mm', 200.42],
  ['40 bars', 'MPa', 4],
  ['90 degrees', 'deg', 90],
  ['31 miles', 'km', 49.889664],
  ['50 000 km', 'km', 50000],
  ["50'000 km", 'km', 50000],
];
const wrong: readonly (readonly [string, string])[] = [
  ['', 'mm'],
  ['thick', 'mm'],
  ['3..8 mm', 'mm'],
  ['3.8 N', 'mm'],
  ['8 mPa', 'MPa'],
  ['1/0 in', 'mm'],
  ['3.8 furlings', 'mm'],
  ['-', 'mm'],
  ['999999 mm', 'mm'],
  ['1e999', 'mm'],
  ['3 mm 4', 'mm'],
  ['createUnit("mm","5 m")', 'mm'],
  [`${'1'.repeat(90)} mm`, 'mm'],
  ['NaN', 'mm'],
  ['5 in to mm', 'mm'],
  ['3.8 or 3.9 mm', 'mm'],
  ['3.8-3.9 mm', 'mm'],
  ['about 3.8', 'mm'],
  ['3.8?', 'mm'],
  ['3,8,9 mm', 'mm'],
  ['1.234,5 mm', 'mm'],
  ['57/64/2 in', 'mm'],
  ['7 57/ in', 'mm'],
  ['3.8 mm 0.15 in', 'mm'],
  ['5 kg', 'mm'],
  ['l.5 mm', 'mm'],
  ['2+2 mm', 'mm'],
  ['2 + 2', 'mm'],
  ['2*2 mm', 'mm'],
  ['2 mm^4', 'mm'],
  ['2 mm/1', 'mm'],
  ['2 mm*3', 'mm'],
  ['2 3 mm', 'mm'],
];

describe('sizes as people write them', () => {
  for (const [text, unit, value] of good) {
    it(`${text} in ${unit}`, () => {
      const r = readQuantity(text, unit, [-1000, 60000]);
      expect(r.ok, JSON.stringify(r)).toBe(true);
      if (r.ok) near(r.value, value, { rel: 1e-5 });
    });
  }
  for (const [text, unit] of wrong) {
    it(`refuses ${text.slice(0, 30) || 'nothing'}`, () => {
      const r = readQuantity(text, unit, [unit === 'MPa' ? 0.001 : -1000, 10000]);
      expect(r.ok, JSON.stringify(r)).toBe(false);
      if (!r.ok) expect(r.allowed).toContain(unit);
    });
  }

  it('a comma before three digits is a decimal one where only that can be', () => {
    const drum = readQuantity('200,421', 'mm', [180, 220]);
    expect(drum).toMatchObject({ ok: true, echo: 'read as 200,421 = 200.421 mm' });
    expect(readQuantity('1,200', 'mm', [0, 2000])).toMatchObject({ value: 1200 });
  });

  it('a plain number is in the unit that was chosen, and the echo says so', () => {
    const r = readQuantity('0.060', 'mm', [0, 10], 'in');
    expect(r).toMatchObject({ ok: true, echo: 'read as 0.060 in = 1.524 mm' });
    expect(readQuantity('7 57/64 in', 'mm', [180, 220])).toMatchObject({
      echo: 'read as 7 57/64 in = 200.422 mm',
    });
    expect(readQuantity('3.8', 'mm', [0, 10])).toMatchObject({ echo: 'read as 3.8 mm' });
  });

  it('asks whether a size beyond all sense was meant', () => {
    const read = (text: string, unit: string, most: number) => readQuantity(text, unit, [0, most]);
    // A milli-pascal is a thousand-millionth of a mega-pascal.
    expect(read('4 mPa', 'MPa', 20)).toMatchObject({
      ok: false,
      found: '"4 mPa", read as 4e-9 MPa (m is milli; was 4 MPa meant?)',
    });
    expect(read('4 Pa', 'MPa', 20)).toMatchObject({ ok: false });
    expect(read('4 nm', 'mm', 25)).toMatchObject({
      ok: false,
      found: '"4 nm", read as 0.000004 mm',
    });
    // Small, but what somebody may want.
    expect(read('40 kPa', 'MPa', 20)).toMatchObject({ ok: true });
    expect(read('1 um', 'mm', 25)).toMatchObject({ ok: true });
    expect(read('0 Pa', 'MPa', 20)).toMatchObject({ ok: true, value: 0 });
  });

  it('has at least sixty ways, wrong ones among them', () => {
    expect(good.length + wrong.length).toBeGreaterThanOrEqual(60);
    expect(wrong.length).toBeGreaterThanOrEqual(20);
  });
});
