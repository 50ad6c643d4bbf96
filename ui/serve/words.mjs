// @ts-check
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseSync } from 'vite';

/** One section of the English texts, as a file of its own that stands nowhere but in the build. */
const SECTION = /\/sim\/words\/en\.(\w+)\.ts$/;
/** All texts of another language. */
const OTHER = /\/sim\/words\/(?!en\b)[a-z]{2}\.ts$/;
/** Sections as code takes them over. */
const TAKEN = /^import \{([^}]*)\} from '([^']*words\/)en\.ts';$/gm;
/** What stands in such an import between its braces: `drumOff as words`. */
const NAMED = /^(\w+)(?:\s+as\s+(\w+))?$/;

/**
 * What a file of texts consists of. Each section asks it of the whole file, in every build of a process, so it is taken
 * apart once: that was three quarters of a build's time.
 *
 * @param {string} file its name
 * @param {string} code
 */
function statementsOf(file, code) {
  const known = apart.get(file);
  if (known?.code === code) return known.statements;
  const statements = parseSync(file, code, { lang: 'ts' }).program.body;
  apart.set(file, { code, statements });
  return statements;
}

/** @type {Map<string, { code: string; statements: import('vite').ESTree.Program['body'] }>} */
const apart = new Map();

/**
 * A file of texts: each section by its name, in it each text's code by its name.
 *
 * @typedef {Map<string, Map<string, string>>} Texts
 */

/**
 * @param {import('vite').ESTree.ObjectExpression} object
 * @param {string} code
 * @returns {Map<string, import('vite').ESTree.Expression>}
 */
function membersOf(object, code) {
  return new Map(
    object.properties.map((property) => {
      if (property.type !== 'Property' || property.key.type !== 'Identifier' || property.method)
        throw new Error(`no text: ${code.slice(property.start, property.start + 60)}`);
      return [property.key.name, property.value];
    }),
  );
}

/**
 * @param {import('vite').ESTree.Node | null | undefined} value
 * @param {string} code
 */
function textsOf(value, code) {
  if (value?.type !== 'ObjectExpression') throw new Error('a section is a table of its texts');
  return new Map(
    [...membersOf(value, code)].map(([key, text]) => [key, code.slice(text.start, text.end)]),
  );
}

/**
 * English: `export const drumOff = section('drumOff', { … });` for each section.
 *
 * @param {string} code
 * @param {string} file its name
 * @returns {Texts}
 */
function englishOf(code, file) {
  /** @type {Texts} */
  const sections = new Map();
  for (const statement of statementsOf(file, code)) {
    if (statement.type !== 'ExportNamedDeclaration') continue;
    if (statement.declaration?.type !== 'VariableDeclaration') continue;
    for (const { id, init } of statement.declaration.declarations) {
      if (id.type !== 'Identifier' || init?.type !== 'CallExpression')
        throw new Error(
          `${file}: no section: ${code.slice(statement.start, statement.start + 60)}`,
        );
      sections.set(id.name, textsOf(init.arguments[1], code));
    }
  }
  return sections;
}

/**
 * Another language: `const german: Words = { drumOff: { … }, … };`, the one table of all sections.
 *
 * @param {string} code
 * @param {string} file its name
 * @returns {Texts}
 */
function otherOf(code, file) {
  for (const statement of statementsOf(file, code)) {
    if (statement.type !== 'VariableDeclaration') continue;
    const value = statement.declarations[0]?.init;
    if (value?.type !== 'ObjectExpression') continue;
    return new Map([...membersOf(value, code)].map(([name, one]) => [name, textsOf(one, code)]));
  }
  throw new Error(`${file} has no table of sections`);
}

/**
 * What the English file takes from others for these texts, such as how questions are read.
 *
 * @param {string} code
 * @param {string} file its name
 * @param {string} texts
 */
const takenBy = (code, file, texts) =>
  statementsOf(file, code)
    .filter(
      (statement) =>
        statement.type === 'ImportDeclaration' &&
        statement.importKind !== 'type' &&
        statement.source.value !== './section.ts' &&
        statement.specifiers.some(({ local }) => new RegExp(`\\b${local.name}[.(]`).test(texts)),
    )
    .map(({ start, end }) => code.slice(start, end))
    .join('\n');

const here = (/** @type {string} */ file) => fileURLToPath(new URL(file, import.meta.url));

/** Modules that give sections once they know in which language. */
const SPEAKS = {
  page: here('../speak.ts'),
  'one file': here('../speak-at-once.ts'),
  english: './section.ts',
};

/** Languages beside English, by the names of their files. */
const others = (/** @type {string} */ folder) =>
  readdirSync(folder).flatMap((name) =>
    OTHER.test(`/sim/words/${name}`) ? [name.slice(0, 2)] : [],
  );

/**
 * What another language's file has beside its table: what its own texts call.
 *
 * @param {string} code
 * @param {string} file its name
 */
const besidesOf = (code, file) =>
  statementsOf(file, code)
    .filter(
      (statement) =>
        (statement.type === 'ImportDeclaration' && statement.importKind !== 'type') ||
        statement.type === 'FunctionDeclaration' ||
        (statement.type === 'VariableDeclaration' &&
          statement.declarations[0]?.init?.type !== 'ObjectExpression'),
    )
    .map(({ start, end }) => code.slice(start, end))
    .join('\n');

/**
 * All texts of a language stand in one file, and the page loads a part of itself when it is asked for. So in what is
 * built each section is a module of its own, which comes with the part that says it. Names of sections and texts are
 * for people: the page has lists instead, and asks for a text by its place in them. Another language's file, which is
 * loaded whole, becomes a list of such lists in the same order.
 *
 * A worker says little, and may be made from one script that cannot wait: it has the texts of all languages, and its own
 * name says which it speaks.
 *
 * @param {'page' | 'one file' | 'worker' | 'english'} [where] who says the texts; `english`: a program that speaks no other language
 * @returns {import('vite').Plugin}
 */
export function sections(where = 'english') {
  /** @type {Map<string, Texts>} */
  const read = new Map();
  const english = (/** @type {string} */ folder) => {
    const file = join(folder, 'en.ts');
    const known = read.get(file) ?? englishOf(readFileSync(file, 'utf8'), file);
    read.set(file, known);
    return known;
  };
  const other = (/** @type {string} */ folder, /** @type {string} */ language) => {
    const file = join(folder, `${language}.ts`);
    const known = read.get(file) ?? otherOf(readFileSync(file, 'utf8'), file);
    read.set(file, known);
    return known;
  };
  /** A section's texts as a list, in the order of the English ones. */
  const listed = (
    /** @type {Iterable<string>} */ keys,
    /** @type {Map<string, string> | undefined} */ texts,
  ) => `[\n${[...keys].map((key) => texts?.get(key)).join(',\n')}\n]`;
  return {
    name: 'words-by-section',
    enforce: 'pre',
    resolveId(id) {
      return SECTION.test(id) ? id : null;
    },
    load(id) {
      const name = SECTION.exec(id)?.[1];
      if (name === undefined) return null;
      const folder = dirname(id);
      this.addWatchFile(join(folder, 'en.ts'));
      const all = english(folder);
      const texts = all.get(name);
      const keys = [...(texts?.keys() ?? [])];
      const file = join(folder, 'en.ts');
      const taken = takenBy(readFileSync(file, 'utf8'), file, listed(keys, texts));
      if (where === 'worker') {
        const besides = others(folder).map((language) => {
          const file = join(folder, `${language}.ts`);
          return besidesOf(readFileSync(file, 'utf8'), file);
        });
        const choices = others(folder).map(
          (language) =>
            `globalThis.name === '${language}' ? ${listed(keys, other(folder, language).get(name))} : `,
        );
        return `${besides.join('\n')}\n${taken}\nexport const texts = ${choices.join('')}${listed(keys, texts)};\n`;
      }
      return `import { section } from '${SPEAKS[where]}';
${taken}
export const texts = /* @__PURE__ */ section(${[...all.keys()].indexOf(name)}, ${listed(keys, texts)});\n`;
    },
    transform(code, id) {
      if (OTHER.test(id)) {
        const own = otherOf(code, id);
        const lists = [...english(dirname(id))].map(([name, texts]) =>
          listed(texts.keys(), own.get(name)),
        );
        return {
          code: `${besidesOf(code, id)}\nexport default [\n${lists.join(',\n')}\n];\n`,
          map: null,
        };
      }
      if (!code.includes('words/en.ts')) return null;
      const out = byPlace(code, id, english);
      return out === code ? null : { code: out, map: null };
    },
  };
}

/**
 * The same code with every section imported from the module of that section alone, and every text asked for by its
 * place.
 *
 * @param {string} code
 * @param {string} id
 * @param {(folder: string) => Texts} english
 */
function byPlace(code, id, english) {
  let out = code;
  for (const [line, names = '', folder = ''] of code.matchAll(TAKEN)) {
    const words = join(dirname(id), folder);
    /** @type {string[]} */
    const imports = [];
    for (const part of names.split(',').filter((one) => one.trim() !== '')) {
      const [, name = '', as = name] = NAMED.exec(part.trim()) ?? [];
      const keys = [...(english(words).get(name)?.keys() ?? [])];
      if (keys.length === 0) throw new Error(`${id}: ${part.trim()} is no section`);
      imports.push(`import { texts as ${as} } from '${join(words, `en.${name}.ts`)}';`);
      // Neither a file of that name in a path, nor another thing's part.
      out = out.replace(new RegExp(`(?<!/|[^.]\\.)\\b${as}\\s*\\.\\s*(\\w+)`, 'g'), (_, key) => {
        const place = keys.indexOf(key);
        if (place < 0) throw new Error(`${id}: ${name} has no text ${key}`);
        return `${as}[${place}]`;
      });
    }
    out = out.replace(line, () => imports.join(' '));
  }
  return out;
}
