import {
  type BrakeState,
  KM,
  lockedShoe,
  type Rig,
  type Surface,
  standingState,
  startState,
  wearOn,
} from '../../sim/index.ts';
import { type Arguments, choiceOf, sizeOf, UsageError } from './args.ts';

const SURFACES: readonly Surface[] = ['dry', 'damp', 'wet', 'glazed', 'greasy'];

/** A brake that locks forward turns no driving into wear: asked for, it is refused. */
function mustTurn(rig: Rig, state: BrakeState, option: string): void {
  const side = lockedShoe(rig, state, 1);
  if (side) {
    throw new UsageError(
      `--${option}: found a brake whose ${side} shoe locks by itself; allowed: 0 km, it cannot be driven`,
    );
  }
}

async function worn(args: Arguments, rig: Rig): Promise<BrakeState> {
  const name = args.options.get('state');
  const start = startState(rig.brake);
  if (name !== undefined) {
    if (args.options.has('km')) {
      throw new UsageError('--state and --km: found both; allowed: one of them');
    }
    const { states } = rig.brake;
    const recipe = states.find((s) => s.name === name);
    if (!recipe) {
      const names = states.map((s) => s.name).join(', ') || 'none, this scene has no states';
      throw new UsageError(`--state: found "${name}"; allowed: ${names}`);
    }
    if (recipe.distance > 0) mustTurn(rig, start, 'state');
    return standingState(rig, name);
  }
  const distance = (await sizeOf(args, 'km', 0, 'km', [0, 1e6])) * KM;
  if (distance === 0) return start;
  mustTurn(rig, start, 'km');
  return wearOn(rig, start, { distance }).state;
}

/** The state that the options ask for: worn on, then as hot, slippery or stuck as told. */
export async function stateOf(args: Arguments, rig: Rig): Promise<BrakeState> {
  const { temperature: cold } = rig.brake.start;
  const temperature = await sizeOf(args, 'temperature', cold, 'degC', [-40, 900]);
  const surface = choiceOf(args, 'surface', SURFACES, 'dry');
  const stuck = choiceOf(args, 'stuck', ['front', 'rear', 'none'], 'none');
  const state = await worn(args, rig);
  return {
    ...state,
    temperature,
    condition: {
      ...state.condition,
      surface: { front: surface, rear: surface },
      pistonStuck: { front: stuck === 'front', rear: stuck === 'rear' },
    },
  };
}
