/**
 * The command line: what an instructor scripts and how anyone can check the numbers. What it takes,
 * the shape of --json and the exit codes stand in help.ts. Everything comes from sim/index.ts.
 */
import { main } from './main.ts';

// Whoever reads may stop early, as `head` does: that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit();
});

process.exitCode = await main(
  process.argv.slice(2),
  (text) => process.stdout.write(`${text}\n`),
  (text) => process.stderr.write(`${text}\n`),
);
