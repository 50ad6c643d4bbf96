import extended from '@fontsource-variable/encode-sans/files/encode-sans-latin-ext-wdth-normal.woff2?url';
import latin from '@fontsource-variable/encode-sans/files/encode-sans-latin-wdth-normal.woff2?url';

/**
 * The page's own typeface as rules that carry it along (about 60 kB for Latin letters), so that a figure looks
 * the same on a machine that does not have it. Letters beyond Latin-1 bring the second file, where there are any.
 */
/** As the typeface's own rules have them: what is not in a file is left to the next font there and here. */
const LATIN =
  'U+0000-00FF,U+0131,U+0152-0153,U+02BB-02BC,U+02C6,U+02DA,U+02DC,U+0304,U+0308,U+0329,U+2000-206F,U+20AC,U+2122,U+2191,U+2193,U+2212,U+2215,U+FEFF,U+FFFD';
const EXTENDED =
  'U+0100-02BA,U+02BD-02C5,U+02C7-02CC,U+02CE-02D7,U+02DD-02FF,U+1D00-1DBF,U+1E00-1E9F,U+1EF2-1EFF,U+20A0-20AB,U+20AD-20C0';

const toBase64 = (bytes: Uint8Array): string => {
  let text = '';
  for (let i = 0; i < bytes.length; i += 0x8000)
    text += String.fromCharCode(...bytes.subarray(i, i + 0x8000));
  return btoa(text);
};

/** A file as a data address; one that the build has put into the page already is one. */
async function dataOf(url: string): Promise<string> {
  if (url.startsWith('data:')) return url;
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`${url}: ${answer.status}`);
  return `data:font/woff2;base64,${toBase64(new Uint8Array(await answer.arrayBuffer()))}`;
}

const rules = new Map<string, Promise<string>>();

function ruleOf(url: string, range: string): Promise<string> {
  const known = rules.get(url);
  if (known) return known;
  const rule = dataOf(url).then(
    (data) =>
      `@font-face{font-family:'Encode Sans Variable';font-weight:100 900;font-stretch:75% 125%;src:url(${data}) format('woff2');unicode-range:${range}}`,
  );
  // One that failed is asked for again.
  rule.catch(() => rules.delete(url));
  rules.set(url, rule);
  return rule;
}

const beyondLatin = /[\u0100-\u02ff\u1e00-\u1eff]/;

/** @param text all that is to be written */
export async function fontsFor(text: string): Promise<string> {
  const all = [ruleOf(latin, LATIN)];
  if (beyondLatin.test(text)) all.push(ruleOf(extended, EXTENDED));
  return (await Promise.all(all)).join('');
}
