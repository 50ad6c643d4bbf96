import type { Instant, Reading } from '../../sim/index.ts';
import type { Home } from '../record/home.ts';
import type { Layers } from '../record/view.ts';
import type { Session } from '../session.ts';
import type { Drawing } from '../stage/shapes.ts';
import type { PageSize, Station } from '../stations/station.ts';
import type { Theme } from '../theme.ts';
import type { Drawer } from './clip/frame.ts';

/** How the stage is drawn anew for something that leaves it; what is left out is as on the stage. */
export interface DrawAsk {
  /** px */
  readonly width?: number;
  readonly height?: number;
  /** px kept free at the foot; the stage's own where size is left out, and else none. */
  readonly foot?: number;
  readonly layers?: Partial<Layers>;
  readonly theme?: Theme;
  /** Times larger words and heavier lines, for a picture that is shown smaller than it is drawn. */
  readonly words?: number;
  /** The brake as large as the sheet has room, whatever the stage was zoomed to. */
  readonly whole?: boolean;
}

/** What stands on the bench when something is taken away, handed to every way. */
export interface Stand {
  readonly session: Session;
  readonly home: Home;
  readonly station: Station;
  readonly size: PageSize;
  /** The moment on the stage as the dialog was opened. */
  readonly instant: Instant;
  readonly readings: readonly Reading[];
  /** Readings that take many instants, by the headings under which the table of all readings has them. */
  more(): Promise<readonly { readonly title: string; readonly list: readonly Reading[] }[]>;
  /** The station keeps its readings to itself now: a question is open. */
  readonly covered: boolean;
  /** All drawings of the stage, from the lowest to the topmost, texts in their places; of that same moment. */
  draw(ask?: DrawAsk): readonly Drawing[];
  /** Draws the stage of a session of one's own. */
  readonly drawer: Drawer;
}

/**
 * An element that the dialog shows for a way, beside the list of ways or under it; the dialog scrolls. An event
 * `leave` (bubbling, composed) closes the dialog.
 */
export interface WayElement extends HTMLElement {
  stand: Stand;
}

/** One of the things that can be taken. */
export interface Way {
  readonly id: string;
  /** Key inside the dialog that opens it, one capital letter; none twice. */
  readonly key: string;
  readonly name: string;
  /** One line of what it is. */
  readonly tells: string;
  /** Loads and defines the element, once. */
  readonly load: () => Promise<unknown>;
  /** The element's name. */
  readonly element: `takeup-away-${string}`;
}
