import { toJsonSchema } from '@valibot/to-json-schema';
import type { GenericSchema } from 'valibot';
import { SCENE_VERSION, sceneSchema } from '../../sim/index.ts';
import { LESSON_VERSION, lessonSchema } from '../lessons/format.ts';

/** Finite numbers need no rule there: JSON has no others. */
function written(title: string, schema: GenericSchema): Record<string, unknown> {
  const json = toJsonSchema(schema, {
    typeMode: 'input',
    ignoreActions: ['finite'],
    errorMode: 'throw',
  });
  return { title, ...json };
}

/** JSON Schema of the scene file, for the version that is written today. A scene names it by its key `$schema`. */
export const sceneJsonSchema = (): Record<string, unknown> =>
  written(`Takeup scene, version ${SCENE_VERSION}`, sceneSchema);

/** The same of the lesson file. */
export const lessonJsonSchema = (): Record<string, unknown> =>
  written(`Takeup lesson, version ${LESSON_VERSION}`, lessonSchema);
