/** One name of a list of exports: what it is called where it stands, and what by those who take it. */
export interface Name {
  readonly own: string;
  readonly as: string;
  readonly isType: boolean;
  /** File that it is taken from, as it is named there. */
  readonly from: string;
}

/** `export { type A, b as c } from './file.ts'` and `export type { A } from './file.ts'`. */
const EXPORT = /export (type )?\{([^}]*)\} from '([^']+)'/g;

/** The names of a file that only hands on what others have. */
export const namesIn = (text: string): Name[] =>
  [...text.matchAll(EXPORT)].flatMap(([, all, list, from]) =>
    (list as string)
      .split(',')
      .map((one) => one.trim())
      .filter((one) => one !== '')
      .map((one): Name => {
        const isType = all !== undefined || one.startsWith('type ');
        const [own, as] = one.replace(/^type /, '').split(' as ') as [string, string?];
        return { own, as: as ?? own, isType, from: from as string };
      }),
  );

/**
 * The public file with each name from where it stands, instead of by way of the mechanics' door, behind which there is
 * more than is public.
 *
 * @throws Error for a name that the door does not have
 */
export function pastTheDoor(open: string, door: string): string {
  const known = new Map(namesIn(door).map((name) => [name.as, name]));
  return open.replace(EXPORT, (whole, _type, _list, from: string) => {
    if (from !== './index.ts') return whole;
    return namesIn(whole)
      .map(({ own, as }) => {
        const name = known.get(own);
        if (!name) throw new Error(`The mechanics' door has no ${own}`);
        const said = name.own === as ? as : `${name.own} as ${as}`;
        return `export ${name.isType ? 'type ' : ''}{ ${said} } from '${name.from}'`;
      })
      .join(';\n');
  });
}
