import { type Brake, createRig, type Finding, SURFACES } from '../../sim/index.ts';
import type { Arguments } from './args.ts';
import { asJson } from './json.ts';
import { life } from './life.ts';
import { loadScene } from './load.ts';
import { press } from './press.ts';
import type { Say } from './print.ts';
import { wear } from './wear.ts';

/** Where a sound scene's friction comes from: its tables, each with its source. */
function frictionOf(brake: Brake): string {
  const table = brake.frictionTable.map(([t, f]) => `${f} at ${t} °C`).join(', ');
  const surfaces = SURFACES.filter((name) => name !== 'dry').map((name) => {
    const { table: rows, source } = brake.surfaces[name];
    const factors = rows.map(([t, f]) => (rows.length > 1 ? `${f} at ${t} °C` : `${f}`));
    return `friction of a ${name} lining: ${factors.join(', ')} of a dry one's (${source})`;
  });
  return [`friction against temperature: ${table} (${brake.source})`, ...surfaces].join('\n');
}

function check(scene: string, findings: readonly Finding[], json: boolean, say: Say): void {
  if (json) say(asJson({ scene, command: 'check', findings }));
  else if (findings.length === 0) say(`${scene}: no findings`);
  else for (const f of findings) say(`${f.path}: found ${f.found}; allowed: ${f.allowed}`);
}

/** Reads the scene and does what was asked; gives the exit code. */
export async function run(args: Arguments, say: Say): Promise<number> {
  const result = loadScene(args.scene);
  if (args.command === 'check' || !result.ok) {
    const json = args.command === 'check' && args.flags.has('json');
    check(args.scene, result.ok ? [] : result.findings, json, say);
    if (result.ok && !json) say(frictionOf(result.brake));
    return result.ok ? 0 : 1;
  }
  const rig = createRig(result.brake, { flexible: args.flags.has('flexible') });
  const commands = { press, wear, life } as const;
  await commands[args.command as keyof typeof commands](args, rig, say);
  return 0;
}
