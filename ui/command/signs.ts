/** Writes what each fault of the first teaching brake shows, which What I see reads: the page need not work it out. */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { vanSigns } from './van-signs.ts';

const path = fileURLToPath(new URL('../stations/see/van-signs.json', import.meta.url));
/** As the formatter has it: short lists in one line. */
const text = JSON.stringify(vanSigns(), null, 2).replace(
  /\[\s+("[^\]]*")\s+\]/g,
  (_all, inside: string) => `[${inside.replace(/\s*\n\s*/g, ' ')}]`,
);
writeFileSync(path, `${text}\n`);
process.stdout.write(`wrote ${path}\n`);
