import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseSync } from '@swc/core';
import { expect, it } from 'vitest';

/**
 * Stations hold no state of their own: what the user set is in the record, what follows from it is
 * kept by what it was made of (`Kept`, `KeptFor`, `Piecewise`). So a class of a station has no field
 * that can be set anew, and no file of a station a variable that outlives a call.
 */

const folder = fileURLToPath(new URL('../../ui/stations', import.meta.url));

/** Fields of the painting: nothing that the user set, and gone with the element. */
const PAINTING: readonly string[] = [
  // What the section is painted on, and how far its slide is painted.
  'drum-off/section.ts #flash',
  'drum-off/section.ts #frame',
  'drum-off/section.ts #labels',
  'drum-off/section.ts #size',
  'drum-off/section.ts #slide',
  // A finger is down on the lever's pad, or on the hand's.
  'park/pad.ts #held',
  'hands/pad.ts #held',
  // Where the curves are painted, and where the pointer is.
  'vary/curve.ts #size',
  'vary/curve.ts #hover',
  'vary/curve.ts #dragging',
  'vary/map-view.ts #size',
  'vary/map-view.ts #dragging',
  'vary/region-view.ts #size',
  'vary/region-view.ts #dragging',
];

interface Node {
  readonly type?: string;
  readonly [key: string]: unknown;
}

const isNode = (x: unknown): x is Node => typeof x === 'object' && x !== null;

/** Every node of a tree. */
function* nodes(node: unknown): Generator<Node> {
  if (Array.isArray(node)) {
    for (const n of node) yield* nodes(n);
    return;
  }
  if (!isNode(node)) return;
  yield node;
  for (const value of Object.values(node)) yield* nodes(value);
}

const nameOf = (key: unknown): string => {
  if (!isNode(key)) return '?';
  const inner = key['id'];
  return String(key['value'] ?? (isNode(inner) ? inner['value'] : inner) ?? '?');
};

/** What in a file's text can be set anew and outlives a call. */
function mutable(text: string): string[] {
  const tree = parseSync(text, { syntax: 'typescript', target: 'es2022' }) as unknown as Node;
  const out: string[] = [];
  for (const node of nodes(tree)) {
    const field = node.type === 'ClassProperty' || node.type === 'PrivateProperty';
    if (!field || node['isStatic'] || node['readonly'] || node['declare']) continue;
    // A handler bound to its element.
    if (isNode(node['value']) && node['value'].type === 'ArrowFunctionExpression') continue;
    out.push(`${node.type === 'PrivateProperty' ? '#' : ''}${nameOf(node['key'])}`);
  }
  const body = tree['body'] as readonly Node[];
  for (const statement of body) {
    const inner = statement['declaration'] ?? statement;
    if (!isNode(inner) || inner.type !== 'VariableDeclaration') continue;
    const held = (inner['declarations'] as readonly Node[]).some(
      ({ init }) =>
        isNode(init) &&
        init.type === 'NewExpression' &&
        /^(Weak)?(Map|Set)$/.test(nameOf(init['callee'])),
    );
    if (inner['kind'] !== 'const' || held) out.push(`the file's own ${inner['kind']}`);
  }
  return out;
}

const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((f) =>
  f.endsWith('.ts'),
);

it('no station holds anything that can be set anew', () => {
  expect(files.length).toBeGreaterThan(40);
  const found = files.flatMap((f) =>
    mutable(readFileSync(join(folder, f), 'utf8')).map((name) => `${f} ${name}`),
  );
  // Where desks are found again for their session.
  const but = [...PAINTING, "station.ts the file's own const"];
  expect(found.filter((f) => !but.includes(f))).toEqual([]);
});

it('the check finds a planted field, a variable, a map', () => {
  expect(
    mutable('class D { cable = 300; readonly a = 1; #b = 2; static c = 3; declare d: number }'),
  ).toEqual(['cable', '#b']);
  expect(mutable('let open = false; const kept = new Map(); const plain = 3;')).toHaveLength(2);
});
