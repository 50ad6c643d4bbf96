import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { afterEach, expect, it } from 'vitest';
import { sections } from '../../../ui/serve/words.mjs';

const section = fileURLToPath(new URL('../../../sim/words/section.ts', import.meta.url));

const EN = `import { section } from './section.ts';
/** One. */
export const one = section('one', {
  title: 'The first of all',
  left: (n: number): string => \`\${n} are left\`,
  delete: 'A name that is a word of the language',
});
export const two = section('two', { title: 'The second of all' });
`;

let folder = '';
afterEach(() => rmSync(folder, { recursive: true }));

/** What a small page of these files is built to: each script by its name. */
async function built(
  files: Record<string, string>,
  where?: 'page' | 'worker',
): Promise<Map<string, string>> {
  folder = mkdtempSync(join(tmpdir(), 'takeup-words-'));
  const all = { 'sim/words/section.ts': readFileSync(section, 'utf8'), 'sim/words/en.ts': EN };
  for (const [path, text] of Object.entries({
    ...all,
    ...files,
    'package.json': '{ "type": "module" }',
  })) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  const out = join(folder, 'out');
  await build({
    configFile: false,
    root: folder,
    logLevel: 'error',
    plugins: [sections(where)],
    build: {
      outDir: out,
      minify: false,
      target: 'es2022',
      lib: { entry: join(folder, 'ui/page.ts'), formats: ['es'], fileName: () => 'page.js' },
    },
  });
  return new Map(
    readdirSync(out, { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.js'))
      .map((file) => [file, readFileSync(join(out, file), 'utf8')]),
  );
}

const page = {
  'ui/page.ts': `import { one as words } from '../sim/words/en.ts';
export const said = [words.title, words.left(3), words.delete];
export const later = () => import('./later.ts');
export const other = () => import('../sim/words/xx.ts');
`,
  'ui/later.ts': `import { two } from '../sim/words/en.ts';
export const says = two.title;
`,
  'sim/words/xx.ts': `const ONE = /^Ein/;
const other: Record<string, object> = {
  two: { title: 'Zwei' },
  one: { delete: 'Löschen', left: (n: number): string => \`noch \${n}\`, title: said('Eins') },
};
function said(name: string): string {
  return ONE.test(name) ? name : '';
}
export default other;
`,
};

it('each part of the page comes with its own texts, and says them', async () => {
  const scripts = await built(page);
  const first = scripts.get('page.js') ?? '';
  expect(first).toContain('The first of all');
  expect(first).not.toContain('The second of all');
  const later = [...scripts].filter(([, text]) => text.includes('The second of all'));
  expect(later).toHaveLength(1);
  const { said } = await import(/* @vite-ignore */ join(folder, 'out/page.js'));
  expect(said).toEqual(['The first of all', '3 are left', 'A name that is a word of the language']);
});

it('another language stands in the order of the English texts', async () => {
  await built(page);
  const { other } = await import(/* @vite-ignore */ join(folder, 'out/page.js'));
  const { default: sections } = await other();
  const [one, two] = sections;
  expect(two).toEqual(['Zwei']);
  expect([one[0], one[1](3), one[2]]).toEqual(['Eins', 'noch 3', 'Löschen']);
});

it('the page says the texts of the language that was spoken first', async () => {
  const first = {
    'ui/page.ts': `import { speak } from '../sim/words/section.ts';
import other from '../sim/words/xx.ts';
speak(other);
export const said = () => import('./says.ts').then(({ said }) => said);
`,
    'ui/says.ts': page['ui/page.ts'].replace(/export const (later|other).*/g, ''),
  };
  await built({ ...page, ...first });
  const { said } = await import(/* @vite-ignore */ `${folder}/out/page.js`);
  expect(await said()).toEqual(['Eins', 'noch 3', 'Löschen']);
});

it('a section or a text that does not exist stops the build', async () => {
  const wrong = "import { three } from '../sim/words/en.ts';\nexport const says = three;\n";
  await expect(built({ 'ui/page.ts': wrong })).rejects.toThrow('three is no section');
  const gone = "import { two } from '../sim/words/en.ts';\nexport const says = two.gone;\n";
  await expect(built({ 'ui/page.ts': gone })).rejects.toThrow('two has no text gone');
});

it('a worker has the texts of all languages, and its name says which it speaks', async () => {
  const scripts = await built(page, 'worker');
  expect(scripts.get('page.js')).toContain('Löschen');
  const says = async (name: string): Promise<unknown> => {
    Object.assign(globalThis, { name });
    const { said } = await import(/* @vite-ignore */ `${folder}/out/page.js?as=${name}`);
    return said;
  };
  try {
    expect(await says('xx')).toEqual(['Eins', 'noch 3', 'Löschen']);
    expect(await says('en')).toEqual(['The first of all', '3 are left', expect.any(String)]);
  } finally {
    Reflect.deleteProperty(globalThis, 'name');
  }
});
