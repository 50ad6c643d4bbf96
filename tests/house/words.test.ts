import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import * as en from '../../sim/words/en.ts';
import { codesOf, textsIn } from './texts.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The mechanics say nothing (sentences.test.ts); command line, server and build are not of the page. */
const SPEAKS =
  /^(sim\/(scene|workshop|readings|study\/(?!forecast\.ts))|ui\/(?!command\/|serve\/|package\/|offline\/))/;

/** Where readings are worked out formulas stand too, in symbols that are the same in every language. */
const OF_FIGURES = /^sim\/(readings|study)\//;
const symbolsAlone = (text: string): boolean =>
  /[=·/√−]|^(sin|tan) /.test(text) &&
  !/\p{L}{3,}/u.test(text.replace(/_\w+|\b(sin|cos|tan)\b/g, ''));

const files = ['sim', 'ui']
  .flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' }).map(
      (file) => `${folder}/${file.replaceAll('\\', '/')}`,
    ),
  )
  .filter((file) => /(?<!\.d)\.ts$/.test(file))
  .map((file) => ({ file, code: readFileSync(join(root, file), 'utf8') }));
// Tables of words name codes too.
const codes = codesOf(files);

it('no text stands in the code', () => {
  const spoken = files.filter(({ file }) => SPEAKS.test(file));
  expect(spoken.length).toBeGreaterThan(500);
  const found = spoken
    .map(({ file, code }) => ({
      file,
      texts: textsIn(code, file, codes).filter(
        (text) => !(OF_FIGURES.test(file) && symbolsAlone(text)),
      ),
    }))
    .filter(({ texts }) => texts.length > 0);
  expect(found, 'belongs into sim/words/en.ts').toEqual([]);
});

it.each([
  ['C_lead = T_lead / (R · F_toe)', true],
  ['sin φ = n T / (m g r)', true],
  ['i · free play', false],
  ['Pull of the cable', false],
])('symbols alone, and words among them: %s', (text, alone) => {
  expect(symbolsAlone(text)).toBe(alone);
});

it('every text is said somewhere, and by the section it stands in', () => {
  const unsaid: string[] = [];
  for (const [name, texts] of Object.entries(en)) {
    const said = new Set<string>();
    for (const { code } of files) {
      const as = new RegExp(`\\b${name}(?: as (\\w+))?\\b[^;]*?words/en\\.ts'`).exec(code);
      if (!as) continue;
      const uses = new RegExp(`\\b${as[1] ?? name}\\s*\\.\\s*(\\w+)`, 'g');
      for (const [, key = ''] of code.matchAll(uses)) said.add(key);
    }
    unsaid.push(...Object.keys(texts).flatMap((key) => (said.has(key) ? [] : `${name}.${key}`)));
  }
  expect(Object.keys(en).length).toBeGreaterThan(10);
  expect(unsaid).toEqual([]);
});

/* biome-ignore-start lint/suspicious/noTemplateCurlyInString: it is the code that is looked through */
it.each([
  'const remedy = "Renew the cable.";',
  'const says = `about ${n} of them`;',
  'html`<p>Nothing holds it</p>`',
  'html`<b>Lip</b>`',
  'html`<button aria-label="Turn">${mark}</button>`',
  'html`<p>${on ? "still on" : nothing}</p>`',
  'html`<p class="quiet" title=${`Drag ${name}`}>${mark}</p>`',
  'html`<button @click=${() => tell("It is done")}>${mark}</button>`',
  'const part = { name: "Hub fit", key: "hub fit" };',
  // Single words.
  'const part = { name: "Strut" };',
  'const turns = [[1, "Forward"]];',
  'const head = of ? "Lining…" : words.head;',
  'html`<b>${on ? "on" : words.off}</b>`',
  'html`<b>${name ?? "none"}</b>`',
  'html`<p aria-label=${on ? "held" : words.off}>${mark}</p>`',
])('finds the text in %s', (code) => {
  expect(textsIn(code, 'planted.ts', codes)).toHaveLength(1);
});

it.each([
  "import { row } from './a row.ts';",
  "type Lock = 'rust at the hub';",
  'const path = `M${x} ${y}L${u} ${v}`;',
  "if (lock === 'nothing at all') stop();",
  "throw new Error('this cannot be');",
  'html`<p class="blk ctl ${on ? "on wide" : ""}">${words.said}</p>`',
  'html`<b>${number(x, 2)}&nbsp;mm</b>`',
  'css`.bench > .row two { color: red; }`',
  "root.querySelector('button .word');",
  'html`<button aria-current=${on ? "step" : "false"}>${words.said}</button>`',
  "type Land = 'British'; const first = 'British';",
  "if (e.key === 'Escape') close('Esc');",
])('finds none in %s', (code) => {
  const own = codesOf([{ code, file: 'planted.ts' }]);
  expect(textsIn(code, 'planted.ts', own)).toEqual([]);
});
/* biome-ignore-end lint/suspicious/noTemplateCurlyInString: it is the code that is looked through */
