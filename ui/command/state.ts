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
  wearOn,
} from '../../sim/index.ts';
import { type Arguments, choiceOf, quoted, sizeOf, UsageError } from './args.ts';

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

async function worn(args: Arguments, rig: Rig): Promise<BrakeState> {
  const name = args.options.get('state');
  const start = startState(rig.brake);
  if (name !== undefined) {
    if (args.options.has('km')) {
      throw new UsageError('--state and --km', 'both', 'one of them');
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

/** The state that the options ask for: worn on, then as hot and out of order as told. */
export async function stateOf(args: Arguments, rig: Rig): Promise<BrakeState> {
  const { temperature: cold, leverOffStop: home } = rig.brake.start;
  const temperature = await sizeOf(args, 'temperature', cold, 'degC', [-40, 900]);
  const leverOffStop = await sizeOf(args, 'lever-off-stop', home, 'mm', [0, 50]);
  const condition = await conditionOf(args, SOUND);
  const state = await worn(args, rig);
  return { ...state, temperature, leverOffStop, condition };
}
