import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { sceneJsonSchema } from '../../ui/command/scene-json-schema.ts';
import { quayScene } from '../brakes.ts';

const scenes = fileURLToPath(new URL('../../scenes/', import.meta.url));
const read = (name: string): unknown => JSON.parse(readFileSync(scenes + name, 'utf8'));
const onFile = read('scene.schema.json') as Node;
const names = readdirSync(scenes).filter((n) => n.endsWith('.json') && !n.includes('.schema.'));

/** The words of JSON Schema that the written file uses. */
interface Node {
  readonly type?: 'object' | 'array' | 'number' | 'integer' | 'string' | 'boolean';
  readonly properties?: Readonly<Record<string, Node>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: boolean;
  readonly items?: Node | false | readonly Node[];
  readonly prefixItems?: readonly Node[];
  readonly additionalItems?: boolean;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly Node[];
  readonly oneOf?: readonly Node[];
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly exclusiveMaximum?: number;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly pattern?: string;
  readonly description?: string;
}
const KNOWN = new Set(
  'type properties required additionalProperties items prefixItems additionalItems minItems maxItems const enum anyOf oneOf minimum maximum exclusiveMinimum exclusiveMaximum minLength maxLength pattern title description default $schema'.split(
    ' ',
  ),
);

const isObject = (v: unknown): v is Record<string, unknown> =>
  typeof v === 'object' && v !== null && !Array.isArray(v);

function typeFits(type: Node['type'], v: unknown): boolean {
  if (type === 'object') return isObject(v);
  if (type === 'array') return Array.isArray(v);
  if (type === 'integer') return Number.isInteger(v);
  return type === undefined || typeof v === type;
}

/** What an editor would underline, by path. */
function faults(node: Node, v: unknown, path: string): string[] {
  const strange = Object.keys(node).filter((k) => !KNOWN.has(k));
  if (strange.length > 0) throw new Error(`${path}: this test does not know ${strange}`);
  const out: string[] = [];
  const must = (ok: boolean, what: string): void => {
    if (!ok) out.push(`${path}: ${what}`);
  };
  must(typeFits(node.type, v), `no ${node.type}`);
  if ('const' in node) must(v === node.const, 'const');
  if (node.enum) must(node.enum.includes(v), 'enum');
  const choices = node.anyOf ?? node.oneOf;
  if (choices) must(choices.filter((c) => faults(c, v, path).length === 0).length > 0, 'no choice');
  if (typeof v === 'number') {
    must(v >= (node.minimum ?? v) && v <= (node.maximum ?? v), 'outside its range');
    must(node.exclusiveMinimum === undefined || v > node.exclusiveMinimum, 'too small');
    must(node.exclusiveMaximum === undefined || v < node.exclusiveMaximum, 'too large');
  }
  if (typeof v === 'string') {
    must(v.length >= (node.minLength ?? 0) && v.length <= (node.maxLength ?? 1e9), 'length');
    if (node.pattern) must(new RegExp(node.pattern, 'u').test(v), 'pattern');
  }
  if (Array.isArray(v)) {
    must(v.length >= (node.minItems ?? 0) && v.length <= (node.maxItems ?? 1e9), 'items');
    const tuple = node.prefixItems ?? (Array.isArray(node.items) ? node.items : []);
    v.forEach((item, i) => {
      const rest = isObject(node.items) ? (node.items as Node) : undefined;
      const of = tuple[i] ?? rest;
      if (of) out.push(...faults(of, item, `${path}[${i}]`));
    });
  }
  if (isObject(v)) {
    for (const key of node.required ?? []) must(key in v, `${key} is missing`);
    for (const [key, value] of Object.entries(v)) {
      const of = node.properties?.[key];
      if (of) out.push(...faults(of, value, `${path}.${key}`));
      else must(node.additionalProperties !== false, `${key} is unknown`);
    }
  }
  return out;
}

/** Units that a number's description may end with. */
const UNITS =
  /, (mm|µm|mm\/1000 km|degrees|N|N\/mm|mm\/N|MPa|bar|kg|kg·mm²|J|J\/K|W\/K|W\/K for each km\/h|1\/K|W\/\(m·K\)|kg\/m³|J\/\(kg·K\)|mm²\/N|mm³\/MPa|N\/\(m\/s\)²|°C|km\/h|km|1\/km|m\/s²|%|plain number|whole number)$/;

/** Keys without a word of what they are, and numbers without their unit, by path. */
function unsaid(node: Node, path: string): string[] {
  const out: string[] = [];
  const says = node.description ?? '';
  const number = node.type === 'number' || node.type === 'integer';
  if (number && node.const === undefined && !UNITS.test(says)) out.push(`${path}: "${says}"`);
  for (const [key, inner] of Object.entries(node.properties ?? {})) {
    if (!/[a-z]{2}/i.test(inner.description ?? '')) out.push(`${path}.${key}`);
    out.push(...unsaid(inner, `${path}.${key}`));
  }
  const items = [node.items, node.prefixItems].flat().filter((i) => typeof i === 'object');
  for (const inner of [...items, ...(node.anyOf ?? []), ...(node.oneOf ?? [])]) {
    out.push(...unsaid(inner as Node, `${path}[]`));
  }
  return out;
}

describe('the JSON Schema on file', () => {
  it('says of every key what it is, and of every number its unit', () => {
    expect(unsaid(onFile, 'scene')).toEqual([]);
    const bare = { type: 'object', properties: { a: { type: 'number' }, b: {} } } as const;
    expect(unsaid(bare, 'x')).toEqual(['x.a', 'x.a: ""', 'x.b']);
  });

  it('is the one its source writes', () => {
    expect(onFile).toEqual(JSON.parse(JSON.stringify(sceneJsonSchema())));
  });

  it('asks for what a brake needs and refuses other keys', () => {
    expect(onFile.required).toEqual(
      expect.arrayContaining(['format', 'version', 'drum', 'shoes', 'cylinder', 'adjuster']),
    );
    expect(onFile.additionalProperties).toBe(false);
  });

  it.each(names)('passes %s', (name) => {
    expect(faults(onFile, read(name), 'scene')).toEqual([]);
  });

  it('finds what is wrong', () => {
    const scene = quayScene();
    scene.drum.rim = -1;
    scene.shoes.front.toe = [1];
    const { duties, ...rest } = scene;
    expect(duties.length).toBeGreaterThan(0);
    const found = faults(onFile, { ...rest, extra: 1, wheel: 'middle' }, 'scene').join('\n');
    for (const part of ['drum.rim', 'shoes', 'duties is missing', 'extra is unknown', 'wheel']) {
      expect(found).toContain(part);
    }
  });
});
