import {
  BAR,
  curveReadings,
  type PedalPoint,
  partReadings,
  pedalCurve,
  type Rig,
} from '../../sim/index.ts';
import { pedalNotes } from '../../sim/workshop/index.ts';
import { number } from '../format.ts';
import { type Arguments, choiceOf, sizeOf } from './args.ts';
import { withCircuit } from './circuit.ts';
import { asJson, jsonValues } from './json.ts';
import { lines, type Say } from './print.ts';
import { stateOf } from './state.ts';

const COLUMNS: readonly (readonly [string, (p: PedalPoint) => string])[] = [
  ['bar', (p) => number(p.pressure / BAR, 1)],
  ['foot N', (p) => number(p.force, 0)],
  ['pedal mm', (p) => number(p.total, 1)],
  ['run-out mm', (p) => number(p.runOut, 2)],
];

/** The curve as a table, one line a point. */
function table(points: readonly PedalPoint[]): string {
  const rows = [
    COLUMNS.map(([head]) => head),
    ...points.map((p) => COLUMNS.map(([, of]) => of(p))),
  ];
  const wide = COLUMNS.map((_, k) => Math.max(...rows.map((r) => (r[k] as string).length)));
  return rows.map((r) => r.map((t, k) => t.padStart(wide[k] as number)).join('  ')).join('\n');
}

/** `pedal`: force of the foot against travel, from released to a pressure. */
export async function pedal(args: Arguments, as: Rig, say: Say): Promise<void> {
  const pressure = await sizeOf(args, 'pressure', 4, 'MPa', [0.1, 20]);
  const drum = choiceOf(args, 'drum', ['forward', 'stopped', 'backward'], 'forward');
  const turning = drum === 'forward' ? 1 : drum === 'stopped' ? 0 : -1;
  const rig = withCircuit(args, as);
  const state = await stateOf(args, rig);
  const curve = pedalCurve(rig, state, pressure, turning);
  const list = curveReadings(curve);
  const parts = partReadings(curve);
  const notes = pedalNotes(curve);
  if (args.flags.has('json')) {
    say(
      asJson({
        scene: rig.brake.name,
        command: 'pedal',
        drum,
        readings: jsonValues([...list, ...parts]),
        curve: {
          units: { pressure: 'MPa', line: 'MPa', force: 'N', travel: 'mm', runOut: 'mm' },
          points: curve.points.map((p) => ({
            pressure: p.pressure,
            line: p.line,
            force: p.force,
            travel: p.total,
            runOut: p.runOut,
          })),
        },
        notes,
      }),
    );
    return;
  }
  say(`${rig.brake.title}: the pedal to ${number(pressure / BAR, 1)} bar, drum ${drum}`);
  say(table(curve.points));
  say(lines(list));
  say(`Pedal travel at ${number(pressure / BAR, 1)} bar, part by part:`);
  say(lines(parts));
  for (const note of notes) say(note);
}
