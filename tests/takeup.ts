import { main } from '../ui/command/main.ts';

/** What a call of the command line gave. */
export interface Answer {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** The command in this process, with what it tells. */
export async function takeup(...args: string[]): Promise<Answer> {
  let out = '';
  let err = '';
  const code = await main(
    args,
    (text) => {
      out += `${text}\n`;
    },
    (text) => {
      err += `${text}\n`;
    },
  );
  return { code, out, err };
}
