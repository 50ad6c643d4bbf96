import { dress } from '../../balance/dress.ts';
import type { Instant } from '../../balance/instant.ts';
import { makePlaced, place, turnsOf } from '../../balance/place.ts';
import type { Rig } from '../../balance/rig.ts';
import type { BrakeState } from '../../brake/state.ts';
import type { Side } from '../../brake/types.ts';
import { liningShape } from '../../contact/bed.ts';
import { dragOf } from '../../readings/factors.ts';
import { studyWorkingNow as words } from '../../words/en.ts';
import { anchorAt, freeBody, momentAbout, noTurns } from '../free-body.ts';
import { given, greatest, less, over, product, root, square, sum, type Term } from './term.ts';
import { type Derivations, type Derived, derived } from './working.ts';

/** What a working is made of: the brake as it stands, an instant of it, and the same let go. */
export interface Now {
  readonly rig: Rig;
  readonly state: BrakeState;
  readonly instant: Instant;
  readonly rest: Instant;
}

/** Suffix of a shoe's readings. */
export const suffixOf = (side: Side): 'Front' | 'Rear' => (side === 'front' ? 'Front' : 'Rear');

/**
 * Push left on the toe: moments about the anchor of the piston and of the springs, over the toe's height above
 * it (lever law; sim/balance/build.ts has the same sum).
 */
function toe({ rig, state, instant: i }: Now, side: Side): Derived {
  const shoe = rig.brake.shoes[side];
  const opening = side === 'front' ? 1 : -1;
  const at = anchorAt(rig, i, side);
  const springs = freeBody(rig, state, i, side).filter(
    (f) => f.kind === 'spring' || f.kind === 'climbing',
  );
  const closing = -opening * springs.reduce((all, f) => all + momentAbout(f, at), 0);
  const { pistonForce, toe: stands } = i.shoes[side];
  const push = given('F_p', pistonForce, 'N', words.pushOnToe, 'balance');
  const arm = given('a_p', stands[1] - at[1], 'mm', words.pistonAboveAnchor, 'balance');
  const back = given('M_s', closing, 'N·mm', words.momentOfSprings, 'balance');
  const height = given('h', shoe.toe[1] - shoe.anchor.at[1], 'mm', words.toeAboveAnchor, 'scene');
  return [greatest(0, over(less(product(push, arm), back), height)), 'moments'];
}

/** Travel of the piston: where its toe stands, from where it stood as built and let go. */
function travel({ rig, state, instant: i }: Now, side: Side): Derived {
  const d = dress(rig, state);
  const home = place(
    rig,
    d.restPose,
    turnsOf(rig, d.restPose, noTurns()),
    rig[side].toe,
    makePlaced(rig.n),
  ).x;
  const now = given('x_toe', i.shoes[side].toe[0], 'mm', words.toeFromAxleNow, 'balance');
  const was = given('x_home', home, 'mm', words.toeFromAxleLetGo, 'balance');
  return [side === 'front' ? less(was, now) : less(now, was), 'geometry'];
}

/** Friction as a lining is now, and the radius at which it rubs, mm: its face is pressed in a little. */
export function rubbingOf(
  { rig, state, instant: i }: Pick<Now, 'rig' | 'state' | 'instant'>,
  side: Side,
): { readonly mu: number; readonly at: number } {
  const { normalSum } = i.shoes[side];
  const torque = dragOf(i, side);
  const mu =
    rig.brake.rubbing === null
      ? dress(rig, state).friction[side]
      : torque / (normalSum * i.drumRadius);
  return { mu, at: torque / (mu * normalSum) };
}

/** Drag: friction of all that presses, told at the drum's radius. */
function drag({ rig, state, instant: i }: Now, side: Side): Derived {
  const s = i.shoes[side];
  const torque = dragOf(i, side);
  const radius = given('R', i.drumRadius, 'mm', words.radiusOfDrum, 'state');
  const normal = given('N', s.normalSum, 'N', words.allThatPresses, 'balance');
  if (!(s.normalSum > 0) || i.turning === 0) {
    return [given('F_d', torque / i.drumRadius, 'N', words.nothingRubs, 'balance'), 'coulomb'];
  }
  const { mu, at } = rubbingOf({ rig, state, instant: i }, side);
  return [
    over(
      product(
        given('μ', mu, '', words.frictionNow, 'state'),
        normal,
        given('r', at, 'mm', words.radiusAtWhichItRubs, 'balance'),
      ),
      radius,
    ),
    'coulomb',
  ];
}

/** Highest pressure: of an element, or on to the end along the line through the last two (readings/factors.ts). */
function peakOf({ instant: i }: Now, side: Side): Derived {
  const p = i.shoes[side].pressure;
  const n = p.length;
  const at = (k: number): number => p[k] as number;
  const highest = Math.max(0, ...p);
  const ends = [
    [at(0), at(1)],
    [at(n - 1), at(n - 2)],
  ] as const;
  const end = ends.find(([a, b]) => a + (a - b) / 2 > highest);
  if (!end) {
    return [given('p_el', highest, 'MPa', words.pressureOfMostBearing, 'balance'), 'winkler'];
  }
  const last = given('p_1', end[0], 'MPa', words.pressureOfLast, 'balance');
  const before = given('p_2', end[1], 'MPa', words.pressureBeside, 'balance');
  return [sum(last, over(less(last, before), 2)), 'winkler'];
}

/** Gap at the lining's middle: mean of its two middle elements, none where they bear. */
export function gapTerm(i: Instant, side: Side): Term {
  const { gap } = i.shoes[side];
  const n = gap.length;
  const one = given('g_a', gap[n / 2 - 1] as number, 'mm', words.gapBeforeMiddle, 'balance');
  const two = given('g_b', gap[n / 2] as number, 'mm', words.gapAfterMiddle, 'balance');
  return greatest(0, over(sum(one, two), 2));
}

/** The same let go; of linings that stand inside their drum, by how much (readings/roles.ts). */
const restGap = (rest: Instant, side: Side): Term =>
  rest.restGap < 0
    ? given('g_0', rest.restGap, 'mm', words.insideDrumBy, 'balance')
    : gapTerm(rest, side);

/** Lining left at the thinnest of its elements that no slope was cut into. */
function lining({ rig, state }: Now, side: Side): Derived {
  const { lining: l } = rig.brake.shoes[side];
  const worn = state.wear[side];
  const shape = liningShape(l, rig.brake.drum, worn.length);
  const left = (k: number): number => (shape.thickness[k] as number) - (worn[k] as number);
  let thinnest = -1;
  for (let k = 0; k < worn.length; k++) {
    if (!shape.sloped[k] && (thinnest < 0 || left(k) < left(thinnest))) thinnest = k;
  }
  const as = given('t_new', shape.thickness[thinnest] as number, 'mm', words.thicknessNew, 'scene');
  const off = given('w', worn[thinnest] as number, 'mm', words.wornOff, 'state');
  return [less(as, off), 'geometry'];
}

/** Workings of one shoe's readings. */
export function shoeWorkings(now: Now, side: Side): Derivations {
  const { rig, instant: i, rest } = now;
  const l = rig.brake.shoes[side].lining;
  const s = i.shoes[side];
  const key = suffixOf(side);
  const [t] = lining(now, side);
  const limit = given('t_min', l.thicknessMin, 'mm', words.limitOfLining, 'scene');
  const fresh = given('t_0', l.thicknessNew, 'mm', words.liningNew, 'scene');
  const share = over(product(100, less(t, limit)), less(fresh, limit));
  const [x, y] = s.anchorForce;
  const across = given('R_x', x, 'N', words.levelPart, 'balance');
  const upright = given('R_y', y, 'N', words.uprightPart, 'balance');
  return {
    [`toeForce${key}`]: toe(now, side),
    [`pistonTravel${key}`]: travel(now, side),
    [`drag${key}`]: drag(now, side),
    [`peak${key}`]: peakOf(now, side),
    [`clearance${key}`]: derived(gapTerm(i, side), 'geometry'),
    [`restClearance${key}`]: derived(restGap(rest, side), 'geometry'),
    [`lining${key}`]: derived(t, 'geometry'),
    [`liningShare${key}`]: derived(share, 'definition'),
    [`anchorForce${key}`]: derived(root(sum(square(across), square(upright))), 'statics'),
  };
}
