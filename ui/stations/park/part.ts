import * as v from 'valibot';
import type { WheelFault } from '../../../sim/index.ts';
import { parkPart as words } from '../../../sim/words/en.ts';
import { type ParkingRule, parkingRules } from '../../../sim/workshop/index.ts';
import { released, withState } from '../../record/bench.ts';
import { intention } from '../../record/intention.ts';
import { type Moment, withPart } from '../../record/moment.ts';
import type { Part } from '../../record/part.ts';

export type ParkPanel = 'lever' | 'wheels' | 'hot';
export type Nose = 'down' | 'up';

/** Full travel of the parking lever on the page, N at each cable. */
export const MOST_PULL = 600;
/** Farthest that a cable is set too tight or too slack here, mm. */
const MOST_OFF_STOP = 8;
const MOST_SLACK = 30;
/** What a rule of one's own may ask, per cent of slope. */
const SLOPES = [1, 60] as const;
/** Rise of a drum that was parked hot, K. */
const RISES = [20, 300] as const;

const FAULTS = [
  'none',
  'stiff lever',
  'oil on rear',
  'oil on front',
  'glazed',
] as const satisfies readonly WheelFault[];

/** What the station is set to. */
export interface ParkPart {
  /** The hand lever's pull at each cable, N; 0: let go. */
  readonly cable: number;
  readonly nose: Nose;
  /** Id of the rule that judges; "own": the slope below. */
  readonly rule: string;
  /** Slope of one's own choice, per cent. */
  readonly slope: number;
  /** Slack of the cable beyond the scene's, mm. */
  readonly moreSlack: number;
  /** What is out of order on the right-hand wheel. */
  readonly fault: WheelFault;
  readonly panel: ParkPanel;
  /** Rise of the drum's temperature when it was parked hot, K. */
  readonly rise: number;
  /** The vehicle is let go on its slope: turn of the drum where it was, rad; null: chocked. */
  readonly loose: number | null;
}

const usual = parkingRules[0] as ParkingRule;

/** The rule that judges, with the slope of one's own where that was chosen. */
export const ruleOf = (part: ParkPart): ParkingRule =>
  parkingRules.find((r) => r.id === part.rule) ?? {
    id: 'own',
    kind: 'slope',
    percent: part.slope,
    what: words.aSlopeOfYourOwn,
    sure: 'own choice',
    hand: null,
  };

const within = (low: number, high: number) => v.pipe(v.number(), v.minValue(low), v.maxValue(high));

export const parkPart: Part<ParkPart> = {
  anew: true,
  layers: { forces: true },
  // It is chocked when one turns away.
  left: (m) => put(m, { loose: null }),
  initial: () => ({
    cable: 300,
    nose: 'down',
    rule: usual.id,
    slope: 20,
    moreSlack: 0,
    fault: 'none',
    panel: 'lever',
    rise: 100,
    loose: null,
  }),
  schema: v.strictObject({
    cable: within(0, MOST_PULL),
    nose: v.picklist(['down', 'up']),
    rule: v.picklist([...parkingRules.map((r) => r.id), 'own']),
    slope: within(...SLOPES),
    moreSlack: within(0, MOST_SLACK),
    fault: v.picklist(FAULTS),
    panel: v.picklist(['lever', 'wheels', 'hot']),
    rise: within(...RISES),
    // Records from before it could roll have none.
    loose: v.optional(v.nullable(v.pipe(v.number(), v.finite())), null),
  }),
};

const clamp = (value: number, low: number, high: number): number =>
  Math.max(low, Math.min(high, value));

const put = (m: Moment, change: Partial<ParkPart>): Moment => {
  const now = m.parts.park;
  const same = Object.entries(change).every(([k, x]) => now[k as keyof ParkPart] === x);
  return same ? m : withPart(m, 'park', change);
};

/** The hand lever drawn to a pull at each cable, N; 0 lets go. */
export const pull = intention(
  'park.pull',
  (m: Moment, newton: number) => put(m, { cable: clamp(Math.round(newton), 0, MOST_PULL) }),
  (before, after) => words.cableToN(before.parts.park.cable, after.parts.park.cable),
  { joins: 'park.pull' },
);

export const turnNose = intention(
  'park.nose',
  (m: Moment, nose: Nose) => put(m, { nose }),
  (_before, after) => words.nose(after.parts.park.nose),
);

/** Judges by a rule of the list, or by the slope of one's own. */
export const judgeBy = intention(
  'park.rule',
  (m: Moment, id: string) => {
    const rule = parkingRules.find((r) => r.id === id);
    if (rule) return put(m, { rule: rule.id });
    return put(m, { rule: 'own', slope: clamp(ruleOf(m.parts.park).percent, ...SLOPES) });
  },
  words.ruleOfTheSlope,
);

/** A slope of one's own, per cent. */
export const slopeTo = intention(
  'park.slope',
  (m: Moment, percent: number) =>
    put(m, { rule: 'own', slope: clamp(Math.round(percent), ...SLOPES) }),
  (_before, after) => words.slope(after.parts.park.slope),
);

export const slacken = intention(
  'park.slack',
  (m: Moment, mm: number) =>
    put(m, { moreSlack: clamp(m.parts.park.moreSlack + mm, 0, MOST_SLACK) }),
  (_before, after) => words.cableSlackMmMore(after.parts.park.moreSlack),
);

/** Cable set so tight that it holds the lever off its stop, mm at the hook. */
export const tighten = intention(
  'park.tight',
  (m: Moment, mm: number) => {
    const { state } = m.bench;
    const leverOffStop = clamp(state.leverOffStop + mm, 0, MOST_OFF_STOP);
    return leverOffStop === state.leverOffStop
      ? m
      : released(withState(m, { ...state, leverOffStop }));
  },
  (_before, after) => words.leverMmOffItsStop(after.bench.state.leverOffStop),
);

export const chooseWheelFault = intention(
  'park.fault',
  (m: Moment, fault: WheelFault) => put(m, { fault }),
  words.rightWheel,
);

export const openPanel = intention(
  'park.panel',
  (m: Moment, panel: ParkPanel) => put(m, { panel }),
  words.panelOfPark,
);

export const heat = intention(
  'park.heat',
  (m: Moment, by: number) => put(m, { rise: clamp(m.parts.park.rise + by, ...RISES) }),
  (_before, after) => words.parkedKHot(after.parts.park.rise),
);

/** The chocks are taken away, with the drum at a turn, rad; null: put under again. */
export const letRoll = intention(
  'park.loose',
  (m: Moment, loose: number | null) => put(m, { loose }),
  (_before, after) => (after.parts.park.loose === null ? 'chocked' : words.chocksAway),
);
