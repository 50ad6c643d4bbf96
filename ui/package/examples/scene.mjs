// @ts-check
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { readSceneText, tellFinding } from 'takeup';

/**
 * A teaching brake that comes with the package, read; or every finding at once.
 *
 * @param {string} name
 */
export function sceneOf(name) {
  const path = fileURLToPath(import.meta.resolve(`takeup/scenes/${name}.json`));
  const read = readSceneText(readFileSync(path, 'utf8'));
  if (!read.ok) throw new Error(read.findings.map(tellFinding).join('\n'));
  return read;
}
