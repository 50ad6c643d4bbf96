import { PNG } from 'pngjs';
import { describe, expect, it } from 'vitest';
import {
  barOf,
  compose,
  type Figure,
  linesOf,
  smallestText,
} from '../../../ui/away/figure/compose.ts';
import { greyTheme } from '../../../ui/away/figure/grey.ts';
import { marksOf } from '../../../ui/away/figure/legend.ts';
import { withText } from '../../../ui/away/figure/png.ts';
import { openOrigin, originText, readOrigin } from '../../../ui/away/origin.ts';
import { toPlain } from '../../../ui/record/json.ts';
import { linkOf, sendable } from '../../../ui/record/link.ts';
import { plainMoment } from '../../../ui/record/start.ts';
import { tileOf } from '../../../ui/stage/hatch.ts';
import { drawBrake } from '../../../ui/stage/scene.ts';
import type { Hatch } from '../../../ui/stage/shapes.ts';
import { fitView } from '../../../ui/stage/view.ts';
import { colourOf, type Theme, themes } from '../../../ui/theme.ts';
import { inputFor, quayVan } from '../stage/bench.ts';

const van = quayVan();
const { brake } = van;

const drawn = (theme: Theme, layers = {}) => {
  const input = inputFor(van, { pressure: 3, layers });
  return drawBrake({
    ...input,
    theme,
    view: fitView(brake, { width: 1180, height: 960, band: 30 }),
  });
};

const origin = { version: '0.1.0', scene: 'quay-van', link: 'https://bench.example/?station=wear' };
const figure = (over: Partial<Figure> = {}): Figure => ({
  drawings: [drawn(over.theme ?? themes.sheet)],
  theme: themes.sheet,
  grey: false,
  clear: false,
  reduction: 1,
  scale: '1:1',
  title: '',
  caption: '',
  bar: false,
  facts: [],
  marks: [],
  foot: '',
  fonts: '',
  origin,
  ...over,
});

/** Radius of the drum's rim in a figure, mm of paper. */
function mmOfRim(f: Figure): number {
  const { svg, paper, width } = compose(f);
  const { scale } = f.drawings[0]?.view ?? { scale: 0 };
  const wanted = ((brake.drum.radiusNew + brake.drum.rim) * scale).toFixed(3).replace(/\.?0+$/, '');
  expect(svg).toContain(`A${wanted} ${wanted} 0`);
  expect(svg).toContain(`width="${Math.round(paper[0] * 1000) / 1000}mm"`);
  return (Number(wanted) * paper[0]) / width;
}

describe('true scale', () => {
  // The quay van's drum: 200 mm across and a rim of 10, as its scene says.
  it.each([
    ['1:1', 1, 110],
    ['1:2', 2, 55],
    ['2:1', 0.5, 220],
    ['1:5', 5, 22],
  ] as const)('at %s the drum’s rim is right on paper', (scale, reduction, mm) => {
    expect(mmOfRim(figure({ scale, reduction }))).toBeCloseTo(mm, 2);
  });

  it('the scale bar is at most a quarter of the drawing, and as long as it says', () => {
    for (const scale of [0.3, 1, 3.37, 12, 80]) {
      const mm = barOf({ scale, width: 900 });
      expect(mm * scale).toBeLessThanOrEqual(225);
      expect(mm * scale).toBeGreaterThan(225 / 2.6);
    }
    const f = figure({ bar: true, scale: '1:2', reduction: 2 });
    const view = f.drawings[0]?.view as { scale: number; width: number };
    const px = barOf(view as Parameters<typeof barOf>[0]) * view.scale;
    const { svg } = compose(f);
    expect(svg).toContain(`H${Math.round((16 + px) * 1000) / 1000}V`);
    expect(svg).toContain('Scale 1:2 when printed at 100 %');
  });

  it('tells how small its words come out on paper', () => {
    const f = figure();
    const size = Math.min(...f.drawings.flatMap((d) => d.labels.map((l) => l.size)));
    const { scale } = f.drawings[0]?.view ?? { scale: 1 };
    // A point is 1/72 inch, an inch 25.4 mm.
    expect(smallestText(f)).toBeCloseTo((size / scale) * (72 / 25.4), 9);
    expect(smallestText({ ...f, reduction: 2 })).toBeCloseTo(smallestText(f) / 2, 9);
  });
});

/** Share of black in a hatch, from its tile: lines by length and width, dots by area; ground by its own grey. */
function tone(hatch: Hatch): { slopes: string; dark: number } {
  const tile = tileOf(hatch, { scale: 3.4, k: 1 });
  const grey = (hex: string) => 1 - Number.parseInt(hex.slice(1, 3), 16) / 255;
  const slopes = new Set(
    tile.lines.map((l) => Math.sign((l.to[0] - l.from[0]) * (l.to[1] - l.from[1]))),
  );
  const ground = tile.ground ? grey(colourOf(greyTheme, tile.ground)) : 0;
  const dotted = tile.dots.length > 0 ? 'dots' : '';
  return { slopes: `${[...slopes].sort().join()} ${dotted}`, dark: ground };
}

it('in black and white every mark is grey, and no two hatches look alike', () => {
  const all = drawn(greyTheme, { comb: true, forces: true, heat: true, ghost: true, fan: 20 });
  const marks = marksOf([all], 20);
  const { svg } = compose(
    figure({
      drawings: [all],
      theme: greyTheme,
      grey: true,
      marks,
      bar: true,
      title: 'T',
      caption: 'c',
    }),
  );
  const colours = [...svg.matchAll(/(?:fill|stroke)="#([0-9a-fA-F]{6})"/g)].map((m) => m[1] ?? '');
  expect(colours.length).toBeGreaterThan(100);
  expect(
    colours.filter((c) => c.slice(0, 2) !== c.slice(2, 4) || c.slice(0, 2) !== c.slice(4)),
  ).toEqual([]);
  const hatches = ['drum', 'lining', 'cylinder', 'piston', 'rubber', 'fluid', 'overlap'] as const;
  for (const [i, a] of hatches.entries())
    for (const b of hatches.slice(i + 1)) {
      const [one, other] = [tone(a), tone(b)];
      const alike = one.slopes === other.slopes && Math.abs(one.dark - other.dark) < 0.03;
      expect(alike, `${a} and ${b}`).toBe(false);
    }
});

it('a ground, or none; names, legend, title as chosen; hostile words stay words', () => {
  const clear = compose(figure({ clear: true }));
  expect(clear.svg).not.toContain('<rect width="100%"');
  expect(compose(figure()).svg).toContain('<rect width="100%" height="100%" fill="#FCFDFC"/>');
  const evil = '</text><script>alert(1)</script>';
  const { svg } = compose(figure({ title: evil, caption: evil }));
  expect(svg).not.toContain('<script');
  const marks = marksOf([drawn(themes.sheet)], 0).map((m) => m.name);
  expect(marks).toContain('Drum, cut');
  expect(marks).toContain('Lining');
});

it('long words are broken into lines, none of them lost', () => {
  const text = 'a drum that was machined once and has worn a lip since, seen from outside';
  const lines = linesOf(text, 15, 200);
  expect(lines.length).toBeGreaterThan(2);
  expect(lines.join(' ')).toBe(text);
});

describe('where it comes from', () => {
  it('is read back from the file, and opens the very moment', async () => {
    const moment = plainMoment('wear', { kind: 'scene', name: 'farm-trailer' }, null);
    const changed = { ...moment, view: { ...moment.view, wheel: 'right' as const } };
    const from = { ...origin, link: `https://bench.example/x/${await linkOf(changed)}` };
    const { svg } = compose(figure({ origin: from, title: 'x' }));
    expect(readOrigin(svg)).toEqual(from);
    const read = await openOrigin(from);
    expect(read.ok && toPlain(read.moment)).toEqual(toPlain(sendable(changed)));
    expect(readOrigin('a text without')).toBeNull();
    expect(readOrigin('Takeup origin: {"version":1}')).toBeNull();
  });

  it('stands in a picture beside its points, with its size on paper; an independent reader sees the same points', () => {
    const plain = new PNG({ width: 40, height: 30 });
    plain.data.forEach((_, i) => {
      plain.data[i] = (i * 37) & 255;
    });
    const bytes = PNG.sync.write(plain);
    const whole = Buffer.from(withText(bytes, originText(origin), 11811));
    const read = PNG.sync.read(whole);
    expect(read.data.equals(plain.data)).toBe(true);
    expect(readOrigin(whole.toString('utf8'))).toEqual(origin);
    // 300 points an inch are 11 811 a metre.
    const at = whole.indexOf('pHYs');
    expect([whole.readUInt32BE(at + 4), whole.readUInt32BE(at + 8), whole[at + 12]]).toEqual([
      11811, 11811, 1,
    ]);
  });
});
