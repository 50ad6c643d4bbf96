import type { DrumFault } from '../index.ts';
import type { FaultWords } from './fault-types.ts';

/** What the workshop says of them. */
export const drumFaults: Readonly<Record<DrumFault, FaultWords>> = {
  'oval drum': {
    short: 'rubs twice a turn',
    change: 'radius ± 0.12 mm, adjuster a tooth further out',
    mechanism:
      'Set until it just runs free at one place, it rubs where the bore is narrower, and in a stop the pedal is pushed back twice a turn. By itself the adjuster does not go further here: a long lining meets an oval bore with its ends first, which shortens its stroke.',
    tells: 'The two-point gauge changes with the angle.',
    lookAlikes: ['drum off centre', 'bearing', 'stepped hot'],
    remedy: 'Renew, or machine within its marked limit; in pairs.',
    caution: 'fitting',
  },
  'drum off centre': {
    short: 'rubs once a turn',
    change: 'axis of the bore 0.20 mm beside the axle’s',
    mechanism:
      'Dirt or rust at the flange moves the whole bore aside. It is round, but turns about another point. So on the rollers it brakes harder, not less: the pistons push no harder, but each lining bears with one end alone, now the toe, now the heel, and there it is wedged into the drum.',
    tells: 'The two-point gauge stays the same all round, the dial swings.',
    lookAlikes: ['oval drum', 'bearing'],
    remedy: 'Clean both faces and refit. No hammer on the rim.',
    caution: 'drumOff',
  },
  lip: {
    short: 'the unworn edge holds the drum',
    change: 'swept face and linings worn 0.15 mm deeper, the edge as new',
    mechanism:
      'The swept face wears, the edge does not. Linings that rest outside the edge’s radius cannot pass it.',
    tells: 'It turns freely, slides a little, then stops; with teeth backed off it comes.',
    lookAlikes: ['hub rust', 'short cable', 'stepped hot', 'rusted on'],
    remedy: 'Back off by teeth, then judge drum and lining. Do not lever on the plate.',
    caution: 'drumOff',
  },
  'hub rust': {
    short: 'the drum is bonded to its spigot',
    change: 'bond at the hub set',
    mechanism:
      'Drum and hub have rusted together where they fit. It acts along the axle, nothing in the brake changes.',
    tells: 'It turns freely and does not slide at all.',
    lookAlikes: ['lip', 'short cable', 'rusted on'],
    remedy: 'Penetrant, and the threaded holes if it has them.',
    caution: 'hubRust',
  },
  groove: {
    short: 'the shoe’s edge catches, then snaps',
    change: 'an edge breaks out of its groove at 150 N',
    mechanism:
      'The shoe sits in a groove and comes out late, with a jerk. How deep, and how it tilts, lies along the axle and is not shown.',
    tells: 'Nothing at first, then all at once; marks on the pads.',
    lookAlikes: ['sluggish pistons', 'strong springs'],
    remedy: 'Repair or renew the plate.',
    caution: 'springs',
  },
  bearing: {
    short: 'free on stands, hot on the road',
    change: 'the loaded drum rises 0.30 mm against the plate',
    mechanism:
      'Under load the drum goes up against shoes that stay with the plate: the heel ends lose most of their gap.',
    tells: 'No rub on stands; the wheel rocks; bore and dial are good.',
    lookAlikes: ['drum off centre', 'oval drum', 'kept pull'],
    remedy: 'The bearing, as the maker says.',
    caution: 'stands',
  },
  'rusted on': {
    short: 'stuck until it breaks once',
    change: 'rust bond between lining and bore set',
    mechanism:
      'Parked wet, iron rust grips the lining. It shears once and is gone. Its strength is an order, from memory.',
    tells: 'It does not turn at all, then frees with one jerk.',
    lookAlikes: ['kept pull', 'hub rust', 'stepped hot'],
    remedy: 'Rock it free, dry it by light braking, do not park wet on the lever.',
    caution: 'park',
  },
};
