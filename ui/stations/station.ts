import type { CSSResult, TemplateResult } from 'lit';
import type { Instant, MotionPress, Point } from '../../sim/index.ts';
import type { Find } from '../pieces/cells.ts';
import type { PageSize } from '../pieces/page-sizes.ts';
import type { StationId } from '../record/moment.ts';
import type { LayerName, Session } from '../session.ts';
import type { Pointed } from '../stage/hit.ts';
import type { NumberedName } from '../stage/layers/names.ts';
import type { StageInput } from '../stage/scene.ts';
import type { Drawing, Label, Shape } from '../stage/shapes.ts';

export type { PageSize } from '../pieces/page-sizes.ts';

/** What a station may read when it draws its part of the page. */
export interface PageView {
  readonly session: Session;
  /** The moment that the stage shows. */
  readonly instant: Instant;
  /** A reading of that moment by its key. */
  readonly find: Find;
  readonly size: PageSize;
  /** All of it is shown, not what tells most alone. */
  readonly full: boolean;
}

/** Pointers on the stage that a station takes for itself. */
export interface Taker {
  /** So many at once. */
  readonly fingers: number;
  /**
   * @param at mm in the brake
   * @param part what lies there
   * @param finger 0 for the first of those that are taken, 1 for the second; when the first is lifted the second is it
   */
  down(session: Session, at: Point, part: Pointed | null, finger: number): boolean;
  move(session: Session, at: Point, finger: number): void;
  up(session: Session, finger: number): void;
}

/** The stage's size, px, and what is kept free at its foot. */
export interface StageSize {
  readonly width: number;
  readonly height: number;
  readonly foot: number;
  readonly size: PageSize;
}

/** A list of keys and what each does. */
export type KeyRows = readonly (readonly [keys: string, does: string])[];

/** A large button of the wall. */
export interface WallAction {
  readonly name: string;
  does(): void;
  /** It is held, and let go. */
  letGo?(): void;
  readonly off?: boolean;
}

/** Two figures side by side, under shoes that bend and under rigid ones. */
export interface Pair {
  readonly key: string;
  readonly name: string;
  readonly unit: string;
  readonly digits: number;
  readonly bend: number;
  readonly rigid: number;
}

/** One of the page's stations: what stands beside, under and over the stage while it is open. */
export interface Station {
  readonly id: StationId;
  /** Rules for what only this station shows; the page takes them on when it is first opened. */
  readonly styles?: CSSResult;
  /** What it does to the moving brake beside the pedal. */
  acts?(session: Session, press: MotionPress): MotionPress;
  /** The moving brake held against another way to its balance, relative; Balance from rest where left out. */
  agreement?(session: Session): number;
  /** Takes what a pointer presses, moves and lets go on the stage, px and mm; whether it has taken it. */
  readonly takes?: Taker;
  /** The moment as it is drawn, where the drawing makes more of it than there is. */
  drawn?(session: Session, instant: Instant): Instant;
  /** What there is more of than is shown at first, in words of a button; none where all is shown. */
  readonly few?: string;
  /** Has the pedal: space presses it, and the layers' row stands in the stage's foot. */
  readonly pedal?: boolean;
  /** Blocks beside the stage, from the top. */
  side(page: PageView): TemplateResult;
  /** Bottom right, always in reach; on the phone in the thumb's. */
  controls(page: PageView): TemplateResult;
  /** What it tells of shoes that bend beside rigid ones, before what every station does; asked while they bend. */
  pairs?(session: Session): readonly Pair[];
  /** A strip in the stage's foot in place of the layers' row: its heights in px, and what is in it. */
  readonly foot?: {
    readonly height: Readonly<Record<PageSize, number>>;
    strip(page: PageView): TemplateResult;
  };
  /** False: the phone shows no drawing while it is open. */
  readonly phoneStage?: false;
  /** Style that gives the drawing a part of the stage only, as `inset:…`; all of it when empty. */
  inset?(page: PageView): string;
  /** Share of the stage's width kept free of the brake at its right, for what is laid over it. */
  readonly beside?: Readonly<Partial<Record<PageSize, number>>>;
  /** What is laid over the stage beside the brake, in a word: on a small stage a button with it shows it instead of the brake. */
  readonly besideIs?: string;
  /** Line in the stage's upper left corner in place of the usual one. */
  caption?(session: Session): string;
  /** Groups of shapes, and first words of labels' keys, left out of the brake, such as a drum that is off. */
  without?(session: Session): readonly string[];
  /** Finer than `without`: is this shape or name of a part that is not there? */
  lacks?(session: Session): ((drawn: Shape | Label) => boolean) | null;
  /** Names of the roles on the stage, where they are not the usual ones. */
  readonly roles?: 'short' | 'none';
  /** Its stage names no parts of the brake: why, in a sentence or two. */
  readonly unnamed?: string;
  /** Names no parts but those that are told. */
  readonly namesOnly?: true;
  /** The same while something is asked: undefined where the usual ones stand. */
  rolesNow?(session: Session): 'none' | undefined;
  /** Keeps the readings to itself now: no row of layers, no table. */
  covers?(session: Session): boolean;
  /** A key of the page that the station takes: true where it did. */
  key?(session: Session, e: KeyboardEvent, target: Element): boolean;
  /** Pages for the browser's own print; none: the drawing and the readings. */
  paper?(page: PageView): readonly TemplateResult[];
  /** Laid over the stage. */
  over?(page: PageView): TemplateResult;
  /** The moment that the stage shows, where it is not the moving brake's. */
  shown?(session: Session): Instant | null;
  /** Draws the whole stage itself, from the lowest drawing to the topmost, px of the stage. */
  draws?(session: Session, stage: StageSize): readonly Drawing[];
  /** The only layers that its stage can show. */
  readonly layers?: readonly LayerName[];
  /** Shapes and labels drawn on the brake, over its own layers. */
  extra?(
    session: Session,
    input: StageInput,
  ): { readonly shapes: readonly Shape[]; readonly labels: readonly Label[] };
  /**
   * The wall's words in the station's own way, and what its keys do; null: in the usual one.
   *
   * @param wall parts that stand as numbers on the drawing; what opens and closes the card of keys
   */
  wallPage?(
    page: PageView,
    wall: { readonly names: readonly NumberedName[]; turnKeys(): void },
  ): { readonly side: TemplateResult; readonly keys: KeyRows } | null;
  /** Laid over the wall's drawing until the brake is asked for; null: nothing. */
  wallOver?(page: PageView): TemplateResult | null;
  /** For the wall of a classroom: the readings that count, by their keys, three at most; and one sentence. */
  readonly wall?: {
    readonly readings: readonly string[];
    says?(page: PageView): TemplateResult | string;
    /** One or two things to do, the next one first; of a station with a pedal: press, and turn round. */
    actions?(page: PageView): readonly WallAction[];
  };
}

const desks = new WeakMap<Session, Map<unknown, object>>();

/** What a station derives from a session's record: made when first asked for, gone with the session. It remembers nothing of its own. */
export function deskOf<D extends object>(Desk: new (session: Session) => D, session: Session): D {
  const all = desks.get(session) ?? new Map<unknown, object>();
  desks.set(session, all);
  const found = all.get(Desk) as D | undefined;
  if (found) return found;
  const made = new Desk(session);
  all.set(Desk, made);
  return made;
}
