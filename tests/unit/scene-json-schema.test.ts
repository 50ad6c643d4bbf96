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

describe('the JSON Schema on file', () => {
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
