import {
  adjusterKinds,
  createLife,
  createRig,
  forecast,
  KM,
  type Rig,
  readings,
  rest,
  withAdjuster,
  withReverse,
} from '../../sim/index.ts';
import { eventText, restsOn } from '../../sim/workshop/index.ts';
import { number } from '../format.ts';
import { ends } from '../words.ts';
import { type Arguments, choiceOf, quoted, sizeOf, UsageError } from './args.ts';
import { asJson, jsonValues } from './json.ts';
import { lines, type Say } from './print.ts';
import { progress } from './progress.ts';
import { startOf } from './state.ts';

/** Driven in one go, mm. */
const PIECE = 1000 * KM;

/** The scene's brake with the adjuster asked for. */
async function rigOf(args: Arguments, rig: Rig): Promise<Rig> {
  const own = rig.brake.adjuster;
  const kind = choiceOf(args, 'adjuster', adjusterKinds, own.kind);
  const hotLock = await sizeOf(args, 'hot-lock', own.hotLock, 'degC', [-40, 900]);
  const drivenBy = choiceOf(args, 'driven-by', ['application', 'parking pull'], own.drivenBy);
  const brake = withAdjuster(rig.brake, kind, { hotLock, drivenBy });
  return createRig(brake, rig.options);
}

/** `life`: driven by a duty of the scene to a distance or a limit, its events and what is left. */
export async function life(args: Arguments, plain: Rig, say: Say, complain: Say): Promise<void> {
  const rig = await rigOf(args, plain);
  const { brake } = rig;
  const names = brake.duties.map((d) => d.name);
  const name = choiceOf(args, 'duty', names, names[0] as string);
  const named = brake.duties.find((d) => d.name === name);
  if (!named) throw new UsageError('--duty', quoted(name), names.join(', '));
  const duty = args.options.has('reverse')
    ? withReverse(named, (await sizeOf(args, 'reverse', 0, '%', [0, 100])) / 100)
    : named;
  const start = startOf(args, rig);
  const state = {
    ...start,
    condition: { ...start.condition, adjusterSeized: args.flags.has('seized') },
  };
  const far = args.options.has('km') ? await sizeOf(args, 'km', 0, 'km', [0, 1e6]) : null;
  const run = createLife(rig, state, duty, {
    ...(far === null ? {} : { distance: far * KM }),
    oneByOne: args.flags.has('one-by-one'),
    stopAtLimit: !args.flags.has('past-limits'),
  });
  const tick = progress(complain, 'km', far);
  while (!run.done) {
    run.advance(PIECE);
    tick((run.distance - start.distance) / KM);
  }
  const end = run.state();
  const last = run.rows.at(-1);
  const left = last
    ? forecast(brake, {
        distance: run.distance,
        lining: { front: last.liningFront, rear: last.liningRear },
        drum: 2 * last.drumRadius,
        teeth: last.tooth,
      })
    : { lines: [], first: null };
  const free = rest(rig, end);
  const list = readings(brake, end, free, free).filter((r) => Number.isFinite(r.value));
  if (args.flags.has('json')) {
    const km = (distance: number) => ({ value: distance / KM, unit: 'km' });
    say(
      asJson({
        scene: brake.name,
        command: 'life',
        duty: duty.name,
        adjuster: brake.adjuster.kind,
        ended: run.end,
        km: km(run.distance),
        stops: end.applications,
        events: run.events.map((e) => ({
          kind: e.kind,
          tooth: e.tooth,
          side: e.side,
          distance: km(e.distance),
          text: eventText(brake, e),
        })),
        forecast: left.lines.map((l) => ({
          what: l.what,
          left: km(l.left),
          low: km(l.low),
          high: km(l.high),
          rests: restsOn(l),
        })),
        end: jsonValues(list),
      }),
    );
    return;
  }
  say(`${brake.title}: ${duty.name}, ${brake.adjuster.kind}`);
  for (const e of run.events) say(eventText(brake, e));
  const driven = `after ${number(run.distance / KM, 0)} km and ${number(end.applications, 0)} stops`;
  // What cannot be driven on has nothing left to forecast.
  const stuck = run.end === 'seized' || run.end === 'gave way';
  say(stuck ? `${ends[run.end]} That was ${driven}.` : `Ended by ${run.end} ${driven}.`);
  for (const l of stuck ? [] : left.lines) {
    const band = `${number(l.low / KM, 0)} to ${number(l.high / KM, 0)}`;
    say(`Left by the ${l.what}: ${number(l.left / KM, 0)} km, band ${band}. ${restsOn(l)}`);
  }
  say('End state, released:');
  say(lines(list));
}
