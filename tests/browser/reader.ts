import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { CDPSession, Page } from 'playwright-core';
import { expect } from 'vitest';
import { frames } from './soon.ts';

/**
 * What whoever does not see the page hears of it: of the focus, by the browser's own tree for assistive software
 * (role, name, value, states), and of live regions, by what comes to stand in them. Keys are real ones. Whoever reads
 * on without moving the focus hears the tree from top to bottom: `reads`.
 */

const folder = join(dirname(fileURLToPath(import.meta.url)), 'heard');
/** Set, the texts are written anew; else the page is held to them. */
const writes = process.env['HEARD'] === 'write';
/** Nothing more is said after so long, where it is written down anew, ms. */
const QUIET = 4000;

/** Takes down what live regions say. Runs in the page before its own scripts. */
export function listen(): void {
  const heard: string[] = [];
  const last = new WeakMap<Element, string>();
  Object.assign(globalThis, { heard });
  const LIVE = '[role="status"], [role="alert"], [aria-live="polite"], [aria-live="assertive"]';
  const up = (e: Node): Element | null => {
    const root = e.getRootNode();
    return e.parentElement ?? (root instanceof ShadowRoot ? root.host : null);
  };
  const regionOf = (node: Node): Element | null => {
    for (let at = node instanceof Element ? node : up(node); at; at = up(at))
      if (at.matches(LIVE)) return at;
    return null;
  };
  const textOf = (node: Node): string => {
    if (node instanceof Text) return node.data;
    if (!(node instanceof Element)) return '';
    if (node.getAttribute('aria-hidden') === 'true' || !node.checkVisibility()) return '';
    const label = node instanceof SVGElement ? node.getAttribute('aria-label') : null;
    return label ?? [...node.childNodes].map(textOf).join(' ');
  };
  const said = (region: Element, born: boolean): void => {
    const text = textOf(region).replace(/\s+/g, ' ').trim();
    if (last.get(region) === text) return;
    const first = !last.has(region);
    last.set(region, text);
    // What is still being worked out is told in steps as it comes: none of them is the end of it.
    if (text === '' || /…$|\d %$|\d of \d+\.?$/.test(text)) return;
    heard.push(first && born ? `${text} (with its region)` : text);
  };
  const watch = (root: Document | ShadowRoot): void => {
    new MutationObserver((all) => {
      const touched = new Map<Element, boolean>();
      for (const { target, addedNodes } of all) {
        const region = regionOf(target);
        if (region) touched.set(region, touched.get(region) ?? false);
        for (const node of addedNodes) {
          if (!(node instanceof Element)) continue;
          for (const inner of [node, ...node.querySelectorAll(LIVE)])
            if (inner.matches(LIVE) && !touched.has(inner)) touched.set(inner, true);
        }
      }
      for (const [region, born] of touched) said(region, born);
    }).observe(root, { childList: true, subtree: true, characterData: true });
  };
  watch(document);
  const attach = Element.prototype.attachShadow;
  Element.prototype.attachShadow = function (how) {
    const root = attach.call(this, how);
    watch(root);
    return root;
  };
}

interface AxNode {
  readonly nodeId: string;
  readonly ignored: boolean;
  readonly role?: { readonly value?: string };
  readonly name?: { readonly value?: string };
  readonly value?: { readonly value?: unknown };
  readonly description?: { readonly value?: string };
  readonly properties?: readonly {
    readonly name: string;
    readonly value: { readonly value?: unknown };
  }[];
  readonly childIds?: readonly string[];
  readonly backendDOMNodeId?: number;
}

/** What the tree that the browser hands out leaves out of an element: told beside it. */
interface Beside {
  readonly current?: string;
  readonly valueText?: string;
}

/** A node as it is spoken: role, name, value, states. */
function spoken(node: AxNode, { current = '', valueText = '' }: Beside = {}): string {
  const { role, name, value, description, properties = [] } = node;
  const is = (what: string) => properties.find((p) => p.name === what)?.value.value;
  const plain = role?.value === 'slider' ? '' : (value?.value ?? '');
  const states = [
    valueText !== '' || plain !== '' ? `is ${valueText || plain}` : '',
    is('pressed') === 'true' || is('pressed') === true ? 'pressed' : '',
    is('pressed') === 'false' || is('pressed') === false ? 'not pressed' : '',
    is('checked') === 'true' ? 'checked' : is('checked') === 'false' ? 'not checked' : '',
    is('expanded') === true ? 'open' : is('expanded') === false ? 'folded' : '',
    is('disabled') === true ? 'off' : '',
    is('invalid') && is('invalid') !== 'false' ? 'invalid' : '',
    is('hasPopup') && role?.value !== 'combobox' ? `opens a ${is('hasPopup')}` : '',
    current && current !== 'false' ? `current ${current}` : '',
    description?.value ? `(${description.value})` : '',
  ].filter((s) => s !== '');
  const level = is('level');
  const what = role?.value === 'heading' ? `heading ${level}` : (role?.value ?? '');
  return [`${what} "${(name?.value ?? '').replace(/\s+/g, ' ').trim()}"`, ...states].join(', ');
}

/** Whoever sits before the page with a keyboard and a screen reader, and the text of what was heard. */
export class Reader {
  readonly #page: Page;
  readonly #client: CDPSession;
  readonly #file: string;
  readonly #lines: string[] = [];
  readonly #expected: readonly string[] | null;
  /** So many lines of the page's live regions were taken down. */
  #taken = 0;

  private constructor(page: Page, client: CDPSession, name: string) {
    this.#page = page;
    this.#client = client;
    this.#file = join(folder, `${name}.txt`);
    this.#expected =
      !writes && existsSync(this.#file) ? readFileSync(this.#file, 'utf8').split('\n\n') : null;
  }

  /** @param name of the file that is to hold what is heard */
  static async of(page: Page, name: string): Promise<Reader> {
    const client = await page.context().newCDPSession(page);
    await client.send('Accessibility.enable');
    return new Reader(page, client, name);
  }

  async #nodeOf(found: string): Promise<AxNode> {
    const { result } = await this.#client.send('Runtime.evaluate', { expression: found });
    if (!result.objectId) throw new Error('nothing there');
    const { nodes } = (await this.#client.send('Accessibility.getPartialAXTree', {
      objectId: result.objectId,
      fetchRelatives: false,
    })) as unknown as { nodes: AxNode[] };
    const [node] = nodes;
    if (!node) throw new Error('not in the tree');
    return node;
  }

  /** What has the focus, as it is spoken. */
  async #focus(): Promise<string> {
    const deep =
      '(() => { let a = document.activeElement; while (a?.shadowRoot?.activeElement) a = a.shadowRoot.activeElement; return a; })()';
    const [current, valueText] = (await this.#page.evaluate(
      `['aria-current', 'aria-valuetext'].map((a) => ${deep}.getAttribute(a) ?? '')`,
    )) as [string, string];
    return spoken(await this.#nodeOf(deep), { current, valueText });
  }

  #heard(): Promise<string[]> {
    return this.#page.evaluate(() => (globalThis as unknown as { heard: string[] }).heard);
  }

  async #quiet(): Promise<void> {
    for (let before = -1, from = Date.now(); Date.now() - from < QUIET; ) {
      const { length } = await this.#heard();
      if (length !== before) from = Date.now();
      before = length;
      await frames(this.#page, 10);
    }
  }

  /** One block of the text: what was done, and what was heard then. */
  async #block(done: string, look: () => Promise<string>, most = Infinity): Promise<void> {
    const at = this.#lines.length;
    const from = this.#taken;
    const block = async (): Promise<string> => {
      const all = (await this.#heard()).slice(from).map((line) => `  says: ${line}`);
      this.#taken = from + all.length;
      return [done, await look(), ...all.slice(-most)].filter((line) => line !== '').join('\n');
    };
    if (this.#expected) {
      const wanted = this.#expected[at] ?? '';
      await expect
        .poll(block, { message: `${this.#file}, block ${at + 1}` })
        .toBe(wanted.trimEnd());
    } else await this.#quiet();
    this.#lines.push(await block());
  }

  /** A heading of the text: what the person is about. */
  about(what: string): Promise<void> {
    return this.#block(`# ${what}`, async () => '');
  }

  /** Presses a key, once or so many times, and takes down what has the focus then and what is said. */
  async press(key: string, times = 1): Promise<void> {
    for (let i = 0; i < times; i++) await this.#page.keyboard.press(key);
    const name = key === ' ' ? 'Space' : key;
    await this.#block(
      times > 1 ? `${name}, ${times} times` : name,
      async () => `  on: ${await this.#focus()}`,
    );
  }

  /** Types letters into what has the focus; of what is said between them, as the page has time, only the last is taken down. */
  async type(text: string): Promise<void> {
    await this.#page.keyboard.type(text);
    await this.#block(`types "${text}"`, async () => `  on: ${await this.#focus()}`, 1);
  }

  /** Goes on by Tab until what is wanted has the focus; all on the way has a name. */
  async tabTo(wanted: RegExp, key: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> {
    const seen: string[] = [];
    for (let i = 0; i < 200; i++) {
      await this.#page.keyboard.press(key);
      const focus = await this.#focus();
      // From the last of the page the browser goes to its own bars, and round.
      if (/^\w+ ""/.test(focus) && !/^(RootWebArea|none)/.test(focus))
        throw new Error(`nameless: ${focus}`);
      if (wanted.test(focus)) {
        await this.#block(`${key} …`, async () => `  on: ${await this.#focus()}`);
        return;
      }
      seen.push(focus);
    }
    throw new Error(`${wanted} is not reached by ${key}:\n${seen.join('\n')}`);
  }

  /** Reads on from the top of a part of the page, without moving the focus. */
  async reads(selector: string): Promise<void> {
    await this.#block(`reads on`, async () => {
      const tree = await this.#tree(selector);
      return tree.map((line) => `  | ${line}`).join('\n');
    });
  }

  async #tree(selector: string): Promise<string[]> {
    const part = await this.#page.locator(selector).first().elementHandle();
    const { nodes } = (await this.#client.send('Accessibility.getFullAXTree')) as unknown as {
      nodes: AxNode[];
    };
    await part?.evaluate((e) => {
      (globalThis as unknown as { part: Element }).part = e;
    });
    const { result } = await this.#client.send('Runtime.evaluate', {
      expression: 'globalThis.part',
    });
    const { node: dom } = await this.#client.send('DOM.describeNode', {
      objectId: result.objectId ?? '',
    });
    const byId = new Map(nodes.map((n) => [n.nodeId, n]));
    const top = nodes.find((n) => n.backendDOMNodeId === dom.backendNodeId);
    const lines: string[] = [];
    let text = '';
    const flush = (): void => {
      const told = text.replace(/\s+/g, ' ').trim();
      if (told !== '') lines.push(told);
      text = '';
    };
    const walk = (node: AxNode): void => {
      const role = node.role?.value ?? '';
      if (role === 'StaticText') {
        text += ` ${node.name?.value ?? ''}`;
        return;
      }
      const children = (): void => {
        for (const id of node.childIds ?? []) {
          const child = byId.get(id);
          if (child) walk(child);
        }
      };
      if (node.ignored || INLINE.includes(role) || role.startsWith('MathML')) {
        children();
        return;
      }
      flush();
      if (ENDS.includes(role)) {
        lines.push(spoken(node));
        return;
      }
      if (NAMED.includes(role) && node.name?.value) lines.push(spoken(node));
      children();
      flush();
    };
    if (top) walk(top);
    flush();
    return lines;
  }

  /** The page said all that the text has, and the text is kept where it is written anew. */
  end(): void {
    const text = `${this.#lines.join('\n\n')}\n`;
    if (writes) {
      mkdirSync(folder, { recursive: true });
      writeFileSync(this.#file, text);
    }
    expect(text).toBe(readFileSync(this.#file, 'utf8'));
  }
}

/** They stand in the middle of a line of text. */
const INLINE = [
  'generic',
  'none',
  'strong',
  'emphasis',
  'mark',
  'superscript',
  'subscript',
  'cell',
  'gridcell',
  'rowheader',
  'columnheader',
  'deletion',
  'LineBreak',
  'InlineTextBox',
  'insertion',
  'term',
  'definition',
  'code',
  'time',
  'abbr',
  'Abbr',
  'LabelText',
];
/** They are spoken by their name: what is in them is in it. */
const ENDS = [
  'heading',
  'button',
  'link',
  'slider',
  'textbox',
  'searchbox',
  'checkbox',
  'radio',
  'combobox',
  'spinbutton',
  'image',
  'img',
  'DisclosureTriangle',
  'application',
  'progressbar',
];
/** They are spoken where they begin, if they have a name. */
const NAMED = [
  'group',
  'region',
  'list',
  'navigation',
  'table',
  'dialog',
  'status',
  'alert',
  'form',
  'complementary',
];
