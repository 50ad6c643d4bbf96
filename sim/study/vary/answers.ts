import { lockedShoe } from '../../balance/lock.ts';
import type { Rig } from '../../balance/rig.ts';
import type { BrakeState } from '../../brake/state.ts';
import { KM } from '../../units/units.ts';
import { application } from '../../wear/application.ts';
import { AIR, descended } from '../../wear/heat.ts';
import { createLife } from '../../wear/life.ts';
import type { Life } from '../../wear/life-types.ts';
import { studyNames as names } from '../../words/en.ts';
import { FOOT_PRESS, type Hill, hotPress } from '../hot-press.ts';

/** A reading, or a value that takes many instants: what a curve can show. */
export interface Answer {
  readonly key: string;
  readonly name: string;
  readonly unit: string;
  readonly digits: number;
}

/** Driven in one go while it is looked for the click, mm. */
const PIECE = 500 * KM;

/** Driven by the first duty from a state to its next click, or to its first limit. */
function driven(rig: Rig, state: BrakeState, toNextClick: boolean): Life {
  const [duty] = rig.brake.duties;
  const life = createLife(rig, state, duty, { toNextClick, rowEvery: 1e6 * KM });
  while (!life.done) life.advance(PIECE);
  return life;
}

/** km; NaN where a limit comes before. */
function nextClick(rig: Rig, state: BrakeState): number {
  const life = driven(rig, state, true);
  return life.end === 'click' ? (life.distance - state.distance) / KM : Number.NaN;
}

/** The greatest that the clearance comes to: just before that click, mm. */
function gapAtClick(rig: Rig, state: BrakeState): number {
  const life = driven(rig, state, true);
  const row = life.rows.filter(({ at }) => at === 'before click').at(-1);
  return life.end === 'click' && row ? row.clearance : Number.NaN;
}

/** km to the first limit of lining or drum; NaN where the life ends by anything else. */
function firstLimit(rig: Rig, state: BrakeState): number {
  const life = driven(rig, state, false);
  const limit = life.end === 'lining limit' || life.end === 'drum limit';
  return limit ? (life.distance - state.distance) / KM : Number.NaN;
}

/** Of all descents of the scene's duties the one that heats the drum most. */
function hottestHill({ brake }: Rig): Hill | null {
  const all = brake.duties.flatMap((d) => d.descents);
  const heat = (hill: Hill): number => descended(brake, AIR, hill);
  return all.reduce<Hill | null>((a, b) => (a && heat(a) >= heat(b) ? a : b), null);
}

/** A press at the foot of that descent, and the same press without it; null: the scene has none, or a shoe locks. */
function onHottest(rig: Rig, state: BrakeState) {
  const hill = hottestHill(rig);
  if (!hill || lockedShoe(rig, state, 1) !== null) return null;
  return hotPress(rig, state, hill);
}

/** What only a varied brake is asked: of its press with the adjuster at work, and of the road. */
export const ownAnswers: readonly (Answer & {
  of(rig: Rig, state: BrakeState, clicked: number): number;
})[] = [
  {
    key: 'teethTaken',
    name: names.teethTaken,
    unit: '',
    digits: 0,
    of: (_rig, _state, clicked) => clicked,
  },
  {
    key: 'nextClick',
    name: names.drivenToClick,
    unit: 'km',
    digits: 0,
    of: (rig, state) => nextClick(rig, state),
  },
  {
    key: 'gapAtClick',
    name: names.gapAtClick,
    unit: 'mm',
    digits: 2,
    of: (rig, state) => gapAtClick(rig, state),
  },
  {
    key: 'firstLimit',
    name: names.drivenToLimit,
    unit: 'km',
    digits: 0,
    of: (rig, state) => firstLimit(rig, state),
  },
  {
    key: 'hillTeeth',
    name: names.hillTeeth,
    unit: '',
    digits: 0,
    of: (rig, state) => {
      const hot = onHottest(rig, state);
      // What the same press takes cold is no tooth too many.
      return hot ? hot.stepped - application(rig, state, FOOT_PRESS).clicked : Number.NaN;
    },
  },
  {
    key: 'hillGap',
    name: names.hillGap,
    unit: 'mm',
    digits: 2,
    of: (rig, state) => onHottest(rig, state)?.gapCold ?? Number.NaN,
  },
];
