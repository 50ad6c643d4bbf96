// Tasks shared out to as many processes as there are processors; each is this same file again, told to work.
import { type ChildProcess, fork } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';

/** In a process that was told to work: answers every task, or says what was thrown. */
export function work<Task, Answer>(does: (task: Task) => Answer | Promise<Answer>): void {
  process.on('message', async (task: Task) => {
    try {
      process.send?.({ answer: await does(task) });
    } catch (error) {
      process.send?.({ wrong: error instanceof Error ? error.message : String(error) });
    }
  });
}

/** @param file of the script, started anew with `work` as its argument */
export function shareOut<Task extends object, Answer>(
  file: string,
  tasks: readonly Task[],
  answered: (answer: { readonly answer: Answer } | { readonly wrong: string }, left: number) => void,
): Promise<void> {
  const queue = [...tasks];
  let left = queue.length;
  return new Promise((resolve, reject) => {
    if (left === 0) resolve();
    const children: ChildProcess[] = [];
    const next = (child: ChildProcess): void => {
      const task = queue.shift();
      if (task) child.send(task);
    };
    for (let i = 0; i < Math.min(availableParallelism(), tasks.length); i++) {
      const child = fork(fileURLToPath(file), ['work'], { execArgv: process.execArgv });
      children.push(child);
      child.on('message', (message) => {
        answered(message as { readonly answer: Answer } | { readonly wrong: string }, --left);
        if (left > 0) return next(child);
        for (const each of children) each.kill();
        resolve();
      });
      child.on('error', reject);
      next(child);
    }
  });
}
