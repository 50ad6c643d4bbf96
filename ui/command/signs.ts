/** Writes what each fault of the first teaching brake shows, which What I see reads: the page need not work it out. */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { vanSigns } from './van-signs.ts';

const path = fileURLToPath(new URL('../stations/see/van-signs.json', import.meta.url));
writeFileSync(path, `${JSON.stringify(vanSigns(), null, 1)}\n`);
process.stdout.write(`wrote ${path}\n`);
