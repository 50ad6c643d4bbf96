import type { Instant } from '../../balance/instant.ts';
import type { Side } from '../../brake/types.ts';
import { atan2, cos, sin } from '../../math/trig.ts';
import { dragOf, peak, shoeFactor } from '../../readings/factors.ts';
import { type Role, roleOf } from '../../readings/roles.ts';
import { PI } from '../../units/units.ts';
import { format, studyWorkingShoeFactor as words } from '../../words/en.ts';
import { anchorAt, freeBody, momentAbout } from '../free-body.ts';
import { type Now, rubbingOf } from './now-shoe.ts';
import { figuresFor, given, less, over, product, square, sum, type Term, worth } from './term.ts';
import type { Working } from './working.ts';

/**
 * From the pressure law to the moments to the shoe factor, with one brake's numbers.
 *
 * A rigid shoe on a pin, distance a from the axle, turns about it: every point of the face goes into the drum
 * by as much as the sine of its angle θ from the pin, so p = p_0·sin θ. With the lining from θ_1 to θ_2, width
 * b, on a drum of radius R:
 *   drag        F_d = μ·p_0·b·R·s,   s = ∫ sin θ dθ = cos θ_1 − cos θ_2
 *   pressure    M_N = p_0·b·R·n,     n = a·∫ sin² θ dθ = a·[(θ_2 − θ_1)/2 − (sin 2θ_2 − sin 2θ_1)/4]
 *   friction    M_F = μ·p_0·b·R·f,   f = ∫ sin θ·(R − a·cos θ) dθ = R·s − a·(sin² θ_2 − sin² θ_1)/2
 * about the pin. Moments F·h = M_N ∓ M_F (− for the leading shoe) give C = F_d/F = μ·h·s/(n ∓ μ·f): the long
 * shoe of machine-element texts (Shigley, Mechanical Engineering Design, internal expanding rim brakes; derived
 * here). The leading shoe locks where n = μ·f.
 */
export interface ShoeSteps {
  readonly side: Side;
  readonly role: Role;
  /** By the closed form; null where the shoe has no pin. */
  readonly closed: readonly Step[] | null;
  /** By the sum over the lining's elements as the balance has them. */
  readonly elements: readonly Step[];
  /** The factor by closed form (NaN without one), by the elements' moments alone, and as it is read. */
  readonly factors: readonly [closed: number, elements: number, read: number];
  readonly reasons: readonly Reason[];
}

export type StepCode =
  | 'sine sum'
  | 'pressure arm'
  | 'friction arm'
  | 'closed factor'
  | 'closed lock'
  | 'closed pressure'
  | 'closed normal moment'
  | 'closed friction moment'
  | 'element drag'
  | 'element balance'
  | 'element factor'
  | 'read factor';

/** A line of the way, like a working of a reading. */
export type Step = Omit<Working, 'key'> & { readonly code: StepCode };

/** Why closed form and element sum differ, with how much of it there is, a share. */
export interface Reason {
  readonly code: 'no pin' | 'bends' | 'not the sine' | 'ends free' | 'other forces';
  readonly share: number;
}

const step = (
  code: StepCode,
  symbol: string,
  formula: Term,
  unit: string,
  digits: number,
  law: Step['law'],
): Step => {
  const value = worth(formula);
  const figures = figuresFor(formula, value, digits);
  return { code, symbol, formula, value, unit, digits, figures, law };
};

const angleFrom = (angle: number, pin: number): number => {
  const turn = Math.abs(angle - pin) % (2 * PI);
  return turn > PI ? 2 * PI - turn : turn;
};

/** Angles of the lining's ends from the pin, seen from the axle, rad, heel first; and of each element. */
function anglesOf(now: Now, side: Side) {
  const { lining, anchor } = now.rig.brake.shoes[side];
  const pin = atan2(anchor.at[1], anchor.at[0]);
  const ends = [angleFrom(lining.from, pin), angleFrom(lining.to, pin)];
  const each = Array.from(now.instant.shoes[side].angle, (angle) => angleFrom(angle, pin));
  return { first: Math.min(...ends), last: Math.max(...ends), each };
}

/** Greatest miss of the pressures by the sine that fits them best (least squares), over the highest. */
function sineMiss(i: Instant, side: Side, each: readonly number[]): number {
  const { pressure } = i.shoes[side];
  let [top, bottom] = [0, 0];
  each.forEach((angle, k) => {
    top += (pressure[k] as number) * sin(angle);
    bottom += sin(angle) * sin(angle);
  });
  const fit = top / bottom;
  const highest = peak(pressure);
  return each.reduce(
    (worst, angle, k) =>
      Math.max(worst, Math.abs((pressure[k] as number) - fit * sin(angle)) / highest),
    0,
  );
}

function closedSteps(now: Now, side: Side, mu: number, force: number): Step[] {
  const { rig, instant: i } = now;
  const shoe = rig.brake.shoes[side];
  const [ax, ay] = shoe.anchor.at;
  const { first, last } = anglesOf(now, side);
  const leading = roleOf(side, i.turning) === 'leading';
  const a = given('a', Math.sqrt(ax * ax + ay * ay), 'mm', words.pinFromAxle, 'scene');
  const h = given('h', shoe.toe[1] - ay, 'mm', words.pistonAbovePin, 'scene');
  const radius = given('R', i.drumRadius, 'mm', words.radiusOfDrum, 'state');
  const b = given('b', shoe.lining.width, 'mm', words.widthOfLining, 'scene');
  const μ = given('μ', mu, '', words.frictionNow, 'state');
  const toe = given('F_toe', force, 'N', words.leftOnToe, 'reading');
  const degrees = (angle: number): string =>
    ((180 * angle) / PI).toFixed(1).replace('.', format.decimalMark);
  const of = (symbol: string, value: number, what: string) =>
    given(symbol, value, '', what, 'worked');
  const s = less(
    of('cos_1', cos(first), words.cosineOfHeelEnd(degrees(first))),
    of('cos_2', cos(last), words.cosineOfToeEnd(degrees(last))),
  );
  const arc = given('θ', last - first, '', words.arcOfLining, 'scene');
  const waves = less(
    of('sin_4', sin(2 * last), words.sineOfTwice(degrees(last))),
    of('sin_3', sin(2 * first), words.sineOfTwice(degrees(first))),
  );
  const n = product(a, less(over(arc, 2), over(waves, 4)));
  const squares = less(
    square(of('sin_2', sin(last), words.sineOf(degrees(last)))),
    square(of('sin_1', sin(first), words.sineOf(degrees(first)))),
  );
  const sumOf = given('s', worth(s), '', words.sumOfSine, 'worked');
  const f = less(product(radius, sumOf), over(product(a, squares), 2));
  const arm = given('n', worth(n), 'mm', words.armOfPressure, 'worked');
  const drags = given('f', worth(f), 'mm', words.armOfFriction, 'worked');
  const left = leading ? less(arm, product(μ, drags)) : sum(arm, product(μ, drags));
  const highest = over(product(toe, h), product(b, radius, left));
  const p = given('p_0', worth(highest), 'MPa', words.pressureFromPin, 'worked');
  return [
    step('sine sum', 's', s, '', 4, 'geometry'),
    step('pressure arm', 'n', n, 'mm', 2, 'geometry'),
    step('friction arm', 'f', f, 'mm', 2, 'geometry'),
    step('closed pressure', 'p_0', highest, 'MPa', 3, 'moments'),
    step('closed normal moment', 'M_N', product(p, b, radius, arm), 'N·mm', 0, 'moments'),
    step('closed friction moment', 'M_F', product(μ, p, b, radius, drags), 'N·mm', 0, 'moments'),
    step('closed factor', 'C', over(product(μ, h, sumOf), left), '', 3, 'moments'),
    ...(leading ? [step('closed lock', 'μ_lock', over(arm, drags), '', 3, 'moments')] : []),
  ];
}

/** Below this share of the moments a difference is not told: the readings' own rounding. */
const TOLD = 5e-4;

/** The way to one shoe's factor; null where no lining bears or no force can be told. */
export function shoeSteps(now: Now, side: Side): ShoeSteps | null {
  const { rig, state, instant: i } = now;
  const read = shoeFactor(i, side);
  if (!Number.isFinite(read)) return null;
  const shoe = rig.brake.shoes[side];
  const s = i.shoes[side];
  const at = anchorAt(rig, i, side);
  const opening = side === 'front' ? 1 : -1;
  const body = freeBody(rig, state, i, side);
  const about = (kinds: readonly string[]): number =>
    opening *
    body.filter((f) => kinds.includes(f.kind)).reduce((m, f) => m + momentAbout(f, at), 0);
  const [normal, friction] = [-about(['normal']), about(['friction'])];
  const force = dragOf(i, side) / i.drumRadius;
  const height = shoe.toe[1] - shoe.anchor.at[1];
  const others = normal - friction - s.toeForce * height;
  const { mu, at: rubs } = rubbingOf(now, side);
  const F = given('F_d', force, 'N', words.dragSum, 'balance');
  const h = given('h', height, 'mm', words.toeAboveAnchor, 'scene');
  const MN = given('M_N', normal, 'N·mm', words.pressureAboutAnchor, 'balance');
  const MF = given('M_F', friction, 'N·mm', words.frictionAboutAnchor, 'balance');
  const toe = given('F_toe', s.toeForce, 'N', words.leftOnToe, 'reading');
  const elements: readonly Step[] = [
    step(
      'element drag',
      'F_d',
      over(
        product(
          given('μ', mu, '', words.frictionNow, 'state'),
          given('N', s.normalSum, 'N', words.allThatPresses, 'balance'),
          given('r', rubs, 'mm', words.radiusAtWhichItRubs, 'balance'),
        ),
        given('R', i.drumRadius, 'mm', words.radiusOfDrum, 'state'),
      ),
      'N',
      0,
      'coulomb',
    ),
    step('element balance', 'M_o', less(less(MN, MF), product(toe, h)), 'N·mm', 0, 'moments'),
    step('element factor', 'C', over(product(F, h), less(MN, MF)), '', 3, 'moments'),
    step('read factor', 'C', over(F, toe), '', 3, 'definition'),
  ];
  const pinned = shoe.anchor.kind === 'pin';
  const closed = pinned ? closedSteps(now, side, mu, s.toeForce) : null;
  const miss = sineMiss(i, side, anglesOf(now, side).each);
  const free = s.pressure.filter((p) => p === 0).length / s.pressure.length;
  const reasons: Reason[] = (
    [
      { code: 'no pin', share: pinned ? 0 : 1 },
      { code: 'bends', share: rig[side].modes > 0 ? 1 : 0 },
      { code: 'not the sine', share: miss > 0.01 ? miss : 0 },
      { code: 'ends free', share: free },
      { code: 'other forces', share: Math.abs(others) / (s.toeForce * height) },
    ] as const
  ).filter((r) => r.share > TOLD);
  const factorOf = (steps: readonly Step[] | null, code: StepCode): number =>
    steps?.find((x) => x.code === code)?.value ?? Number.NaN;
  return {
    side,
    role: roleOf(side, i.turning),
    closed,
    elements,
    factors: [factorOf(closed, 'closed factor'), factorOf(elements, 'element factor'), read],
    reasons,
  };
}
