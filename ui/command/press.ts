import {
  application,
  BAR,
  balance,
  KMH,
  lockedShoe,
  parkedReadings,
  type Rig,
  readings,
  rest,
  slopeReadings,
  type Turning,
  turnReadings,
  usualSpeed,
} from '../../sim/index.ts';
import { yieldText } from '../../sim/workshop/index.ts';
import { number } from '../format.ts';
import { lostText } from '../words.ts';
import { type Arguments, choiceOf, sizeOf } from './args.ts';
import { asJson, jsonValues } from './json.ts';
import { lines, locks, type Say } from './print.ts';
import { stateOf } from './state.ts';

const TURNING: Readonly<Record<'forward' | 'stopped' | 'backward', Turning>> = {
  forward: 1,
  stopped: 0,
  backward: -1,
};

/** One application as the options have it, after the ratchet had its say. */
export async function pressOf(args: Arguments, rig: Rig) {
  const pressure = await sizeOf(args, 'pressure', 4, 'MPa', [0, 20]);
  const drum = choiceOf(args, 'drum', ['forward', 'stopped', 'backward'], 'forward');
  const cable = await sizeOf(args, 'cable', 0, 'N', [0, 5000]);
  const slope = (await sizeOf(args, 'slope', 0, '%', [0, 100])) / 100;
  const usual = usualSpeed(rig.brake) / KMH;
  const speed = (await sizeOf(args, 'speed', usual, 'km/h', [1, 300])) * KMH;
  const turning = TURNING[drum];
  const before = await stateOf(args, rig);
  // Friction that hangs on speed is told where its law is, when none is asked for.
  const at: { readonly speed?: number } = args.options.has('speed') ? { speed } : {};
  // A drum that is held cannot drag the shoes on: the ratchet sees a press standing still.
  const held =
    lockedShoe(rig, before, turning, cable > 0 ? undefined : pressure, at.speed) !== null;
  const judged = application(rig, before, { pressure, turning: held ? 0 : turning, ...at });
  const { state } = judged;
  const instant = balance(rig, state, { pressure, turning, cable, ...at });
  const list = readings(rig.brake, state, instant, rest(rig, state), speed);
  if (cable > 0) list.push(...parkedReadings(rig, state, cable));
  if (slope > 0) list.push(...slopeReadings(rig, state, slope, cable));
  const { oval, offCentre } = state.condition;
  if (oval > 0 || offCentre > 0)
    list.push(...turnReadings(rig, state, { pressure, turning, cable }));
  return { pressure, drum, clicked: judged.clicked, state, instant, list };
}

/** `press`: the readings of one application. */
export async function press(args: Arguments, rig: Rig, say: Say): Promise<void> {
  const { pressure, drum, clicked, state, instant, list } = await pressOf(args, rig);
  if (args.flags.has('json')) {
    say(
      asJson({
        scene: rig.brake.name,
        command: 'press',
        pressure: { value: pressure, unit: 'MPa' },
        drum,
        locked: instant.locked,
        lost: instant.lost,
        yields: instant.yields,
        tooth: state.tooth,
        clicked: clicked,
        readings: jsonValues(list),
      }),
    );
    return;
  }
  say(`${rig.brake.title}: ${number(pressure / BAR, 1)} bar, drum ${drum}`);
  if (clicked > 0) say(`Clicked to tooth ${state.tooth}.`);
  if (instant.locked) say(locks(instant.locked));
  if (instant.lost) say(lostText);
  if (instant.yields) say(yieldText(instant.yields));
  say(lines(list));
}
