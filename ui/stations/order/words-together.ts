import { orderWordsTogether as words } from '../../../sim/words/en.ts';
import { cautions } from '../../cautions.ts';
import { number } from '../../format.ts';
import type { Facts, Step } from './step.ts';

/** Putting together: the other way round, each with the check before the next part (common practice). */

const FLIES = words.flies;

const strutHow: Readonly<Record<'lift' | 'wheel' | 'wedge', string>> = words.strutHow;

export function togetherWords(desk: Facts): Readonly<Record<string, Step>> {
  const { byHand, onFlats: flats } = desk;
  const spring = (end: 'upper' | 'lower') => (d: Facts) => {
    const fitted = d.fitted(end);
    return fitted === null
      ? []
      : [{ name: words.willHoldName, value: number(fitted, 0), unit: 'N' }];
  };
  return {
    clean: {
      name: words.cleanName,
      does: words.cleanDoes(flats ? words.theFlats : words.thePins),
      tool: ['hands', words.cleanRagHighTemperatureBrake],
      checks: words.cleanChecks,
      care: cautions.fitting.split('. ')[0] as string,
    },
    'lever-on': {
      name: words.leverOnName,
      does: words.leverOnDoes,
      tool: ['pliers', words.clipTool],
      back: words.leverOnBack,
      checks: words.leverOnChecks,
      care: cautions.springs,
    },
    'lower-on': {
      name: words.lowerOnName,
      does: words.lowerOnDoes,
      tool: ['hands', 'hands'],
      flies: words.lowerOnFlies,
      back: words.lowerOnBack,
      checks: words.lowerOnChecks,
      care: FLIES,
      holds: spring('lower'),
    },
    'strut-on': {
      name: words.strutOnName,
      does: words.strutOnDoes(strutHow[byHand]),
      tool: ['hands', words.handThinHookForThe],
      back: words.strutOnBack,
      checks: words.strutOnChecks,
      care: cautions.springs,
    },
    'bench-on': {
      name: words.benchOnName,
      does: words.benchOnDoes(strutHow[byHand]),
      tool: ['puller', words.hookedSpringPuller],
      back: words.benchOnBack,
      checks: words.benchOnChecks,
      care: FLIES,
      holds: spring('upper'),
    },
    'hold-on': {
      name: words.holdOnName,
      does: words.holdOnDoes,
      tool: ['cup', words.cupTurnerAFingerOn],
      flies: words.holdOnFlies,
      checks: words.holdOnChecks,
      care: FLIES,
      holds: (d) => [
        { name: words.pressItInName, value: number(d.pressing('front'), 0), unit: 'N' },
      ],
    },
    'toes-in': {
      name: flats ? words.pairOverTheHubToes : words.clampOffToesIn,
      does: flats ? words.bothShoesOverTheHub : words.toesIntoThePistonsSlots,
      tool: ['clamp', words.handsTheClampStaysUntil],
      flies: words.toesInFlies,
      checks: words.toesInChecks,
      care: cautions.piston,
    },
    'upper-on': {
      name: words.upperOnName,
      does: words.upperOnDoes,
      tool: ['puller', words.springSeaterOrTheHooked],
      flies: words.upperOnFlies,
      back: words.upperOnBack,
      checks: words.upperOnChecks,
      care: FLIES,
      holds: spring('upper'),
    },
    centre: {
      name: words.centreName,
      does: words.centreDoes,
      tool: ['gauge', words.handsRule],
      checks: words.centreChecks,
      care: words.centreCare(cautions.piston),
      holds: (d) => [{ name: words.strutIsHeldName, value: number(d.strutForce, 0), unit: 'N' }],
      done: words.centreDone,
    },
  };
}
