import { toJsonSchema } from '@valibot/to-json-schema';
import { SCENE_VERSION, sceneSchema } from '../../sim/index.ts';

/**
 * JSON Schema of the scene file, for the version that is written today. Finite numbers need no rule
 * there: JSON has no others. A scene names it by its key `$schema`.
 */
export function sceneJsonSchema(): Record<string, unknown> {
  const schema = toJsonSchema(sceneSchema, {
    typeMode: 'input',
    ignoreActions: ['finite'],
    errorMode: 'throw',
  });
  return { title: `Takeup scene, version ${SCENE_VERSION}`, ...schema };
}
