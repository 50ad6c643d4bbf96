import { ailing, type Fault } from './fault-types.ts';
import { UNHELD } from './removal.ts';

/** Faults of the drum and what carries it. */
export const drumFaults: readonly Fault[] = [
  {
    id: 'oval drum',
    row: 24,
    name: 'Drum oval',
    short: 'rubs twice a turn',
    group: 'Drum',
    change: 'radius ± 0.12 mm, adjuster a tooth further out',
    mechanism:
      'Set until it just runs free at one place, it rubs where the bore is narrower, and in a stop the pedal is pushed back twice a turn. By itself the adjuster does not go further here: a long lining meets an oval bore with its ends first, which shortens its stroke.',
    tells: 'The two-point gauge changes with the angle.',
    lookAlikes: ['drum off centre', 'bearing', 'stepped hot'],
    remedy: 'Renew, or machine within its marked limit; in pairs.',
    caution: 'fitting',
    wheels: 'one',
    apply: (rig, state) => ({
      state: ailing(
        { ...state, tooth: Math.min(rig.brake.adjuster.teeth, state.tooth + 1) },
        { oval: 0.12 },
      ),
    }),
  },
  {
    id: 'drum off centre',
    row: 25,
    name: 'Drum off centre',
    short: 'rubs once a turn',
    group: 'Drum',
    change: 'axis of the bore 0.20 mm beside the axle’s',
    mechanism:
      'Dirt or rust at the flange moves the whole bore aside. It is round, but turns about another point.',
    tells: 'The two-point gauge stays the same all round, the dial swings.',
    lookAlikes: ['oval drum', 'bearing'],
    remedy: 'Clean both faces and refit. No hammer on the rim.',
    caution: 'drumOff',
    wheels: 'one',
    apply: (_rig, state) => ({ state: ailing(state, { offCentre: 0.2 }) }),
  },
  {
    id: 'lip',
    row: 27,
    name: 'Lip behind the linings',
    short: 'the unworn edge holds the drum',
    group: 'Drum',
    change: 'swept face and linings worn 0.15 mm deeper, the edge as new',
    mechanism:
      'The swept face wears, the edge does not. Linings that rest outside the edge’s radius cannot pass it.',
    tells: 'It turns freely, slides a little, then stops; with teeth backed off it comes.',
    lookAlikes: ['hub rust', 'short cable', 'stepped hot', 'rusted on'],
    remedy: 'Back off by teeth, then judge drum and lining. Do not lever on the plate.',
    caution: 'drumOff',
    wheels: 'one',
    apply: (_rig, state) => {
      const deeper = (w: Float64Array) => w.map((v) => Math.max(0, v - 0.15));
      return {
        state: {
          ...state,
          drumRadius: state.drumRadius + 0.15,
          wear: { front: deeper(state.wear.front), rear: deeper(state.wear.rear) },
        },
      };
    },
  },
  {
    id: 'hub rust',
    row: 28,
    name: 'Rust at the hub',
    short: 'the drum is bonded to its spigot',
    group: 'Drum',
    change: 'bond at the hub set',
    mechanism:
      'Drum and hub have rusted together where they fit. It acts along the axle, nothing in the brake changes.',
    tells: 'It turns freely and does not slide at all.',
    lookAlikes: ['lip', 'short cable', 'rusted on'],
    remedy: 'Penetrant, and the threaded holes if it has them.',
    caution: 'hubRust',
    wheels: 'one',
    apply: (_rig, state) => ({ state, held: { ...UNHELD, hubRust: true } }),
  },
  {
    id: 'groove',
    row: 29,
    name: 'Groove in a plate pad',
    short: 'the shoe’s edge catches, then snaps',
    group: 'Drum',
    change: 'an edge breaks out of its groove at 150 N',
    mechanism:
      'The shoe sits in a groove and comes out late, with a jerk. How deep, and how it tilts, lies along the axle and is not shown.',
    tells: 'Nothing at first, then all at once; marks on the pads.',
    lookAlikes: ['sluggish pistons', 'strong springs'],
    remedy: 'Repair or renew the plate.',
    caution: 'springs',
    wheels: 'one',
    apply: (_rig, state) => ({ state: ailing(state, { groove: 150 }) }),
  },
  {
    id: 'bearing',
    row: 37,
    name: 'Bearing lets the drum rise',
    short: 'free on stands, hot on the road',
    group: 'Drum',
    change: 'the loaded drum rises 0.30 mm against the plate',
    mechanism:
      'Under load the drum goes up against shoes that stay with the plate: the heel ends lose most of their gap.',
    tells: 'No rub on stands; the wheel rocks; bore and dial are good.',
    lookAlikes: ['drum off centre', 'oval drum', 'kept pull'],
    remedy: 'The bearing, as the maker says.',
    caution: 'stands',
    wheels: 'one',
    apply: (_rig, state) => ({ state: ailing(state, { drumRise: 0.3 }) }),
  },
  {
    id: 'rusted on',
    row: 40,
    name: 'Linings rusted on',
    short: 'stuck until it breaks once',
    group: 'Drum',
    change: 'rust bond between lining and bore set',
    mechanism:
      'Parked wet, iron rust grips the lining. It shears once and is gone. Its strength is an order, from memory.',
    tells: 'It does not turn at all, then frees with one jerk.',
    lookAlikes: ['kept pull', 'hub rust', 'stepped hot'],
    remedy: 'Rock it free, dry it by light braking, do not park wet on the lever.',
    caution: 'park',
    wheels: 'both',
    apply: (_rig, state) => ({ state, held: { ...UNHELD, liningsRusted: true } }),
  },
];
