import { sceneMigrationsFrom1 as words } from '../../words/en.ts';
import { isObject, type Json, type Migration, without } from './migration.ts';

/**
 * Version 1 to 2: `cooling` has names; the plain `duty` is the first of `duties`; a standing state
 * says what it is driven to; only a toothed lever is asked how many steps it takes at once when
 * nothing is said (all of them: version 1 took one).
 */

/** What version 1 made of its plain duty: all stops alike, forward, the drum cool at each. */
function dutyFrom(plain: Json): Json {
  const { name, pressure, speed, stopsPerKm, ...unknown } = plain;
  return {
    name,
    about: words.allStopsAlikeForwardThe,
    heat: false,
    stops: [{ speed, pressure, perKm: stopsPerKm }],
    ...unknown,
  };
}

const labelled = (cooling: unknown): unknown => {
  if (!Array.isArray(cooling) || cooling.length !== 2) return cooling;
  const [still, perKmh] = cooling as readonly unknown[];
  return { still, perKmh };
};

/** Kinds that version 1 gave one step an application where nothing was said, and that now take all. */
const TAKES_ALL: readonly unknown[] = ['toothed lever', 'wedge'];

export const from1: Migration = {
  up(scene) {
    const { adjuster, drum, duty, duties, states } = scene;
    const rest = Array.isArray(duties) ? (duties as readonly unknown[]) : [];
    return {
      ...without(scene, 'duty'),
      ...(isObject(drum) ? { drum: { ...drum, cooling: labelled(drum['cooling']) } } : {}),
      ...(isObject(adjuster) && TAKES_ALL.includes(adjuster['kind'])
        ? { adjuster: { perApplication: 1, ...adjuster } }
        : {}),
      duties: [isObject(duty) ? dutyFrom(duty) : duty, ...rest],
      states: Array.isArray(states)
        ? states.map((s: unknown) => (isObject(s) ? { until: 'distance', ...s } : s))
        : states,
    };
  },
  was(path) {
    const known: readonly (readonly [RegExp, string])[] = [
      [/^duties\.0\.stops\.0\.perKm/, 'duty.stopsPerKm'],
      [/^duties\.0\.stops\.0\.?/, 'duty.'],
      [/^duties\.0/, 'duty'],
      [/^drum\.cooling\.still/, 'drum.cooling.0'],
      [/^drum\.cooling\.perKmh/, 'drum.cooling.1'],
    ];
    for (const [now, old] of known) if (now.test(path)) return path.replace(now, old);
    return path.replace(/^duties\.(\d+)/, (_, n: string) => `duties.${Number(n) - 1}`);
  },
};
