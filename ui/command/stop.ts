import {
  dragReadings,
  KMH,
  lineAt,
  masterAt,
  pressureToSlow,
  type Rig,
  readingOf,
  slowingReadings,
  stopAt,
  stopReadings,
  wheelReadings,
} from '../../sim/index.ts';
import { stopNotes } from '../../sim/workshop/index.ts';
import { number } from '../format.ts';
import { type Arguments, choiceOf, sizeOf, UsageError } from './args.ts';
import { withCircuit } from './circuit.ts';
import { asJson, jsonValues } from './json.ts';
import { lines, type Say } from './print.ts';
import { stateOf } from './state.ts';

/** How hard a stop is asked for: one of these, 4 MPa where none is given. */
const ASKED = ['pressure', 'pedal', 'deceleration'] as const;
/** m to mm. */
const METRE = 1000;

/** `stop`: from a speed at a pressure, a push of the foot, or as hard as told; and the drag in driving. */
export async function stop(args: Arguments, as: Rig, say: Say): Promise<void> {
  const given = ASKED.filter((name) => args.options.has(name));
  if (given.length > 1) {
    throw new UsageError(given.map((name) => `--${name}`).join(' and '), 'both', 'one of them');
  }
  const kmh = await sizeOf(args, 'speed', 50, 'km/h', [1, 300]);
  const speed = kmh * KMH;
  const way = choiceOf(args, 'drum', ['forward', 'backward'], 'forward') === 'forward' ? 1 : -1;
  const rig = withCircuit(args, as);
  const state = await stateOf(args, rig);
  // Of unlike wheels both are stopped by, unless one is asked for, or a state that is no wheel's.
  const both =
    rig.brake.otherStart && !args.options.has('wheel') && !args.options.has('state')
      ? { left: await stateOf(args, rig, 'left'), right: await stateOf(args, rig, 'right') }
      : null;
  const states = both ? [both.left, both.right] : state;
  const pedal = await sizeOf(args, 'pedal', Number.NaN, 'N', [0, 2000]);
  const wanted = await sizeOf(args, 'deceleration', Number.NaN, 'm/s^2', [0, 20]);
  const slowing = Number.isFinite(wanted)
    ? slowingReadings(rig, states, wanted * METRE, speed, way)
    : [];
  const told = await sizeOf(args, 'pressure', 4, 'MPa', [0, 20]);
  const pressure = Number.isFinite(wanted)
    ? pressureToSlow(rig, states, wanted * METRE, speed, way)
    : Number.isFinite(pedal)
      ? masterAt(rig.brake, pedal)
      : told;
  const reached = Number.isFinite(pressure);
  const list = reached ? stopReadings(rig, states, speed, pressure, way) : [];
  if (both && reached)
    list.push(...wheelReadings(rig, both, lineAt(rig.brake, pressure), way, speed));
  const drag = dragReadings(rig, state, speed);
  const notes = reached ? stopNotes(rig.brake, stopAt(rig, states, speed, pressure, way)) : [];
  if (args.flags.has('json')) {
    say(
      asJson({
        scene: rig.brake.name,
        command: 'stop',
        speed: { value: kmh, unit: 'km/h' },
        pressure: { value: reached ? pressure : null, unit: 'MPa' },
        drum: way > 0 ? 'forward' : 'backward',
        readings: jsonValues([...slowing, ...list, ...drag]),
        notes,
      }),
    );
    return;
  }
  const how = reached ? `${number(10 * pressure, 1)} bar` : 'no pressure does it';
  say(`${rig.brake.title}: a stop from ${number(kmh, 0)} km/h, ${how}`);
  say(lines([...slowing, ...list]));
  if (readingOf(drag, 'dragTorque').value !== 0) say(`Released, at that speed:\n${lines(drag)}`);
  for (const note of notes) say(note);
}
