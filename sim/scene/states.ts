import * as v from 'valibot';
import type { StandingState } from '../brake/types.ts';
import { KM } from '../units/units.ts';
import { count, num, part, size, words } from './parts.ts';

/**
 * Standing states in the scene file: recipes from new, by what happens to the brake. So they stay
 * what their names say when wear, heat or the adjuster is computed otherwise.
 */
const km = (about: string) => num(about, 'km', 0, 1e6);
const common = {
  name: words('Name'),
  drumDiameter: v.optional(size('Inner diameter of the drum that new shoes are put into', 'mm')),
  less: v.optional(km('Stop this long before')),
  more: v.optional(km('Drive on by this')),
  round: v.optional(size('To the nearest whole of this', 'km', 1e5)),
};

const until = <const U extends string>(name: U) =>
  v.pipe(v.literal(name), v.description('What the brake is driven to'));

export const statePart = v.pipe(
  v.variant(
    'until',
    [
      part('Driven by a distance', {
        until: until('distance'),
        distance: km('From new'),
        ...common,
      }),
      part('Driven to a click of the adjuster', {
        until: until('click'),
        click: count('Which one, counted from new', 1, 2000),
        ...common,
      }),
      part('Driven until a lining has worn', {
        until: until('worn'),
        share: num(
          'Of what a lining may lose, on the one that has lost most; 0 to 1',
          'plain number',
          0,
          1,
        ),
        ...common,
      }),
      part('Driven until a lining is at its limit', { until: until('lining limit'), ...common }),
      part('Driven until the drum is at its limit', { until: until('drum limit'), ...common }),
    ],
    'a goal: distance, click, worn, lining limit or drum limit',
  ),
  v.description('A state that the brake can be put into, as far as it can be driven to it'),
);
type StatePart = v.InferOutput<typeof statePart>;

function goalOf(s: StatePart): StandingState['until'] {
  switch (s.until) {
    case 'distance':
      return { kind: 'distance', distance: s.distance * KM };
    case 'click':
      return { kind: 'click', click: s.click };
    case 'worn':
      return { kind: 'worn', share: s.share };
    case 'lining limit':
    case 'drum limit':
      return { kind: s.until };
  }
}

/** From the file's units to inside units. */
export const toState = (s: StatePart): StandingState => ({
  name: s.name,
  drumRadius: s.drumDiameter === undefined ? null : s.drumDiameter / 2,
  until: goalOf(s),
  beyond: (s.more ?? 0) * KM - (s.less ?? 0) * KM,
  round: (s.round ?? 0) * KM,
});
