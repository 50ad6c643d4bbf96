import { cautions } from '../../cautions.ts';
import { number } from '../../format.ts';
import type { Facts, Step } from './step.ts';

/** Setting new shoes, and bedding them in: figures are the model's, with the sizes of New shoes. */

const mm2 = (value: number): string => number(value, 2);

export function setWords(desk: Facts): Readonly<Record<string, Step>> {
  const { set } = desk;
  return {
    parts: {
      name: 'Right parts, both wheels',
      does: () =>
        `Bore ${mm2(set.bore)}, linings ${mm2(set.thickness)} thick and ground for ${mm2(set.ground)}: ${set.fitWords}. Your own sizes are typed in New shoes.`,
      tool: ['gauge', 'drum gauge, rule'],
      checks: ['Drum measured at three angles', 'Both wheels of the axle alike'],
      care: 'Limits and clearances are the vehicle maker’s. These are of the teaching brake.',
    },
    gauge: {
      name: 'Set by the gauge',
      does: () =>
        `Cable slack. Measure the bore in its swept track, set the shoes ${mm2(set.difference)} mm smaller at the middles of the linings: ${set.toothName}.`,
      tool: ['gauge', 'shoe-setting gauge'],
      checks: ['Gauge slides over both linings alike'],
      care: cautions.piston,
      holds: () => [
        { name: 'Smaller than the bore by', value: mm2(set.difference), unit: 'mm' },
        { name: 'Gap of each lining', value: mm2(set.gap), unit: 'mm' },
        { name: 'Room at the lip', value: mm2(set.lip), unit: 'mm' },
      ],
    },
    'drum-on': {
      name: 'Drum on, turn it',
      does: 'Both faces of the flange bright and dry. Slide it straight on, never hammered; screw or nut as the maker says. Other wheel to here. Now the pedal is allowed again.',
      tool: ['hands', 'hands'],
      checks: ['It slides on without force', 'It turns free, or with the least rub'],
      care: cautions.fitting,
    },
    silent: {
      name: 'Press until silent',
      does: () =>
        `One listens at each wheel: lever fully down, drum cold. ${set.pressText} Pressed with the lever held off its stop it steps too little; on a hot drum, too far.`,
      tool: ['pedal', 'a foot, and an ear at each wheel'],
      checks: ['Silent at both wheels'],
      care: 'Never on a hot drum: it steps one tooth too far.',
      holds: () => [
        { name: 'Presses until silent', value: String(set.presses), unit: '' },
        { name: 'Gap then, each', value: mm2(set.gapThen), unit: 'mm' },
        { name: 'Pedal then', value: number(set.pedalThen, 1), unit: 'mm' },
      ],
    },
    home: {
      name: 'Lever home at both wheels',
      does: 'Look: the parking lever lies on its stop with the hand lever down, at both wheels.',
      tool: ['hands', 'torch, through the hole'],
      checks: ['Left on its stop', 'Right on its stop'],
      care: 'A lever off its stop sets the shoes in place of the adjuster: it stops clicking, then the pedal grows long.',
    },
    'cable-last': {
      name: 'Cable last',
      does: () =>
        `Slack just gone, both levers still on their stops. Then count notches at a firm pull: ${number(set.notches, 1)} here at 300 N in each cable. The maker’s count is right for yours.`,
      tool: ['pliers', 'spanner at the cable’s nut'],
      checks: ['Notches as the maker says', 'Wheels free again at 0 notches'],
      care: cautions.park,
      holds: () => [{ name: 'Notches at 300 N', value: number(set.notches, 1), unit: '' }],
    },
    turn: {
      name: 'Turn it by hand: how stiff is right',
      does: () =>
        `At the tyre: under ${number(set.felt, 0)} N is free, over ${number(set.stiff, 0)} N is wrong, look again. Between, it drags: once pressed and let go it must not stay so.`,
      tool: ['hands', 'a hand at the tyre, or a spring balance'],
      checks: ['Both ways alike', 'Both wheels alike'],
      care: cautions.fitting,
      holds: () => [
        { name: 'Free: under', value: number(set.felt, 0), unit: 'N' },
        { name: 'Wrong: over', value: number(set.stiff, 0), unit: 'N' },
        {
          name: 'Here, forward / back',
          value: `${number(set.turns[0], 0)} / ${number(set.turns[1], 0)}`,
          unit: 'N',
        },
      ],
      done: 'Set: to bedding in',
    },
  };
}

export function bedWords(desk: Facts): Readonly<Record<string, Step>> {
  const bed = desk.bedding;
  return {
    stops: {
      name: 'Ten moderate slow-downs',
      does: () =>
        `Ten slow-downs from 50 to 10 km/h, not to a standstill, a minute and a half of driving between. Each warms the drum by ${number(bed.rise, 0)} K; after ten it stands at ${number(bed.warmest, 0)} °C, and no more. They clean the faces and show whether it pulls.`,
      tool: ['pedal', 'an empty, level road'],
      checks: [
        'Straight with a loose hand, light and firm',
        'No smell but a faint one of paint or new resin',
      ],
      care: cautions.fault,
    },
    far: {
      name: 'Then drive gently',
      does: () =>
        `Ten slow-downs bed nothing: they are worth ${number(bed.tenKm, 0)} km, ${bed.share(0)} % of the leading arc bears before and ${bed.share(bed.tenKm)} % after. ${bed.farText} Nothing harder than needed for some hundred km, no descents, no load, lever not pulled on a hot drum.`,
      tool: ['pedal', 'patience'],
      checks: [
        'After 100 km: nuts to the maker’s torque, notches, heat left and right',
        'After 1 000 km: the same; a click may have come',
      ],
      care: cautions.hot,
    },
    'first-drive': {
      name: 'First drive',
      does: 'Before it moves: pedal firm at ten presses and does not sink, lever holds a push, fluid level, nothing wet, wheels to torque. Walking pace on level, empty ground; then 30 km/h; then a road. Back: drums alike to the back of a hand near them.',
      tool: ['pedal', 'level, empty ground'],
      checks: [
        'Pedal firm, does not sink',
        'Lever alone holds at walking pace',
        'No smell, wheels free after',
      ],
      care: cautions.fitting,
    },
    refuse: {
      name: 'It does not leave',
      does: 'While the pedal sinks or reaches the floor, anything leaks, drum, shoe, plate or pin is cracked, a lining is loose or under a limit, a part is missing or of the other side, the axle’s wheels are not alike, a wheel is not free, a figure of the maker’s is not known. It is moved on a trailer.',
      tool: ['stands', 'a trailer'],
      checks: ['None of these holds'],
      care: cautions.standing,
      done: 'Readings on the sheet: Inspect',
    },
  };
}
