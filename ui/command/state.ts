import {
  type BrakeState,
  type Condition,
  isDriven,
  KM,
  lockedShoe,
  type Rig,
  SOUND,
  SURFACES,
  standingState,
  startState,
  type Wheel,
  wearOn,
} from '../../sim/index.ts';
import { type Arguments, choiceOf, quoted, sizeOf, UsageError } from './args.ts';

const WHEELS = ['left', 'right'] as const;

/** A brake that locks forward turns no driving into wear: asked for, it is refused. */
function mustTurn(rig: Rig, state: BrakeState, option: string): void {
  const side = lockedShoe(rig, state, 1);
  if (side) {
    throw new UsageError(
      `--${option}`,
      `a brake whose ${side} shoe locks by itself`,
      '0 km, it cannot be driven',
    );
  }
}

/** The brake as its scene starts it, of the wheel that is asked for. */
export function startOf(args: Arguments, rig: Rig, wheel?: Wheel): BrakeState {
  const of = wheel ?? choiceOf(args, 'wheel', WHEELS, rig.brake.wheel);
  return startState(rig.brake, rig.front.bed.count, of);
}

async function worn(args: Arguments, rig: Rig, wheel?: Wheel): Promise<BrakeState> {
  const name = args.options.get('state');
  const start = startOf(args, rig, wheel);
  if (name !== undefined) {
    for (const other of ['km', 'wheel']) {
      if (args.options.has(other))
        throw new UsageError(`--state and --${other}`, 'both', 'one of them');
    }
    const { states } = rig.brake;
    const recipe = states.find((s) => s.name === name);
    if (!recipe) {
      const names = states.map((s) => s.name).join(', ') || 'none, this scene has no states';
      throw new UsageError('--state', quoted(name), names);
    }
    if (isDriven(recipe)) mustTurn(rig, start, 'state');
    return standingState(rig, name);
  }
  const distance = (await sizeOf(args, 'km', 0, 'km', [0, 1e6])) * KM;
  if (distance === 0) return start;
  mustTurn(rig, start, 'km');
  return wearOn(rig, start, { distance }).state;
}

/** What is out of order by the options. */
async function conditionOf(args: Arguments, sound: Condition): Promise<Condition> {
  const size = (name: string, fallback: number, unit: string, most: number) =>
    sizeOf(args, name, fallback, unit, [0, most]);
  const surface = choiceOf(args, 'surface', SURFACES, 'dry');
  const stuck = choiceOf(args, 'stuck', ['front', 'rear', 'none'], 'none');
  return {
    ...sound,
    surface: { front: surface, rear: surface },
    pistonStuck: { front: stuck === 'front', rear: stuck === 'rear' },
    cupExtra: await size('cup-friction', 0, 'N', 2000),
    springFactor: (await size('springs', 100, '%', 200)) / 100,
    keptPressure: await size('kept-pressure', 0, 'MPa', 20),
    groove: await size('groove', 0, 'N', 1000),
    oval: await size('oval', 0, 'mm', 1),
    offCentre: await size('off-centre', 0, 'mm', 1),
  };
}

/** The state of a wheel that the options ask for: worn on, then as hot and out of order as told. */
export async function stateOf(args: Arguments, rig: Rig, wheel?: Wheel): Promise<BrakeState> {
  const { temperature: cold, leverOffStop: home } = startOf(args, rig, wheel);
  const temperature = await sizeOf(args, 'temperature', cold, 'degC', [-40, 900]);
  const leverOffStop = await sizeOf(args, 'lever-off-stop', home, 'mm', [0, 50]);
  const condition = await conditionOf(args, SOUND);
  const state = await worn(args, rig, wheel);
  return { ...state, temperature, leverOffStop, condition };
}
