import { strutLength } from '../../../sim/index.ts';
import { compareChoices as texts } from '../../../sim/words/en.ts';
import { faultNames, faults } from '../../../sim/workshop/index.ts';
import { brakeOf, standingOf } from '../../record/derive.ts';
import type { Moment } from '../../record/moment.ts';
import { sceneName } from '../../record/scene-names.ts';
import { FIRST, plainMoment } from '../../record/start.ts';
import { brakes } from '../../scenes.ts';
import { baseOf, withFaultOn } from '../faults/part.ts';
import type { KeptMoment } from './part.ts';
import { keptNow } from './wants.ts';

/** Two moments to be set side by side, ready made. */

export interface Choice {
  readonly id: string;
  readonly name: string;
  /** The kept one and the other; null where the bench's brake has no such pair. */
  make(m: Moment): readonly [KeptMoment, KeptMoment] | null;
}

/** As hot as a drum comes down from a long hill, °C (own choice; words of the teaching brake's lesson on heat say 200 to 300). */
const HOT = 250;
const COLD = 20;

type Change = (kept: KeptMoment) => KeptMoment;

const inState = (kept: KeptMoment, change: Partial<KeptMoment['bench']['state']>): KeptMoment => ({
  ...kept,
  bench: { ...kept.bench, state: { ...kept.bench.state, ...change } },
});

const both =
  (one: Change, other: Change): Choice['make'] =>
  (m) => {
    const now = { ...keptNow(m), pedal: 0, cable: 0 };
    return [one(now), other(now)];
  };

/** The brake in one of its standing states. */
function standing(m: Moment, name: string): KeptMoment {
  const now = { ...keptNow(m), pedal: 0, cable: 0, bending: false };
  const state = standingOf(brakeOf(m), name);
  return { ...now, bench: { ...now.bench, state, standing: name } };
}

/** A tooth on, and one back from the last. */
const nextTooth = (m: Moment): readonly [KeptMoment, KeptMoment] => {
  const now = { ...keptNow(m), pedal: 0, cable: 0 };
  const brake = brakeOf(m);
  const { tooth } = now.bench.state;
  const next = strutLength(brake, tooth + 1) > 0 && tooth < brake.adjuster.teeth ? 1 : -1;
  return [now, inState(now, { tooth: tooth + next })];
};

export const choices: readonly Choice[] = [
  {
    id: 'turning',
    name: texts.turningName,
    make: both(
      (k) => ({ ...k, turning: 1 }),
      (k) => ({ ...k, turning: -1 }),
    ),
  },
  {
    id: 'heat',
    name: texts.heatName,
    make: both(
      (k) => inState(k, { temperature: COLD }),
      (k) => inState(k, { temperature: HOT }),
    ),
  },
  {
    id: 'wear',
    name: texts.wearName,
    make: (m) => {
      const { states } = brakeOf(m);
      const first = states[0];
      const last = states.find((s) => s.name === 'Near the limit') ?? states.at(-1);
      return first && last && first !== last
        ? [standing(m, first.name), standing(m, last.name)]
        : null;
    },
  },
  { id: 'tooth', name: texts.toothName, make: nextTooth },
];

/** One tooth on or back for the second of the two; null where there is none. */
export function toothOn(m: Moment, other: KeptMoment, by: 1 | -1): KeptMoment | null {
  const { adjuster } = brakeOf({ ...m, bench: other.bench });
  const tooth = other.bench.state.tooth + by;
  return tooth >= 0 && tooth <= adjuster.teeth ? inState(other, { tooth }) : null;
}

/** What else can stand beside the kept one: a standing state, a teaching brake, a fault beside the sound van. */
export function others(
  m: Moment,
): readonly { readonly group: string; readonly list: readonly Choice[] }[] {
  const kept = (): KeptMoment => m.parts.compare.kept ?? { ...keptNow(m), pedal: 0, cable: 0 };
  return [
    {
      group: 'The bench’s brake',
      list: brakeOf(m).states.map(({ name }) => ({
        id: `state ${name}`,
        name: sceneName(name),
        make: () => [kept(), standing(m, name)],
      })),
    },
    {
      group: 'Another brake',
      list: brakes.map(({ name, title }) => ({
        id: `brake ${name}`,
        name: title,
        make: () => [kept(), keptNow(plainMoment('apply', { kind: 'scene', name }))],
      })),
    },
    {
      group: 'The van, sound and with a fault',
      list: faults.map(({ id }) => ({
        id: `fault ${id}`,
        name: faultNames[id],
        make: () => {
          const sound = plainMoment('apply', FIRST, baseOf(id));
          return [keptNow(sound), keptNow(withFaultOn(sound, id))];
        },
      })),
    },
  ];
}
