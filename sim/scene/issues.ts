import * as v from 'valibot';
import { sceneIssues as texts } from '../words/en.ts';
import type { Finding } from './finding.ts';

/** What a schema has against a file, as findings, each with its path: of a scene, of a lesson. */

/** What was found, short enough for a message. */
function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  const text = typeof value === 'number' ? String(value) : (JSON.stringify(value) ?? String(value));
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

/** As many findings as anybody reads at once. */
const MANY = 100;
export const few = (all: readonly Finding[]): readonly Finding[] =>
  all.length <= MANY
    ? all
    : [
        ...all.slice(0, MANY),
        { path: '(file)', found: texts.moreFindings(all.length - MANY), allowed: 'none' },
      ];

type Issue = v.BaseIssue<unknown>;
const isUnknown = (issue: Issue): boolean =>
  issue.type === 'strict_object' && issue.expected === 'never';

/** All issues; of a choice between kinds those inside the kind that was meant, whose keys were looked at. */
const issuesOf = ({ issues = [] }: { readonly issues?: readonly Issue[] | undefined }): Issue[] =>
  issues.flatMap((issue) => {
    const { path = [] } = issue;
    const deeper = ((issue.issues ?? []) as readonly Issue[]).filter((inner) => inner.path);
    if (issue.type !== 'union' || deeper.length === 0) return [issue];
    return deeper.map((inner) => ({ ...inner, path: [...path, ...(inner.path ?? [])] }) as Issue);
  });

/** The data without what stands at a path. */
function without(data: unknown, [key, ...deeper]: readonly unknown[]): unknown {
  if (Array.isArray(data)) return data.map((x, i) => (i === key ? without(x, deeper) : x));
  if (typeof data !== 'object' || data === null) return data;
  const all = Object.entries(data);
  if (deeper.length === 0) return Object.fromEntries(all.filter(([k]) => k !== key));
  return Object.fromEntries(all.map(([k, x]) => [k, k === key ? without(x, deeper) : x]));
}

/** What the schema found, in the words of a finding. */
function told(issue: Issue): Finding {
  const path = v.getDotPath(issue) ?? '(file)';
  if (isUnknown(issue)) return { path, found: texts.anUnknownKey, allowed: issue.message };
  if (issue.type === 'max_length') {
    const { length } = issue.input as { readonly length: number };
    return { path, found: `${length}`, allowed: issue.message };
  }
  const missing = issue.input === undefined;
  return {
    path,
    found: missing ? 'nothing' : shown(issue.input),
    allowed: missing ? texts.thisKeyIsNeeded : issue.message,
  };
}

export type Parsed<T> =
  | { readonly ok: true; readonly output: T }
  | { readonly ok: false; readonly findings: readonly Finding[] };

/** Data held against a schema: its value, or every finding at once. */
export function parseBy<T>(schema: v.GenericSchema<unknown, T>, data: unknown): Parsed<T> {
  const unknown: Issue[] = [];
  let parsed = v.safeParse(schema, data);
  // The schema tells one unknown key of an object and stops: it is taken out, and the next one told.
  for (let left = data; ; ) {
    const strangers = issuesOf(parsed).filter(isUnknown);
    if (strangers.length === 0 || unknown.length >= MANY) break;
    unknown.push(...strangers);
    for (const { path } of strangers) left = without(left, path?.map(({ key }) => key) ?? []);
    parsed = v.safeParse(schema, left);
  }
  const issues = [...unknown, ...issuesOf(parsed)];
  if (issues.length > 0 || !parsed.success) return { ok: false, findings: issues.map(told) };
  return { ok: true, output: parsed.output };
}
