import { type Brake, createRig, KMH, lettersOf, SURFACES, tellFinding } from '../../sim/index.ts';
import type { Arguments } from './args.ts';
import { compare } from './compare.ts';
import { figure } from './figure.ts';
import { fit } from './fit.ts';
import { gather } from './gather.ts';
import { asJson } from './json.ts';
import { checkLesson, isLessonText } from './lesson.ts';
import { life } from './life.ts';
import { sceneIn, textBy } from './load.ts';
import { off } from './off.ts';
import { park } from './park.ts';
import { pedal } from './pedal.ts';
import { press } from './press.ts';
import type { Say } from './print.ts';
import { seek } from './seek.ts';
import { stop } from './stop.ts';
import { vary } from './vary.ts';
import { wear } from './wear.ts';

/** Where a sound scene's friction comes from: its tables, each with its source. */
function frictionOf(brake: Brake): string {
  const table = brake.frictionTable.map(([t, f]) => `${f} at ${t} °C`).join(', ');
  const surfaces = SURFACES.filter((name) => name !== 'dry').map((name) => {
    const { table: rows, source } = brake.surfaces[name];
    const factors = rows.map(([t, f]) => (rows.length > 1 ? `${f} at ${t} °C` : `${f}`));
    return `friction of a ${name} lining: ${factors.join(', ')} of a dry one's (${source})`;
  });
  const { rubbing } = brake;
  const law = rubbing
    ? [
        `friction against pressure and speed: F = K·P^${rubbing.pressureExponent}·V^${rubbing.speedExponent}, told at ${rubbing.atPressure} MPa and ${rubbing.atSpeed / KMH} km/h (${rubbing.source})`,
      ]
    : [];
  const letters = (['front', 'rear'] as const).map((side) => {
    const { letters: code, cold, hot } = lettersOf(brake, side);
    return `${side} lining by these tables: ${code}, ${cold.toFixed(2)} cold, ${hot.toFixed(2)} hot (bands of SAE J866)`;
  });
  const first = `friction against temperature: ${table} (${brake.source})`;
  return [first, ...law, ...surfaces, ...letters].join('\n');
}

/** Reads the scene and does what was asked; gives the exit code. */
export async function run(args: Arguments, say: Say, complain: Say): Promise<number> {
  const { scene, command, flags } = args;
  if (command === 'gather') return gather(args, say);
  if (command === 'compare') return compare(args, say, complain);
  const text = textBy(scene);
  if (command === 'check' && text !== null && isLessonText(text)) {
    return checkLesson(args, text, say);
  }
  const result = sceneIn(text);
  const findings = result.ok ? [] : result.findings;
  if (command === 'check' || !result.ok) {
    // To check is to ask for the findings; any other command could not do what it was asked for.
    const tell = command === 'check' ? say : complain;
    if (flags.has('json')) say(asJson({ scene, command, findings }));
    else if (result.ok) say(`${scene}: no findings\n${frictionOf(result.brake)}`);
    else tell(findings.map(tellFinding).join('\n'));
    return result.ok ? 0 : 1;
  }
  const rig = createRig(result.brake, { flexible: flags.has('flexible') });
  if (command === 'vary') {
    await vary(args, rig, result.scene, say, complain);
    return 0;
  }
  if (command === 'seek') return seek(args, rig, result.scene, say, complain);
  const commands = { press, stop, pedal, park, off, fit, figure, wear, life } as const;
  await commands[command as keyof typeof commands](args, rig, say, complain);
  return 0;
}
