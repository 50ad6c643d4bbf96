import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type ReadResult, readSceneText } from '../../sim/index.ts';
import { UsageError } from './args.ts';

const scenes = fileURLToPath(new URL('../../scenes/', import.meta.url));

const isFolder = (path: string): boolean =>
  statSync(path, { throwIfNoEntry: false })?.isDirectory() === true;
const isThere = (path: string): boolean =>
  statSync(path, { throwIfNoEntry: false }) !== undefined && !isFolder(path);

/** Reads a scene by its path, or by its name in scenes/. */
export function loadScene(scene: string): ReadResult {
  const path = [scene, join(scenes, scene), join(scenes, `${scene}.json`)].find(isThere);
  if (!path) {
    const found = isFolder(scene) ? `the folder "${scene}"` : `no file "${scene}"`;
    throw new UsageError(`SCENE: found ${found}; allowed: a path or a name in scenes/`);
  }
  return readSceneText(readFileSync(path, 'utf8'));
}
