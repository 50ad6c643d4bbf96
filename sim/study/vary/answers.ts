import type { Rig } from '../../balance/rig.ts';
import type { BrakeState } from '../../brake/state.ts';
import { KM } from '../../units/units.ts';
import { createLife } from '../../wear/life.ts';

/** A reading, or a value that takes many instants: what a curve can show. */
export interface Answer {
  readonly key: string;
  readonly name: string;
  readonly unit: string;
  readonly digits: number;
}

/** Driven in one go while it is looked for the click, mm. */
const PIECE = 500 * KM;

/** Driven by the first duty from a state to its next click, km; NaN where a limit comes before. */
function nextClick(rig: Rig, state: BrakeState): number {
  const [duty] = rig.brake.duties;
  const life = createLife(rig, state, duty, { toNextClick: true, rowEvery: 1e6 * KM });
  while (!life.done) life.advance(PIECE);
  return life.end === 'click' ? (life.distance - state.distance) / KM : Number.NaN;
}

/** What only a varied brake is asked: of its press with the adjuster at work, and of the road. */
export const ownAnswers: readonly (Answer & {
  of(rig: Rig, state: BrakeState, clicked: number): number;
})[] = [
  {
    key: 'teethTaken',
    name: 'Teeth that one such press takes',
    unit: '',
    digits: 0,
    of: (_rig, _state, clicked) => clicked,
  },
  {
    key: 'nextClick',
    name: 'Driven to the next click',
    unit: 'km',
    digits: 0,
    of: (rig, state) => nextClick(rig, state),
  },
];
