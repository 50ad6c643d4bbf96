// @ts-check
// The whole bench as one HTML file, to be opened by a double click: what a browser refuses to load beside such a file
// (scripts, letters, workers) stands inside it.
import { createHash } from 'node:crypto';
import { CHANGES, NOTICES } from './notices.mjs';

export const ONE_FILE = 'takeup.html';

/** @param {string} text as it stands between the tags */
const hashOf = (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

/**
 * A file on a disk sends no headers, so the policy is told here: these very scripts and rules, letters and pictures
 * that stand in them, workers made of them, and no connection at all.
 *
 * @param {string} script
 * @param {string} rules
 */
const policyOf = (script, rules) =>
  [
    "default-src 'none'",
    `script-src ${hashOf(script)}`,
    `style-src ${hashOf(rules)}`,
    'img-src data: blob:',
    'media-src blob:',
    'font-src data:',
    'worker-src blob:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');

/**
 * A text may stand between script tags where it neither ends them nor opens a comment. In a text of the language a
 * backslash before such a letter says the same letter.
 *
 * @param {string} code
 */
const within = (code) => code.replaceAll('</script', '<\\/script').replaceAll('<!--', '<\\!--');

/** @param {string} text of no language, shown as it is */
const plain = (text) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');

/**
 * A worker's script stands in the page's own, and is handed over as a blob.
 *
 * @returns {import('vite').Plugin}
 */
export const workersWithin = () => ({
  name: 'takeup:workers-within',
  enforce: 'pre',
  transform(code) {
    /** @type {string[]} */
    const imports = [];
    const made = code.replace(
      /new Worker\(\s*new URL\(\s*(['"])([^'"]+)\1,\s*import\.meta\.url\s*\),\s*\{\s*type: 'module',\s*name: (\w+\(\)),?\s*\}\s*,?\s*\)/g,
      (_, _quote, file, name) => {
        imports.push(`import Within${imports.length} from '${file}?worker&inline';`);
        return `new Within${imports.length - 1}({ name: ${name} })`;
      },
    );
    // One that is written otherwise would be left beside the file, which is refused below.
    return imports.length === 0 ? null : { code: `${imports.join('\n')}\n${made}`, map: null };
  },
});

/**
 * Puts the page, its script, its rules and the texts that it leads to into one file, and leaves nothing beside it.
 *
 * @returns {import('vite').Plugin}
 */
export const oneFile = () => ({
  name: 'takeup:one-file',
  generateBundle: {
    order: 'post',
    handler(_, bundle) {
      const all = Object.values(bundle);
      /** @param {string} end */
      const texts = (end) =>
        all.flatMap((f) =>
          f.type === 'asset' && f.fileName.endsWith(end) ? [String(f.source)] : [],
        );
      const scripts = all.flatMap((f) => (f.type === 'chunk' ? [f.code] : []));
      const [page] = texts('index.html');
      // The page's own mark is not taken in by the build tool.
      const marks = all.flatMap((f) =>
        f.type === 'asset' && f.fileName.endsWith('.svg')
          ? [{ name: f.fileName, data: Buffer.from(f.source).toString('base64') }]
          : [],
      );
      const known = /^(index\.html|[^/]+\.txt|assets\/[^/]+\.(css|svg))$/;
      const left = all.filter((f) => f.type === 'asset' && !known.test(f.fileName));
      if (!page || scripts.length !== 1 || left.length > 0) {
        const names = all.map((f) => f.fileName).join(', ');
        throw new Error(`not all of the page would be in one file: ${names}`);
      }
      const script = within(String(scripts[0]));
      const rules = texts('.css').join('\n');
      const text = (/** @type {string} */ name) =>
        `<textarea id="${name}" hidden readonly>\n${plain(texts(name)[0] ?? '')}</textarea>`;
      const marked = marks.reduce(
        (html, { name, data }) => html.replace(`./${name}`, `data:image/svg+xml;base64,${data}`),
        page,
      );
      const source = marked
        .replace(/\s*<link rel="(?:modulepreload|stylesheet|manifest|apple-touch-icon)"[^>]*>/g, '')
        .replace(/\s*<script[^>]*><\/script>/g, '')
        .replace('%POLICY%', policyOf(script, rules))
        .replace('</head>', () => `<style>${rules}</style>\n  </head>`)
        .replace(
          '</body>',
          () =>
            `${text(CHANGES)}\n${text(NOTICES)}\n<script type="module">${script}</script>\n</body>`,
        );
      for (const { fileName } of all) delete bundle[fileName];
      this.emitFile({ type: 'asset', fileName: ONE_FILE, source });
    },
  },
});
