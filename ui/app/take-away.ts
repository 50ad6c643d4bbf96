import type { TakeAway } from '../away/dialog.ts';
import type { DrawAsk, Stand } from '../away/stand.ts';
import '../away/dialog.ts';
import { wanted } from '../part.ts';
import type { Home } from '../record/home.ts';
import { WHOLE } from '../record/view.ts';
import { settle } from '../stage/settle.ts';
import type { Drawing } from '../stage/shapes.ts';
import type { PageView, Station } from '../stations/station.ts';
import { drawStage, type StageAt, takenAt } from './stage-drawing.ts';

/** Hands what stands on the bench to the dialog that takes it away. */

/** A sheet for a station that shows no drawing, px. */
const SHEET = { width: 1000, height: 860 };

/** What the page knows of itself when something is taken. */
export interface Taken {
  readonly page: PageView;
  readonly station: Station;
  readonly home: Home;
  readonly covered: boolean;
  /** What the stage is drawn from; null where the page shows none. */
  readonly at: StageAt | null;
}

function draw({ page, station, at: stage }: Taken, ask: DrawAsk): readonly Drawing[] {
  const { session, size, instant } = page;
  const bare: StageAt = { session, station, ...SHEET, foot: 0, size: 'middle', zoom: WHOLE };
  const base = stage && stage.width > 0 ? stage : { ...bare, size };
  const { width, height, foot, whole, ...rest } = ask;
  const own = width !== undefined || height !== undefined || foot !== undefined;
  const at: StageAt = {
    ...base,
    ...(own ? { width: width ?? base.width, height: height ?? base.height, foot: foot ?? 0 } : {}),
    ...(whole ? { zoom: WHOLE } : {}),
    ...rest,
    instant,
    // What lies over the stage on the page lies not over a sheet of its own.
    ...(own ? { bare: true } : {}),
  };
  return settle(drawStage(at).drawings, takenAt(at));
}

const standOf = (taken: Taken): Stand => {
  const { session, instant, size } = taken.page;
  return {
    session,
    home: taken.home,
    station: taken.station,
    size,
    instant,
    readings: session.told(instant),
    covered: taken.covered,
    more: async () => (await import('./more-readings.ts')).moreReadings(session, instant),
    draw: (ask = {}) => draw(taken, ask),
    drawer: {
      stage: (other, station, sheet) => {
        const at = { session: other, station, ...sheet, size: 'middle', zoom: WHOLE } as const;
        return drawStage({ ...at, bow: taken.at?.bow, bare: true }).drawings;
      },
      settle,
    },
  };
};

/**
 * Opens the dialog, which stands in the page from the first time on.
 *
 * @param now a figure with the last choices is saved at once, without a dialog of the page
 * @param way id of the way that is open in it; none: the one that was last taken
 */
export async function takeAway(
  page: DocumentFragment | HTMLElement,
  taken: Taken,
  now: boolean,
  way?: string,
): Promise<void> {
  const stand = standOf(taken);
  if (now) {
    const part = await wanted(taken.home, import('../away/figure/make.ts'));
    const said = await part?.saveFigure(stand);
    if (said) stand.session.say(said);
    return;
  }
  let dialog = page.querySelector<TakeAway>('takeup-away');
  if (!dialog) {
    dialog = document.createElement('takeup-away') as TakeAway;
    page.append(dialog);
  }
  await dialog.open(stand, way);
}
