/**
 * The command line: what an instructor scripts and how anyone can check the numbers. What it takes,
 * the shape of --json and the exit codes stand in help.ts. Everything comes from sim/index.ts.
 */
import { parse, type Takes, UsageError } from './args.ts';
import { usage } from './help.ts';
import { say } from './print.ts';

const COMMANDS: Readonly<Record<string, Takes>> = {
  press: {
    options: ['pressure', 'drum', 'state', 'km', 'temperature', 'cable', 'surface', 'stuck'],
    flags: ['flexible', 'json'],
  },
  wear: { options: ['km'], flags: ['flexible', 'json'] },
  check: { options: [], flags: ['json'] },
};

async function main(): Promise<number> {
  const args = parse(process.argv.slice(2), COMMANDS);
  if (args.command === 'help') {
    say(usage);
    return 0;
  }
  // The simulator takes a while to load: not for a slip of the keyboard.
  const { run } = await import('./run.ts');
  return run(args);
}

// Whoever reads may stop early, as `head` does: that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit();
});

try {
  process.exitCode = await main();
} catch (error) {
  if (!(error instanceof UsageError)) throw error;
  process.stderr.write(`${error.message}\nSee: npm run -s takeup -- --help\n`);
  process.exitCode = 2;
}
