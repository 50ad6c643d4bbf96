import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { OwnPhoto, PhotoPoint, Tap } from '../../../ui/record/own-photo.ts';

/**
 * Nine synthetic pictures of the teaching brakes (tests/reference/photo-cases.json): a pinhole camera with
 * its distortion, taps off by what fingers are off, parts off by what parts are off; the true places; and
 * what another program, in another language, came to by the same adjustment.
 */
type P = readonly [number, number];
export interface PhotoCase {
  readonly name: string;
  readonly scene: string;
  readonly mirrored: boolean;
  readonly picture: {
    readonly width: number;
    readonly height: number;
    readonly focalLength35: number | null;
  };
  readonly camera: {
    readonly focal: number;
    readonly principal: P;
    readonly tiltDeg: number;
    readonly position: readonly [number, number, number];
  };
  readonly known: {
    readonly liningDiameter: number;
    readonly plateDiameter: number | null;
    readonly clearance: number;
    readonly depth: Readonly<Record<'rim' | 'edge' | 'web' | 'lever' | 'hub', number>>;
  };
  readonly taps: {
    readonly liningEdgeFront: readonly P[];
    readonly liningEdgeRear: readonly P[];
    readonly plateRim?: readonly P[] | null;
    readonly hubCentre?: P | null;
    readonly points: Readonly<Record<string, P>>;
  };
  readonly depthOf: Readonly<Record<string, 'web' | 'edge' | 'lever'>>;
  readonly atRest: Readonly<Record<string, P>>;
  readonly inReferencePose: Readonly<Record<string, P>>;
  readonly shoeTurnRad: { readonly front: number; readonly rear: number };
  readonly twoPosesOfRim:
    | readonly { readonly centre: readonly number[]; readonly normal: readonly number[] }[]
    | null;
  readonly reference: {
    readonly focal: number;
    readonly chi2PerDof: number;
    readonly worstMm: number;
    readonly medianMm: number;
  };
  readonly tolerance: {
    readonly positionMm: number;
    readonly except?: readonly string[];
    readonly mirrorSuspects?: readonly [string, string];
  };
}

export const { cases } = JSON.parse(
  readFileSync(fileURLToPath(new URL('../../reference/photo-cases.json', import.meta.url)), 'utf8'),
) as { readonly cases: readonly PhotoCase[] };

/** The cases' names of what the page calls otherwise. */
const names: Readonly<Record<string, PhotoPoint>> = {
  spr0F: 'upperF',
  spr0R: 'upperR',
  spr1F: 'lowerF',
  spr1R: 'lowerR',
};
export const pointNamed = (name: string): PhotoPoint => names[name] ?? (name as PhotoPoint);
/** Lining ends are tapped as their edges. */
export const isEnd = (name: string): boolean => name.startsWith('lin');

const spread = <T>(list: readonly T[], n: number): T[] =>
  Array.from({ length: n }, (_, i) => list[Math.round((i * (list.length - 1)) / (n - 1))] as T);

/** A case's taps as the page asks for them: three on each lining, five on the rim. */
export function tapsOf(c: PhotoCase): OwnPhoto['taps'] {
  const { points } = c.taps;
  const taps: Partial<Record<PhotoPoint, Tap>> = {};
  const put = (prefix: string, list: readonly P[]): void => {
    list.forEach((tap, i) => {
      taps[`${prefix}${i + 1}` as PhotoPoint] = tap;
    });
  };
  // From the upper end on the leading lining, from the lower one on the trailing one.
  const middle = (list: readonly P[]): P => list[Math.floor(list.length / 2)] as P;
  put('edgeF', [points['linFA'] as P, middle(c.taps.liningEdgeFront), points['linFB'] as P]);
  put('edgeR', [points['linRA'] as P, middle(c.taps.liningEdgeRear), points['linRB'] as P]);
  if (c.taps.plateRim?.length) put('rim', spread(c.taps.plateRim, 5));
  if (c.taps.hubCentre) taps.hub = c.taps.hubCentre;
  for (const [name, tap] of Object.entries(points)) if (!isEnd(name)) taps[pointNamed(name)] = tap;
  return taps;
}
