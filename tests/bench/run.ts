/** npm run bench: what things cost, side by side in one run. Everything is bundled first, as the page is. */
import { fork } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { frame } from './frame.ts';
import type { Goal } from './timing.ts';

/** The solvers run in a bare Node of their own: what runs these scripts would slow them down. */
async function solvers(folder: string): Promise<Goal[]> {
  await build({
    configFile: false,
    logLevel: 'warn',
    ssr: { noExternal: true },
    build: {
      emptyOutDir: true,
      ssr: fileURLToPath(new URL('solvers.ts', import.meta.url)),
      outDir: folder,
      target: 'node20',
      rollupOptions: { output: { entryFileNames: 'solvers.mjs' } },
    },
  });
  return new Promise((done, failed) => {
    let goals: Goal[] | null = null;
    const child = fork(join(folder, 'solvers.mjs'), [], { execArgv: [] });
    child.on('message', (message) => {
      goals = message as Goal[];
    });
    child.on('error', failed);
    child.on('exit', (code) => {
      if (goals && code === 0) done(goals);
      else failed(new Error(`the solvers’ bench ended with ${code}`));
    });
  });
}

const folder = mkdtempSync(join(tmpdir(), 'takeup-bench-'));
try {
  const goals = [
    ...(await solvers(join(folder, 'solvers'))),
    ...(await frame(join(folder, 'page'))),
  ];
  console.log(`\nGoals: ${goals.filter((g) => g.reached).length} of ${goals.length} reached`);
  for (const { name, reached } of goals) {
    console.log(`  ${(reached ? 'reached' : 'NOT reached').padEnd(12)} ${name}`);
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
