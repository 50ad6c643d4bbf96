import { register } from 'tsx/esm/api';

/** A worker does not have its command's reader of TypeScript: it takes one of its own, then begins. */
register();
await import('./job-worker.ts');
