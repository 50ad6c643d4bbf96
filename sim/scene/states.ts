import * as v from 'valibot';
import type { StandingState } from '../brake/types.ts';
import { KM } from '../units/units.ts';
import { labelWords, sceneStates as texts } from '../words/en.ts';
import { count, num, part, size, words } from './parts.ts';

/**
 * Standing states in the scene file: recipes from new, by what happens to the brake. So they stay
 * what their names say when wear, heat or the adjuster is computed otherwise.
 */
const km = (about: string) => num(about, 'km', 0, 1e6);
const common = {
  name: words(labelWords.name),
  drumDiameter: v.optional(size(texts.innerDiameterOfTheDrum, 'mm')),
  less: v.optional(km(texts.stopThisLongBefore)),
  more: v.optional(km(texts.driveOnByThis)),
  round: v.optional(size(texts.toTheNearestWholeOf, 'km', 1e5)),
};

const until = <const U extends string>(name: U) =>
  v.pipe(v.literal(name), v.description(texts.whatTheBrakeIsDriven));

export const statePart = v.pipe(
  v.variant(
    'until',
    [
      part(texts.drivenByADistance, {
        until: until('distance'),
        distance: km(texts.fromNew),
        ...common,
      }),
      part(texts.drivenToAClickOf, {
        until: until('click'),
        click: count(texts.whichOneCountedFromNew, 1, 2000),
        ...common,
      }),
      part(texts.drivenUntilALiningHas, {
        until: until('worn'),
        share: num(texts.ofWhatALiningMay, 'plain number', 0, 1),
        ...common,
      }),
      part(texts.drivenUntilALiningIs, { until: until('lining limit'), ...common }),
      part(texts.drivenUntilTheDrumIs, { until: until('drum limit'), ...common }),
    ],
    texts.aGoalDistanceClickWorn,
  ),
  v.description(texts.aStateThatTheBrake),
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
