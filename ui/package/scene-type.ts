import { sceneJsonSchema } from '../command/scene-json-schema.ts';

/** The words of JSON Schema that a scene's has, as far as they matter to a type. */
interface Node {
  readonly type?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly properties?: Readonly<Record<string, Node>>;
  readonly required?: readonly string[];
  readonly items?: Node | false | readonly Node[];
  readonly prefixItems?: readonly Node[];
  readonly minItems?: number;
  readonly anyOf?: readonly Node[];
  readonly oneOf?: readonly Node[];
  readonly default?: unknown;
  readonly description?: string;
}

const isNode = (v: unknown): v is Node =>
  typeof v === 'object' && v !== null && !Array.isArray(v) && Object.keys(v).length > 0;

function listOf(node: Node, deep: string): string {
  const tuple = node.prefixItems ?? (Array.isArray(node.items) ? (node.items as Node[]) : null);
  if (tuple) return `[${tuple.map((n) => typeOf(n, deep)).join(', ')}]`;
  if (!isNode(node.items)) throw new Error('a list of nothing');
  return `(${typeOf(node.items, deep)})[]`;
}

function partOf(node: Node, deep: string): string {
  const inner = `${deep}  `;
  const lines = Object.entries(node.properties ?? {}).map(([key, value]) => {
    // What has a default may be left out in a file; read, it is there.
    const must = node.required?.includes(key) || 'default' in value;
    const says = value.description ? `${inner}/** ${value.description}. */\n` : '';
    // As a reader leaves it out: not there, or undefined.
    return `${says}${inner}${key}${must ? '' : '?'}: ${typeOf(value, inner)}${must ? '' : ' | undefined'};`;
  });
  return `{\n${lines.join('\n')}\n${deep}}`;
}

/** A node as TypeScript has it. @throws Error where it has a word that no scene had so far */
function typeOf(node: Node, deep: string): string {
  if ('const' in node) return JSON.stringify(node.const);
  if (node.enum) return node.enum.map((v) => JSON.stringify(v)).join(' | ');
  const choices = node.anyOf ?? node.oneOf;
  if (choices) return choices.map((n) => typeOf(n, deep)).join(' | ');
  if (node.type === 'object') return partOf(node, deep);
  if (node.type === 'array') return listOf(node, deep);
  if (node.type === 'integer') return 'number';
  if (node.type === 'number' || node.type === 'string' || node.type === 'boolean') return node.type;
  throw new Error(`no type for ${JSON.stringify(node)}`);
}

/**
 * The type of a scene as it was read, written out from the schema that reads it: each key with what it is and its
 * unit, and without the schema library, which whoever takes the package need not have.
 */
export const sceneType = (): string =>
  `/** A scene as it was read: trade units, one for each key, with what was left out filled in. */
export interface Scene ${typeOf(sceneJsonSchema() as Node, '')}
`;
