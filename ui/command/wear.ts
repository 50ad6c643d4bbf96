import { KM, lockedShoe, type Rig, readings, rest, wearOn } from '../../sim/index.ts';
import { eventText } from '../../sim/workshop/index.ts';
import { number } from '../format.ts';
import { type Arguments, sizeOf, UsageError } from './args.ts';
import { asJson, jsonValues } from './json.ts';
import { lines, locks, type Say } from './print.ts';
import { startOf } from './state.ts';

/** `wear`: the click log of driving on from the start, and the released brake after it. */
export async function wear(args: Arguments, rig: Rig, say: Say): Promise<void> {
  if (!args.options.has('km')) {
    throw new UsageError('--km', 'nothing', 'a number from 0 to 1000000');
  }
  const km = await sizeOf(args, 'km', 0, 'km', [0, 1e6]);
  const start = startOf(args, rig);
  // A brake that locks from new cannot be driven: nothing wears, nothing clicks.
  const distance = lockedShoe(rig, start, 1) ? 0 : km * KM;
  const { state, events } =
    distance > 0 ? wearOn(rig, start, { distance }) : { state: start, events: [] };
  const locked = lockedShoe(rig, state, 1);
  const free = rest(rig, state);
  const list = readings(rig.brake, state, free, free).filter((r) => Number.isFinite(r.value));
  if (args.flags.has('json')) {
    say(
      asJson({
        scene: rig.brake.name,
        command: 'wear',
        km: { value: km, unit: 'km' },
        locked,
        events: events.map((e) => ({
          kind: e.kind,
          tooth: e.tooth,
          distance: { value: e.distance / KM, unit: 'km' },
          text: eventText(rig.brake, e),
        })),
        end: jsonValues(list),
      }),
    );
    return;
  }
  for (const e of events) say(eventText(rig.brake, e));
  if (locked) say(locks(locked));
  say(`End state after ${number(state.distance / KM, 0)} km, released:`);
  say(lines(list));
}
