import { toJsonSchema } from '@valibot/to-json-schema';
import { sceneSchema } from '../../sim/index.ts';

/**
 * JSON Schema of the scene file. Finite numbers need no rule there: JSON has no others. Associate it
 * with scenes/*.json in the editor's settings; the files themselves carry no other key than the format's.
 */
export function sceneJsonSchema(): Record<string, unknown> {
  const schema = toJsonSchema(sceneSchema, {
    typeMode: 'input',
    ignoreActions: ['finite'],
    errorMode: 'throw',
  });
  return { title: 'Takeup scene, version 1', ...schema };
}
