import { describe, expect, it } from 'vitest';
import { main } from '../../ui/command/main.ts';
import { near } from '../near.ts';

/** The command `life` against the teaching tables, and what it refuses. */
async function takeup(...words: string[]): Promise<{ code: number; out: string; err: string }> {
  let out = '';
  let err = '';
  const code = await main(
    ['life', ...words],
    (text) => {
      out += `${text}\n`;
    },
    (text) => {
      err += text;
    },
  );
  return { code, out, err };
}

describe('takeup life', () => {
  it('drives to the limit and tells events, band and end', async () => {
    const { code, out } = await takeup('quay-van', '--json');
    expect(code).toBe(0);
    const told = JSON.parse(out);
    expect([told.command, told.ended, told.adjuster]).toEqual([
      'life',
      'lining limit',
      'toothed lever',
    ]);
    near(told.km.value, 59500, { rel: 0.018 }, 'life');
    expect(told.events.filter((e: { kind: string }) => e.kind === 'click').length).toBe(15);
    expect(told.end.tooth.value).toBe(15);
    const drum = told.forecast.find((l: { what: string }) => l.what === 'drum');
    near(drum.high.value / drum.low.value, 4, { rel: 1e-9 }, 'band');
  });
  it('takes duty, share in reverse, adjuster and hot lock', async () => {
    const { out } = await takeup(
      'quay-van',
      '--km',
      '1500',
      '--duty',
      'Hill descents',
      '--reverse',
      '20',
      '--adjuster',
      'screw strut',
      '--hot-lock',
      '120',
      '--json',
    );
    const told = JSON.parse(out);
    expect([told.duty, told.adjuster, told.ended]).toEqual([
      'Hill descents',
      'screw strut',
      'distance',
    ]);
    near(told.km.value, 1500, { rel: 1e-9 });
  });
  it('prints them as lines', async () => {
    const { out } = await takeup('quay-van', '--km', '8000', '--seized');
    expect(out).not.toContain('Click');
    expect(out).toMatch(/Ended by distance after 8\s000 km and 8\s000 stops/);
    expect(out).toMatch(/Left by the front lining: [\d\s]+ km, band [\d\s]+ to [\d\s]+/);
  });
  it.each([
    ['--duty', 'Moon', 'Mixed town'],
    ['--adjuster', 'magic', 'toothed lever'],
    ['--reverse', '120', '0 to 100 %'],
  ])('refuses %s %s', async (option, value, allowed) => {
    const { code, err } = await takeup('quay-van', option, value);
    expect(code).toBe(2);
    expect(err).toContain(allowed);
  });
});
