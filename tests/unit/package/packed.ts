import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildPackage } from '../../../ui/package/build.ts';

/** What a command told; it must have gone well. */
export function ran(folder: string, command: string, ...args: string[]): string {
  const { status, stdout, stderr } = spawnSync(command, args, {
    cwd: folder,
    encoding: 'utf8',
    shell: process.platform === 'win32',
  });
  if (status !== 0) throw new Error(`${command} ${args.join(' ')}:\n${stdout}${stderr}`);
  return stdout;
}

export interface Packed {
  /** An empty project with the packed file installed, and nothing else. */
  readonly project: string;
  /** The package in it. */
  readonly installed: string;
  remove(): void;
}

/**
 * Builds and packs the package and installs the packed file into an empty project. Without a network: it needs no
 * other package, since all that it is built with is in its files, and npm is told to ask nobody.
 */
export async function packed(): Promise<Packed> {
  const folder = mkdtempSync(join(tmpdir(), 'takeup-packed-'));
  const [built, project] = [join(folder, 'built'), join(folder, 'project')];
  await buildPackage(built);
  ran(built, 'npm', 'pack', '--silent', '--pack-destination', folder);
  const file = readdirSync(folder).find((name) => name.endsWith('.tgz')) ?? '';
  mkdirSync(project);
  writeFileSync(join(project, 'package.json'), '{ "private": true, "type": "module" }');
  const quiet = ['--offline', '--ignore-scripts', '--no-audit', '--no-fund', '--silent'];
  ran(project, 'npm', 'install', ...quiet, join(folder, file));
  return {
    project,
    installed: join(project, 'node_modules', 'takeup'),
    remove: () => rmSync(folder, { recursive: true }),
  };
}
