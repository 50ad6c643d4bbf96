import { parseSync } from 'vite';

/** Finds what people read in the code of the page: it belongs among the words (`sim/words/en.ts`). */

/** A node of the parsed code, as far as it is asked about here. */
interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [key: string]: unknown;
}
const isNode = (x: unknown): x is Node =>
  typeof x === 'object' && x !== null && typeof (x as Node).type === 'string';

const read = new Map<string, Node>();
/** Each file is read twice: for what is known of all, and for its texts. */
function parsed(code: string, file: string): Node {
  const program =
    read.get(code) ?? (parseSync(file, code, { lang: 'ts' }).program as unknown as Node);
  read.set(code, program);
  return program;
}

function* childrenOf(node: Node): Generator<readonly [key: string, child: Node]> {
  for (const [key, value] of Object.entries(node)) {
    if (isNode(value)) yield [key, value];
    else if (Array.isArray(value)) for (const one of value) if (isNode(one)) yield [key, one];
  }
}

/** The text of a string, or of a template without holes; nothing of anything else. */
function stringOf(node: unknown): string | null {
  if (!isNode(node)) return null;
  if (node.type === 'Literal' && typeof node['value'] === 'string') return node['value'];
  const quasis = node['quasis'];
  return node.type === 'TemplateLiteral' && Array.isArray(quasis) && quasis.length === 1
    ? cookedOf(quasis[0])
    : null;
}
const cookedOf = (quasi: Node): string => (quasi['value'] as { cooked: string }).cooked;
const rawOf = (quasi: Node): string => (quasi['value'] as { raw: string }).raw;

const nameOf = (node: unknown): string =>
  isNode(node) ? String(node['name'] ?? stringOf(node) ?? '') : '';

/** What a call calls: the last name of it. */
function calledBy(node: Node): string {
  const callee = node['callee'];
  if (!isNode(callee)) return '';
  return callee.type === 'MemberExpression' ? nameOf(callee['property']) : nameOf(callee);
}

const COMPARES = new Set(['===', '!==', '==', '!=', 'in']);
const TELLS_APART =
  /^(includes|has|startsWith|endsWith|indexOf|split|get|set|delete|replaceAll|replace)$/;

/** Gathers the codes of one file. */
function gather(node: Node, codes: Set<string>): void {
  const add = (x: unknown) => {
    const text = stringOf(x);
    if (text !== null) codes.add(text);
  };
  switch (node.type) {
    case 'TSLiteralType':
      add(node['literal']);
      break;
    case 'SwitchCase':
      add(node['test']);
      break;
    case 'MemberExpression':
      add(node['property']);
      break;
    case 'BinaryExpression':
      if (COMPARES.has(String(node['operator']))) {
        add(node['left']);
        add(node['right']);
      }
      break;
    case 'Property':
    case 'TSPropertySignature':
    case 'PropertyDefinition':
    case 'MethodDefinition':
      add(node['key']);
      break;
    case 'CallExpression':
      if (TELLS_APART.test(calledBy(node))) add((node['arguments'] as Node[])[0]);
      break;
  }
  for (const [, child] of childrenOf(node)) gather(child, codes);
}

/** Of all code: strings that are told apart, compared, used as keys or named by a type, and so are no texts. */
export function codesOf(files: readonly { code: string; file: string }[]): ReadonlySet<string> {
  const codes = new Set<string>();
  for (const { code, file } of files) gather(parsed(code, file), codes);
  return codes;
}

/** Signs of units are no words. */
const UNITS = new Set(
  'mm cm km kN Nm MPa kPa bar ms min kg kB MB px Hz kJ kW µm rad deg nm dB'.split(' '),
);
const hasWords = (text: string): boolean =>
  (text.match(/\p{L}+/gu) ?? []).some((word) => word.length >= 2 && !UNITS.has(word));

/** Words with a space between them: else it may be a code of one word. */
const isText = (text: string): boolean => hasWords(text) && /\s/.test(text.trim());

/** A single word as it begins a line, such as a label. Names of keys, of what the browser knows, and those of languages, each in itself, are none. */
const isLabel = (text: string): boolean =>
  /^\p{Lu}\p{Ll}{2,}[.:…]?$/u.test(text) && !OF_THE_BROWSER.test(text);
const OF_THE_BROWSER =
  /^(English|Deutsch|Esc|Escape|Enter|Tab|Backspace|Delete|Home|End|Shift|Control|Meta|Alt|Space|Canvas|Opus)$/;

/** Told by its shape: style, path, selector and the like. */
function isOfTheTools(text: string): boolean {
  const t = text.trim();
  return (
    /<\w|="|^\.\w|^takeup[ -]|^[a-z-]+:\d|Encode Sans/.test(t) ||
    /[{}[\]]|;\S|;$|<\/|=>|\(\)|^--|\bvar\(|^#/.test(t) ||
    /^[a-z-]+:\S+$/.test(t) ||
    /^[a-z-]+:1/.test(t) ||
    /^(translate|rotate|scale|matrix|rgba?|hsl|calc|url)\b.*\(/.test(t) ||
    /^\(?(min|max|prefers)-/.test(t) ||
    /^(text|image|application|video|audio|font)\/[\w+.-]+/.test(t) ||
    /^[MLHVAQCZ]?[\d\s.,\-MLHVAQCZ]+$/i.test(t) ||
    /^\d+px |^\d+ \d+px/.test(t) ||
    t.split(', ').every((name) => /^(button|input|select|a|summary|textarea)$/.test(name))
  );
}

/** What people see or hear of an element's attributes. */
const VISIBLE =
  /\s(?:aria-label|title|alt|placeholder|aria-valuetext|aria-description|aria-roledescription|label)=("[^"]*"|'[^']*'|[^\s>]*)/g;
/** The attribute that a hole is the value of, where it stands in one. */
const ATTRIBUTE = /([@.?\w-]+)=(?:"[^"]*|'[^']*)?$/;

/** Texts between the tags of a template and in its visible attributes; and of each hole, whether a text may be in it. */
function ofTemplate(parts: readonly string[]): {
  texts: string[];
  speaks: boolean[];
  shows: boolean[];
} {
  const speaks: boolean[] = [];
  const shows: boolean[] = [];
  let before = '';
  parts.slice(0, -1).forEach((part) => {
    before += part;
    const tag = before.slice(before.lastIndexOf('<'));
    const inTag = before.includes('<') && !tag.includes('>');
    const attribute = inTag ? (ATTRIBUTE.exec(tag)?.[1] ?? 'none') : '';
    // What of the holes is surely shown as it is: states such as aria-current have codes.
    shows.push(
      attribute === '' ||
        /^(title|alt|placeholder|label|aria-(label|valuetext|description|roledescription))$/.test(
          attribute,
        ),
    );
    speaks.push(
      attribute === '' ||
        /^(?:aria-|@|\.(?!style|className))/.test(attribute) ||
        /^(title|alt|placeholder|label)$/.test(attribute),
    );
    before += '\uE000';
  });
  const whole = parts.join('\uE000').replace(/<style>.*?<\/style>/gs, '');
  const texts = [...whole.matchAll(VISIBLE)].map(([, value = '']) => value);
  texts.push(
    ...whole
      .replace(/<!--.*?-->/gs, '')
      .replace(/"[^"<>]*"|'[^'<>]*'/g, (value) => value.replace(/[<>]/g, ''))
      .split(/<[^>]*>?/),
  );
  return {
    texts: texts
      .map((text) => text.replace(/&\w+;|\\u\{?[\da-f]{4}\}?/gi, ' ').replaceAll('\uE000', ' '))
      .filter(hasWords),
    speaks,
    shows,
  };
}

/** Calls whose strings are for the browser or for a comparison. */
const FOR_TOOLS =
  /^(querySelector|querySelectorAll|getElementById|closest|matches|addEventListener|removeEventListener|getItem|setItem|removeItem|createElement|createElementNS|matchMedia|getAttribute|setAttribute|hasAttribute|removeAttribute|toggleAttribute|getContext|define|dispatchEvent|setProperty|getPropertyValue|contains|toggle|replace|replaceAll|split|join|test|exec|startsWith|endsWith|includes|indexOf|mark|measure|getEntriesByName|get|has|delete|append|postMessage|open|transaction|objectStore|createObjectStore|mjs|Symbol|RegExp|css|unsafeCSS|styleMap|classMap|localeCompare|normalize|padStart|padEnd|fromCharCode|warn|error|log|assert|setFont|URL|Blob|Worker|fetch|supports|fillText|setUnits|setLineDash)$/;
const NEW_FOR_TOOLS =
  /(Error|^URL|Event|^Worker|^RegExp|^Blob|^FontFace|^DOMParser|^OffscreenCanvas|^BroadcastChannel)$/;
const PROPERTIES_FOR_TOOLS =
  /^(key|id|group|layer|type|font|d|path|tag|role|class|cls|styles|css|file|mime|cursor|transform|dash|family|href|src|url)$/;

/** Texts that stand in the code of one file. */
export function textsIn(code: string, file: string, codes: ReadonlySet<string>): string[] {
  const found: string[] = [];
  const tell = (text: string) => {
    if (
      (isText(text) && !codes.has(text) && !isOfTheTools(text)) ||
      (isLabel(text) && !codes.has(text))
    )
      found.push(text);
  };
  /** A word that is put into a template of the page as it is, on its own or on a condition. */
  const single = (node: Node): void => {
    const text = stringOf(node);
    if (text !== null) {
      if (hasWords(text) && !isText(text) && !isLabel(text)) found.push(text);
    } else if (node.type === 'ConditionalExpression') {
      single(node['consequent'] as Node);
      single(node['alternate'] as Node);
    } else if (node.type === 'LogicalExpression') single(node['right'] as Node);
    else if (node.type === 'ParenthesizedExpression') single(node['expression'] as Node);
  };
  /** @param silent what stands here is for the tools; templates of the page in it are looked through all the same */
  const look = (node: Node, silent: boolean): void => {
    if (node.type.startsWith('TS') && !/^TS(As|Satisfies|NonNull)Expression$/.test(node.type))
      return;
    switch (node.type) {
      case 'ImportDeclaration':
      case 'ExportAllDeclaration':
      case 'ImportExpression':
        return;
      case 'TaggedTemplateExpression': {
        const { quasis, expressions } = node['quasi'] as { quasis: Node[]; expressions: Node[] };
        const tag = nameOf(node['tag']);
        if (tag === 'html' || tag === 'svg') {
          const { texts, speaks, shows } = ofTemplate(quasis.map(rawOf));
          found.push(...texts);
          expressions.forEach((one, at) => {
            look(one, !speaks[at]);
            if (shows[at]) single(one);
          });
        } else for (const one of expressions) look(one, true);
        return;
      }
      case 'TemplateLiteral': {
        const { quasis, expressions } = node as unknown as {
          quasis: Node[];
          expressions: Node[];
        };
        if (!silent) tell(quasis.map(cookedOf).join(expressions.length > 0 ? '1' : ''));
        for (const one of expressions) look(one, silent);
        return;
      }
      case 'Literal':
        if (!silent && typeof node['value'] === 'string') tell(node['value']);
        return;
    }
    const calls =
      (node.type === 'CallExpression' && FOR_TOOLS.test(calledBy(node))) ||
      (node.type === 'NewExpression' && NEW_FOR_TOOLS.test(calledBy(node)));
    const compares = node.type === 'BinaryExpression' && COMPARES.has(String(node['operator']));
    for (const [key, child] of childrenOf(node)) {
      const named =
        (node.type === 'Property' || node.type === 'PropertyDefinition') &&
        (key === 'key' || PROPERTIES_FOR_TOOLS.test(nameOf(node['key'])));
      const asked =
        (node.type === 'MemberExpression' && key === 'property') ||
        (node.type === 'SwitchCase' && key === 'test');
      const begins = /Function|^ClassBody$|^BlockStatement$/.test(child.type);
      look(
        child,
        begins ? false : silent || named || asked || compares || (calls && key === 'arguments'),
      );
    }
  };
  look(parsed(code, file), false);
  return found;
}
