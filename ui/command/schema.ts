/** Writes the JSON Schemas of the scene and the lesson file, for editors, from the sources that read them. */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { lessonJsonSchema, sceneJsonSchema } from './scene-json-schema.ts';

const schemas = { scene: sceneJsonSchema, lesson: lessonJsonSchema } as const;
for (const [name, make] of Object.entries(schemas)) {
  const path = fileURLToPath(new URL(`../../scenes/${name}.schema.json`, import.meta.url));
  writeFileSync(path, `${JSON.stringify(make(), null, 2)}\n`);
  process.stdout.write(`wrote ${path}\n`);
}
