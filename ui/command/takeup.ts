/**
 * The command line: what an instructor scripts and how anyone can check the numbers.
 *
 *   npm run -s takeup -- press SCENE [--pressure MPa] [--drum forward|stopped|backward]
 *                                    [--state NAME | --km N] [--temperature °C] [--cable N]
 *                                    [--surface dry|damp|wet|glazed|greasy] [--stuck front|rear] [--flexible] [--json]
 *   npm run -s takeup -- wear SCENE --km N [--json]
 *   npm run -s takeup -- check SCENE [--json]
 *
 * --json gives one object: press { scene, command, pressure, drum, locked, tooth, clicked, readings },
 * wear { scene, command, km, events, end }, check { scene, findings }; readings and end are objects of
 * { name, symbol, value, unit } by key, value null where there is nothing to tell. Exit codes: 0 done,
 * 1 findings in the scene, 2 a fault in what was typed.
 */
import {
  application,
  BAR,
  type BrakeState,
  balance,
  createRig,
  freshState,
  KM,
  parked,
  type Reading,
  type Rig,
  readings,
  rest,
  type Surface,
  slopeHeld,
  standingState,
  type Turning,
  wearOn,
} from '../../sim/index.ts';
import { number } from '../format.ts';
import { type Arguments, choiceOf, parse, sizeOf, UsageError } from './args.ts';
import { loadScene } from './load.ts';
import { jsonValues, lines } from './print.ts';

const known = {
  press: ['pressure', 'drum', 'state', 'km', 'temperature', 'cable', 'surface', 'stuck'],
  wear: ['km'],
  check: [],
} as const;

const usage = `takeup: one leading/trailing drum brake, computed

  press SCENE [--pressure 4] [--drum forward|stopped|backward] [--json]
        one application at MPa, its readings
        [--state NAME | --km N]   in a standing state, or worn on by N km
        [--temperature 20]        of the drum, °C
        [--cable 0]               pull of the parking cable at the hook, N
        [--surface dry|damp|wet|glazed|greasy]   of both linings
        [--stuck front|rear]      a piston that does not move
        [--flexible]              steel shoes that bend, instead of rigid ones
  wear SCENE --km N [--json]      click log and end state
  check SCENE [--json]            findings; exit code 1 if there are any

SCENE is a path or a name in scenes/. Sizes may carry a unit: --pressure "40 bar". --json gives every value with its unit:
{ key: { name, symbol, value, unit } }, value null where there is nothing to tell.`;

const turnings: Readonly<Record<'forward' | 'stopped' | 'backward', Turning>> = {
  forward: 1,
  stopped: 0,
  backward: -1,
};

const say = (text: string): void => {
  process.stdout.write(`${text}\n`);
};
const sayJson = (value: unknown): void => say(JSON.stringify(value, null, 2));

/** The state that the options ask for. */
async function stateOf(args: Arguments, rig: Rig): Promise<BrakeState> {
  const name = args.options.get('state');
  if (name !== undefined && args.options.has('km')) {
    throw new UsageError('--state and --km: found both; allowed: one of them');
  }
  let state: BrakeState;
  if (name === undefined) {
    const distance = (await sizeOf(args, 'km', 0, 'km', [0, 1e6])) * KM;
    const fresh = freshState(rig.brake);
    state = distance > 0 ? wearOn(rig, fresh, { distance }).state : fresh;
  } else {
    const names = rig.brake.states.map((s) => s.name);
    if (!names.includes(name)) {
      throw new UsageError(`--state: found "${name}"; allowed: ${names.join(', ')}`);
    }
    state = standingState(rig, name);
  }
  const surfaces: readonly Surface[] = ['dry', 'damp', 'wet', 'glazed', 'greasy'];
  const surface = choiceOf(args, 'surface', surfaces, 'dry');
  const stuck = args.options.has('stuck')
    ? choiceOf(args, 'stuck', ['front', 'rear'], 'front')
    : null;
  return {
    ...state,
    temperature: await sizeOf(args, 'temperature', 20, 'degC', [-40, 900]),
    condition: {
      ...state.condition,
      surface: { front: surface, rear: surface },
      pistonStuck: { front: stuck === 'front', rear: stuck === 'rear' },
    },
  };
}

/** Readings of the parked brake, when a cable pulls. */
function parkedReadings(rig: Rig, state: BrakeState, cable: number): Reading[] {
  const p = parked(rig, state, cable);
  const at = (
    key: string,
    name: string,
    value: number,
    unit: string,
    digits: number,
    means: string,
    formula: string,
  ): Reading => ({ key, name, symbol: '', value, unit, digits, means, formula });
  return [
    at(
      'slipForward',
      'Slip torque, rolling forward',
      p.locked ? Number.NaN : p.forward / 1000,
      'N·m',
      1,
      'Torque a wheel holds nose down.',
      'Σ μ N r',
    ),
    at(
      'slipBackward',
      'Slip torque, rolling backward',
      p.locked ? Number.NaN : p.backward / 1000,
      'N·m',
      1,
      'Torque a wheel holds nose up.',
      'Σ μ N r',
    ),
    at(
      'slopeDown',
      'Slope held nose down',
      100 * slopeHeld(rig, p.forward),
      '%',
      1,
      'Steepest slope held facing down it.',
      'tan φ, sin φ = n T / (m g r)',
    ),
    at(
      'slopeUp',
      'Slope held nose up',
      100 * slopeHeld(rig, p.backward),
      '%',
      1,
      'Steepest slope held facing up it.',
      'tan φ, sin φ = n T / (m g r)',
    ),
    at(
      'pivotForce',
      'Pivot on its own shoe',
      p.pivotForce,
      'N',
      0,
      'Strut force less cable pull.',
      'S − F_cable',
    ),
    at(
      'notches',
      'Hand-lever notches',
      p.notches,
      '',
      1,
      'Slack, stretch and lever travel over cable a notch.',
      '(slack + F/k + travel) / notch',
    ),
    at(
      'handForce',
      'Pull at the hand lever',
      p.handForce,
      'N',
      0,
      'Both cables over ratio and efficiency.',
      'n F / (i η)',
    ),
  ];
}

async function press(args: Arguments, rig: Rig): Promise<number> {
  const pressure = await sizeOf(args, 'pressure', 4, 'MPa', [0, 20]);
  const drum = choiceOf(args, 'drum', ['forward', 'stopped', 'backward'], 'forward');
  const cable = await sizeOf(args, 'cable', 0, 'N', [0, 5000]);
  const turning = turnings[drum];
  const judged = application(rig, await stateOf(args, rig), { pressure, turning });
  const { state } = judged;
  const instant = balance(rig, state, { pressure, turning, cable });
  const list = readings(rig.brake, state, instant, rest(rig, state));
  if (cable > 0) list.push(...parkedReadings(rig, state, cable));
  if (args.flags.has('json')) {
    sayJson({
      scene: rig.brake.name,
      command: 'press',
      pressure: { value: pressure, unit: 'MPa' },
      drum,
      locked: instant.locked,
      tooth: state.tooth,
      clicked: judged.clicked,
      readings: jsonValues(list),
    });
    return 0;
  }
  say(`${rig.brake.title}: ${number(pressure / BAR, 1)} bar, drum ${drum}`);
  if (judged.clicked > 0) say(`Clicked to tooth ${state.tooth}.`);
  if (instant.locked) say(`The ${instant.locked} shoe locks by itself: no force can be told.`);
  say(lines(list));
  return 0;
}

async function wear(args: Arguments, rig: Rig): Promise<number> {
  if (!args.options.has('km'))
    throw new UsageError('--km: found nothing; allowed: a number from 0 to 1000000');
  const km = await sizeOf(args, 'km', 0, 'km', [0, 1e6]);
  const { state, events } = wearOn(rig, freshState(rig.brake), { distance: km * KM });
  const free = rest(rig, state);
  const list = readings(rig.brake, state, free, free).filter((r) => Number.isFinite(r.value));
  if (args.flags.has('json')) {
    sayJson({
      scene: rig.brake.name,
      command: 'wear',
      km: { value: km, unit: 'km' },
      events: events.map((e) => ({
        kind: e.kind,
        tooth: e.tooth,
        distance: { value: e.distance / KM, unit: 'km' },
        text: e.text,
      })),
      end: jsonValues(list),
    });
    return 0;
  }
  for (const e of events) say(e.text);
  say(`End state after ${number(state.distance / KM, 0)} km, released:`);
  say(lines(list));
  return 0;
}

async function main(): Promise<number> {
  const args = parse(process.argv.slice(2), known);
  if (args.command === 'help') {
    say(usage);
    return 0;
  }
  const result = loadScene(args.scene);
  const findings = result.ok ? [] : result.findings;
  if (args.command === 'check' && args.flags.has('json')) sayJson({ scene: args.scene, findings });
  else for (const f of findings) say(`${f.path}: found ${f.found}; allowed: ${f.allowed}`);
  if (!result.ok) return 1;
  if (args.command === 'check') {
    if (!args.flags.has('json')) say(`${args.scene}: no findings`);
    return 0;
  }
  const rig = createRig(result.brake, { flexible: args.flags.has('flexible') });
  return args.command === 'press' ? press(args, rig) : wear(args, rig);
}

try {
  process.exitCode = await main();
} catch (error) {
  if (!(error instanceof UsageError)) throw error;
  process.stderr.write(`${error.message}\nSee: npm run -s takeup -- --help\n`);
  process.exitCode = 2;
}
