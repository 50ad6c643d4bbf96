/** Writes the JSON Schema of the scene file, for editors, from the one source that reads it. */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { sceneJsonSchema } from './scene-json-schema.ts';

const path = fileURLToPath(new URL('../../scenes/scene.schema.json', import.meta.url));
writeFileSync(path, `${JSON.stringify(sceneJsonSchema(), null, 2)}\n`);
process.stdout.write(`wrote ${path}\n`);
