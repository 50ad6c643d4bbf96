import { must, ownNames, type Rule } from './rule.ts';

/** Duties that have the right types and cannot be driven. */
export const dutyRules: readonly Rule[] = [
  {
    name: 'duty of its own name',
    reason: 'A duty is chosen by its name.',
    broken: ({ duties }) => ownNames('duties', duties),
  },
  {
    name: 'pressure or deceleration',
    reason: 'One of them follows from the other.',
    broken: ({ duties }) =>
      duties.flatMap((d, i) =>
        d.stops.flatMap(({ pressure, deceleration }, n) =>
          must(
            (pressure === undefined) !== (deceleration === undefined),
            `duties.${i}.stops.${n}.pressure`,
            pressure === undefined
              ? 'neither pressure nor deceleration'
              : 'pressure and deceleration',
            'one of the two',
          ),
        ),
      ),
  },
  {
    name: 'pressure to lock at',
    reason: 'The first stop of the first duty is what shoes are asked to lock at.',
    broken: ({ duties: [first] }) =>
      must(
        first?.stops[0]?.deceleration === undefined,
        'duties.0.stops.0.deceleration',
        'a deceleration',
        'a pressure',
      ),
  },
  {
    name: 'shares of the weather',
    reason: 'The rest of the stops is dry.',
    broken: ({ duties }) =>
      duties.flatMap((d, i) => {
        const shares = d.weather.reduce((sum, w) => sum + w.share, 0);
        return must(
          shares <= 1 + 1e-9,
          `duties.${i}.weather`,
          `shares that add up to ${shares}`,
          'at most 1 together',
        );
      }),
  },
  {
    name: 'films of water and rust',
    reason: 'Rain and rust lie on a drum and go; glaze and grease do not come with a stop.',
    broken: ({ duties }) =>
      duties.flatMap((d, i) =>
        d.weather.flatMap(({ surface, film }, n) =>
          must(
            film === undefined || surface === 'wet' || surface === 'damp',
            `duties.${i}.weather.${n}.film`,
            `a film of ${surface}`,
            'a film of wet or damp',
          ),
        ),
      ),
  },
  {
    name: 'descents on the road',
    reason: 'No more road goes down than there is.',
    broken: ({ duties }) =>
      duties.flatMap((d, i) => {
        const down = d.descents.reduce((sum, h) => sum + h.length * h.perKm, 0);
        return must(
          down <= 1 + 1e-9,
          `duties.${i}.descents`,
          `${down} km of descent in each km`,
          'at most 1 together',
        );
      }),
  },
];
