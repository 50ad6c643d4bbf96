import { parkedReadings, type Rig, slopeReadings } from '../../sim/index.ts';
import { number } from '../format.ts';
import { type Arguments, sizeOf } from './args.ts';
import { asJson, jsonValues } from './json.ts';
import { lines, type Say } from './print.ts';
import { stateOf } from './state.ts';

/** `park`: the brake held by its cable, at rest, both ways; on a slope what that asks for too. */
export async function park(args: Arguments, rig: Rig, say: Say): Promise<void> {
  const cable = await sizeOf(args, 'cable', 300, 'N', [0, 5000]);
  const slope = (await sizeOf(args, 'slope', 0, '%', [0, 100])) / 100;
  const state = await stateOf(args, rig);
  const list = [
    ...parkedReadings(rig, state, cable),
    ...(slope > 0 ? slopeReadings(rig, state, slope, cable) : []),
  ];
  if (args.flags.has('json')) {
    say(
      asJson({
        scene: rig.brake.name,
        command: 'park',
        cable: { value: cable, unit: 'N' },
        slope: { value: 100 * slope, unit: '%' },
        readings: jsonValues(list),
      }),
    );
    return;
  }
  const on = slope > 0 ? `, on ${number(100 * slope, 1)} %` : '';
  say(`${rig.brake.title}: ${number(cable, 0)} N in the cable${on}`);
  say(lines(list));
}
