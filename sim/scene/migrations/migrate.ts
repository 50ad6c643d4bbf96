import { sceneMigrationsMigrate as words } from '../../words/en.ts';
import type { Finding } from '../finding.ts';
import { from1 } from './from-1.ts';
import { isObject, type Json, type Migration } from './migration.ts';

/** From version 1 on, one a version; the last one leads to the present. */
const migrations: readonly Migration[] = [from1];

/** The present version of the format. */
export const VERSION = 2;

export interface Migrated {
  readonly scene: unknown;
  /** A finding's path as the file has it. */
  readonly was: (path: string) => string;
}

/**
 * Brings a file of any version to the present one. What is no scene, or of a version that is not
 * known, is left to the schema or told as a finding.
 */
export function migrate(data: unknown): Migrated | Finding {
  const same = (path: string): string => path;
  if (!isObject(data)) return { scene: data, was: same };
  const { version } = data;
  if (typeof version === 'number' && version > VERSION) {
    return {
      path: 'version',
      found: words.theFileWasMadeBy(version),
      allowed: words.of1To(VERSION),
    };
  }
  if (!Number.isInteger(version) || (version as number) < 1) return { scene: data, was: same };
  const steps = migrations.slice((version as number) - 1);
  const old = steps.reduce<Json>((scene, step) => step.up(scene), data);
  return {
    scene: { ...old, version: VERSION },
    was: (path) => steps.reduceRight((at, step) => step.was(at), path),
  };
}
