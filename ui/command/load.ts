import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type ReadResult, readSceneText } from '../../sim/index.ts';
import { UsageError } from './args.ts';

const scenes = fileURLToPath(new URL('../../scenes/', import.meta.url));

/** Reads a scene by its path, or by its name in scenes/. */
export function loadScene(scene: string): ReadResult {
  const path = [scene, join(scenes, scene), join(scenes, `${scene}.json`)].find((p) =>
    existsSync(p),
  );
  if (!path)
    throw new UsageError(`SCENE: found no file "${scene}"; allowed: a path or a name in scenes/`);
  return readSceneText(readFileSync(path, 'utf8'));
}
