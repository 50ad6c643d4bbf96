/** What Motion costs, beside general engines. Bundled and started by run.ts; hands the goals back to it. */
import quayVan from '../../scenes/quay-van.json';
import { balance, createMotion, createRig, freshState, sin, strutLength } from '../../sim/index.ts';
import { AT_REST, leverStep } from '../../sim/motion/lever-body.ts';
import { mustRead } from '../brakes.ts';
import { pulling } from '../hands.ts';
import { BOXES, engineLoads } from './engines.ts';
import { compare, type Goal, line, ratio, type Timed } from './timing.ts';

const say = (text: string): void => console.log(text);

const brake = mustRead(quayVan);
const rig = createRig(brake);
const fresh = freshState(brake);

/** The lever's body alone, a step of it: climbing all the time, over a crest now and then. */
function leverAlone(): () => void {
  const seats = strutLength(brake, 0) + brake.adjuster.lostMotion;
  const pitch = (brake.adjuster.growth[1] as number) - (brake.adjuster.growth[0] as number);
  let lever = AT_REST;
  let n = 0;
  return () => {
    const phase = (n++ % 50) / 50;
    lever = leverStep(brake, lever, {
      time: n / 240,
      dt: 1 / 240,
      seats: seats + phase * pitch,
      tooth: 0,
      passed: phase === 0.98 ? 1 : 0,
      strength: 1,
    }).record;
  };
}

const { front, rear } = brake.shoes;
const hands = [
  pulling('front', front.toe, 40, -1),
  pulling('rear', rear.toe, 40, 1),
  pulling('lever', brake.parkingLever.hook, 20, -1),
];

/** Hands on both shoes and the hook, pedal and cable: every part that a hand moves with the drum driven. */
function byHand(): () => void {
  const motion = createMotion(rig, fresh);
  let n = 0;
  return () => {
    const swing = sin(n++ / 20);
    motion.step({ pressure: 4 + swing, cable: 30 + 30 * swing, turning: 1, hands });
  };
}

/** A wheel that rolls on a slope, its brake pressed: the drum's speed is found with everything else. */
function rolling(): () => void {
  const motion = createMotion(rig, fresh);
  let n = 0;
  return () => {
    motion.step({ pressure: 1 + sin(n++ / 20), turning: 0, rolling: true, torque: 1e5 });
  };
}

/** All of it: a wheel that rolls, braked, with hands on its parts and the cable pulled. */
function atOnce(): () => void {
  const motion = createMotion(rig, fresh);
  let n = 0;
  return () => {
    const swing = sin(n++ / 20);
    const cable = 30 + 30 * swing;
    motion.step({ pressure: 1 + swing, cable, turning: 0, hands, rolling: true, torque: 1e5 });
  };
}

/** Motion steps and the engines' steps: µs and ratios. */
async function steps(): Promise<Goal[]> {
  const motion = createMotion(rig, fresh);
  const engines = await engineLoads();
  let m = 0;
  const own = [
    {
      name: 'Motion, one step (the brake)',
      call: () => motion.step({ pressure: 4 + sin(m++ / 20), turning: 1 }),
    },
    { name: 'the same, hands on its parts', call: byHand() },
    { name: 'the same, a wheel that rolls', call: rolling() },
    { name: 'the same, everything at once', call: atOnce() },
    { name: 'the toothed lever’s body, one step', call: leverAlone() },
  ];
  const timed = compare([...own, ...engines.map(({ name, step }) => ({ name, call: step }))]);
  const [step, held, rolls, all, lever] = timed as [Timed, Timed, Timed, Timed, Timed];
  say(`\nMotion and engines; steps of 1/240 s, medians of ${step.rounds.length} rounds by turns`);
  const theirs = timed.slice(own.length);
  timed.forEach((t, i) => {
    const load = engines[i - own.length];
    if (!load) say(line(t));
    else {
      const what = `${BOXES} bodies, ${load.joints()} joints, ${load.contacts()} contacts`;
      say(`${line(t)}   ${what}; Motion is ${ratio(step, t).toFixed(2)} of it`);
    }
  });
  const quickest = theirs.reduce((a, b) => (b.median < a.median ? b : a));
  const loaded = engines.every((e) => e.contacts() === 60);
  const half = (t: Timed): boolean => loaded && ratio(t, quickest) <= 0.5;
  const share = ratio(lever, step);
  for (const t of [step, held, rolls, all]) {
    say(`  ${t.name}: ${ratio(t, quickest).toFixed(2)} of the quickest engine’s step`);
  }
  say(`  the lever’s body is ${(100 * share).toFixed(1)} % of a Motion step`);
  const of = 'in at most 0.5 of the quickest of three engines with 60 contacts';
  return [
    { name: `a Motion step ${of}`, reached: half(step) },
    { name: `a Motion step with hands on its parts ${of}`, reached: half(held) },
    { name: `a Motion step with a wheel that rolls, braked, ${of}`, reached: half(rolls) },
    { name: `a Motion step with everything at once ${of}`, reached: half(all) },
    { name: 'the toothed lever’s body in at most 5 % of a Motion step', reached: share <= 0.05 },
  ];
}

function convergence(): void {
  const press = { pressure: 4, turning: 1 } as const;
  const torque = (i: ReturnType<typeof balance>): number =>
    i.shoes.front.torqueOnDrum + i.shoes.rear.torqueOnDrum;
  const percent = (part: number): string => `${(part * 100).toExponential(1)} %`;
  const at = (elements: number): number => {
    const state = freshState(brake, brake.drum.radiusNew, elements);
    return torque(balance(createRig(brake, { elements }), state, press));
  };
  const fine = at(768);
  say('\nConvergence of the torque at 4 MPa: elements of a lining, against 768');
  for (const elements of [12, 24, 48, 96, 192]) {
    say(`  ${String(elements).padStart(6)}   ${percent(at(elements) / fine - 1)}`);
  }
  const still = torque(balance(rig, fresh, press));
  say('Step of Motion, settled for a second, against Balance');
  for (const rate of [60, 120, 240, 480, 960]) {
    const motion = createMotion(rig, fresh, 1 / rate);
    for (let n = 0; n < rate; n++) motion.step(press);
    say(`  1/${String(rate).padEnd(4)} s ${percent(torque(motion.instant()) / still - 1)}`);
  }
}

const goals = await steps();
convergence();
process.send?.(goals);
