import { growthTo, partingFor } from './adjuster.ts';
import { leverArms } from './parking.ts';
import { apart, eachShoe, mm, must, type Rule } from './rule.ts';

/** A drum may be this far past its mark at the start, mm on diameter: it must be seen to fail. */
const PAST_MARK = 2;
/** A strut too long by this drags, mm at the seats: an adjuster set out too far. Longer, no drum goes on. */
const DRAGS = 0.5;

/** How it starts, and the states it offers. */
export const startRules: readonly Rule[] = [
  {
    name: 'tooth that is there',
    reason: 'The adjuster stands on one of its teeth.',
    broken: ({ start, adjuster }) =>
      must(
        start.tooth <= adjuster.teeth,
        'start.tooth',
        `${start.tooth}`,
        `0 to ${adjuster.teeth}, the teeth there are`,
      ),
  },
  {
    name: 'drum at the start',
    reason: 'A drum is worn from new on.',
    broken: ({ start, drum }) => {
      const bore = start.drumDiameter ?? drum.diameterNew;
      return must(
        bore >= drum.diameterNew && bore <= drum.diameterMax + PAST_MARK,
        'start.drumDiameter',
        mm(bore),
        `${mm(drum.diameterNew)} as new to ${mm(drum.diameterMax + PAST_MARK)}, two past its limit`,
      );
    },
  },
  {
    name: 'lining at the start',
    reason: 'Some lining is left.',
    broken: (s) =>
      eachShoe(s, ({ lining }, _, __, side) =>
        must(
          s.start.wear[side] < lining.thicknessNew,
          `start.wear.${side}`,
          mm(s.start.wear[side]),
          `less than the lining, ${mm(lining.thicknessNew)}`,
        ),
      ),
  },
  {
    name: 'strut at the start',
    reason: 'The drum goes over shoes that the strut holds no farther apart than that.',
    broken: (s) => {
      const { start, drum, adjuster, shoes } = s;
      const out = ((start.drumDiameter ?? drum.diameterNew) - drum.diameterNew) / 2;
      const { front, rear } = start.wear;
      const room =
        apart(shoes.front.strutSeat, shoes.rear.strutSeat) +
        partingFor(s, { front: front + out, rear: rear + out });
      const arms = leverArms(s);
      const held = Math.abs((start.leverOffStop * arms.notch) / arms.hook);
      const length = adjuster.lengthAtZero + growthTo(s, start.tooth) + held;
      const bare = adjuster.lengthAtZero + growthTo(s, start.tooth);
      return must(
        !(length > room + DRAGS),
        bare > room + DRAGS ? 'start.tooth' : 'start.leverOffStop',
        bare > room + DRAGS
          ? `${start.tooth}, a strut of ${mm(bare)}`
          : `${mm(start.leverOffStop)}, with it a strut of ${mm(length)}`,
        `a strut of at most ${mm(room + DRAGS)} with these linings in this drum`,
      );
    },
  },
];
