import { number } from '../format.ts';
import { asJson } from './json.ts';
import type { Say } from './print.ts';
import type { Head, ToldPoint } from './vary-plan.ts';

/** Curves as text, CSV or JSON: of a run of its own, or gathered from parts. */

const csvText = (text: string): string =>
  /[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

const withUnit = (name: string, unit: string): string => (unit ? `${name} [${unit}]` : name);

/** As --json has it: `pressure` to `readings`, then the curves. */
function json(head: Head, curves: readonly (readonly ToldPoint[])[], say: Say): void {
  const { scene, pressure, drum, of, second, readings, values } = head;
  say(
    asJson({
      scene,
      command: 'vary',
      pressure,
      drum,
      of,
      readings,
      curves: curves.map((points, k) => ({
        also: second && { id: second.id, value: values[k] },
        points,
      })),
    }),
  );
}

/** Tells all curves. @param curves points of each, in the order of the head's values */
export function tellCurves(
  head: Head,
  curves: readonly (readonly ToldPoint[])[],
  as: 'json' | 'csv' | 'text',
  say: Say,
): void {
  if (as === 'json') {
    json(head, curves, say);
    return;
  }
  const { of, second, readings, values, title, pressure, drum } = head;
  const row = [
    ...(second ? [withUnit(second.id, second.unit)] : []),
    withUnit(of.id, of.unit),
    ...readings.map((a) => withUnit(a.key, a.unit)),
    'told',
  ];
  if (as === 'csv') {
    say(row.map(csvText).join(','));
    for (const [k, points] of curves.entries())
      for (const p of points) {
        const figures = [...(second ? [values[k] ?? null] : []), p.at, ...p.values];
        say([...figures.map((x) => (x === null ? '' : String(x))), csvText(p.told ?? '')].join());
      }
    return;
  }
  say(`${title}: ${number(pressure.value, 1)} bar, drum ${drum}`);
  for (const [k, points] of curves.entries()) {
    if (second) say(`${second.name} ${values[k]}${second.unit ? ` ${second.unit}` : ''}`);
    say(row.slice(second ? 1 : 0, -1).join('  '));
    for (const p of points) {
      const figures = p.values.map((x, i) => number(x ?? Number.NaN, readings[i]?.digits ?? 2));
      say([String(Number(p.at.toPrecision(6))), ...figures, p.told ?? ''].join('  ').trimEnd());
    }
  }
}
