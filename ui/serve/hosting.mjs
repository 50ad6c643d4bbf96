// @ts-check
// For whoever serves dist/ elsewhere: the headers of our own server, in the words of three kinds of host.
import { HEADERS, NOT_FRAMED, POLICY } from './policy.mjs';

/** Headers as a file that several static hosts read; and the same for two servers, with a few words. */
export const HEADERS_FILE = '_headers';
export const HOSTING_FILE = 'hosting.txt';
/** What other sites may frame: the same page, told to show one brake (ui/embed/). */
export const EMBED = 'embed.html';

/** @param {string} name */
const title = (name) => name.replace(/(^|-)[a-z]/g, (letter) => letter.toUpperCase());

/** Names and values, for all files; a file that keeps itself for ever does so by its name. */
const all = [
  ['content-security-policy', POLICY],
  ...Object.entries(HEADERS),
  ['cache-control', 'no-cache'],
];

/**
 * Where two rules name the same header, such hosts send both values, and a browser keeps to both policies: so the
 * bench's page adds who may frame it, and takes nothing away.
 */
export const headersFile = () =>
  [
    '/*',
    ...all.map(([name = '', value]) => `  ${title(name)}: ${value}`),
    ...['/', '/index.html'].flatMap((page) => [page, `  Content-Security-Policy: ${NOT_FRAMED}`]),
    '',
  ].join('\n');

const nginx = () =>
  [
    ...all.map(([name = '', value]) => `add_header ${title(name)} "${value}" always;`),
    'types { application/manifest+json webmanifest; }',
    '# For the bench’s own page, every line above again (nginx inherits none where there is one), and:',
    `#   add_header Content-Security-Policy "${NOT_FRAMED}" always;`,
  ].join('\n');

const apache = () =>
  [
    'AddType application/manifest+json .webmanifest',
    ...all.map(([name = '', value]) => `Header always set ${title(name)} "${value}"`),
    '<FilesMatch "^(index\\.html)?$">',
    `  Header always add Content-Security-Policy "${NOT_FRAMED}"`,
    '</FilesMatch>',
  ].join('\n');

export const hostingText = () => `Takeup on a host of your own

This folder is all of it. Copy it as it is, under any path: every address in it is relative. It needs https
(or localhost) to be installed and to work without a network; without that it works with one.

Each page says its content policy itself, so it holds on a host that sends no headers. Only a header can say
who may frame a page, and the rest below. The file ${HEADERS_FILE} is for hosts that read such a file at the top of
the site (under a path, put the path before its two rules for the page). For two common servers:

nginx, in the location that serves this folder

${nginx()}

Apache, as .htaccess in this folder (mod_headers)

${apache()}

embed.html is there to be framed by other sites; index.html is not.
No header here is a secret, and none is needed for the bench to work.
`;

/**
 * Puts both files, and the page to be framed, beside the page.
 *
 * @returns {import('vite').Plugin}
 */
export const hosting = () => ({
  name: 'takeup:hosting',
  generateBundle: {
    order: 'post',
    handler(_, bundle) {
      const page = bundle['index.html'];
      if (page?.type !== 'asset') throw new Error('the build has left no index.html');
      const source = String(page.source)
        .replace('<html lang="en">', '<html lang="en" data-embed>')
        .replace('<title>Takeup</title>', '<title>Takeup: a brake</title>')
        .replace(/\s*<link rel="(?:manifest|apple-touch-icon)"[^>]*>/g, '');
      this.emitFile({ type: 'asset', fileName: EMBED, source });
      this.emitFile({ type: 'asset', fileName: HEADERS_FILE, source: headersFile() });
      this.emitFile({ type: 'asset', fileName: HOSTING_FILE, source: hostingText() });
    },
  },
});
