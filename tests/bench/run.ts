/** npm run bench: what things cost, side by side in one run. Everything is bundled first, as the page is. */
import { fork } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { frame } from './frame.ts';
import { jobs } from './jobs.ts';
import { links } from './links.ts';
import { slow } from './slow.ts';
import type { Goal } from './timing.ts';

/**
 * Each part runs in a bare Node of its own: what runs these scripts would slow it down, and so would what
 * another part made the engine's compiler believe. A life has a worker of its own in the page as well.
 */
async function apart(part: string, folder: string): Promise<Goal[]> {
  await build({
    configFile: false,
    logLevel: 'warn',
    ssr: { noExternal: true },
    build: {
      emptyOutDir: true,
      ssr: fileURLToPath(new URL(`${part}.ts`, import.meta.url)),
      outDir: folder,
      target: 'node20',
      rollupOptions: { output: { entryFileNames: `${part}.mjs` } },
    },
  });
  return new Promise((done, failed) => {
    let goals: Goal[] | null = null;
    const child = fork(join(folder, `${part}.mjs`), [], { execArgv: [] });
    child.on('message', (message) => {
      goals = message as Goal[];
    });
    child.on('error', failed);
    child.on('exit', (code) => {
      if (goals && code === 0) done(goals);
      else failed(new Error(`the bench of ${part} ended with ${code}`));
    });
  });
}

const folder = mkdtempSync(join(tmpdir(), 'takeup-bench-'));
const own = (part: string) => (): Promise<Goal[]> => apart(part, join(folder, part));
const parts: Readonly<Record<string, () => Promise<Goal[]>>> = {
  balance: own('balance'),
  solvers: own('solvers'),
  beside: own('beside'),
  sweeps: own('sweeps'),
  jobs,
  lives: own('lives'),
  links,
  frame: () => frame(join(folder, 'page')),
  slow: () => slow(join(folder, 'slow')),
};
/** Parts named after `--`; all without. */
const asked = process.argv.slice(2);
try {
  const goals: Goal[] = [];
  for (const [name, part] of Object.entries(parts)) {
    if (asked.length === 0 || asked.includes(name)) goals.push(...(await part()));
  }
  console.log(`\nGoals: ${goals.filter((g) => g.reached).length} of ${goals.length} reached`);
  for (const { name, reached } of goals) {
    console.log(`  ${(reached ? 'reached' : 'NOT reached').padEnd(12)} ${name}`);
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
