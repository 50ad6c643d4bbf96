import { KM, lipHeight, loadMeasured, measure } from '../../../sim/index.ts';
import {
  type AxleForecast,
  type AxleVerdict,
  axleForecast,
  filledText,
  judgeAxle,
  type Wheel,
} from '../../../sim/workshop/index.ts';
import { down } from '../../format.ts';
import type { Session } from '../../session.ts';
import { deskOf } from '../station.ts';
import { WearDesk } from '../wear-desk.ts';
import { type Line, lines } from './lines.ts';
import { type Paper, sheetOnBench, type WheelKey } from './paper.ts';
import { toReadings, type Understood, understand } from './read.ts';

/** What the station shows for this session: the open place, and what its buttons answered. */
export class InspectDesk {
  readonly session: Session;
  wheel: Wheel = 'left';
  /** Place in the list of lines. */
  line = 0;
  /** In-place question before the sheet is cleared. */
  asking = false;
  /** Answer of the last button, told in the page; and whether it is a finding. */
  said = '';
  findings: readonly string[] = [];
  #seen: { paper: Paper; brake: Session['brake']; read: Understood; verdict: AxleVerdict } | null =
    null;

  /** Wheel that the drawing showed before the sheet turned it; null once a wheel is loaded. */
  #drawn: Wheel | null = null;

  constructor(session: Session) {
    this.session = session;
  }

  enter(): void {
    this.#drawn = this.session.wheel;
    this.session.lookAt(this.wheel);
  }

  /** Turns the drawing back, unless it shows a wheel that was loaded. */
  leave(): void {
    if (this.#drawn) this.session.lookAt(this.#drawn);
  }

  get open(): Line {
    return lines[this.line] ?? (lines[0] as Line);
  }

  /** The sheet as read and judged; made anew when a text or the brake changes. */
  get judged(): { readonly read: Understood; readonly verdict: AxleVerdict } {
    const { paper } = sheetOnBench;
    const { brake } = this.session;
    if (this.#seen?.paper !== paper || this.#seen.brake !== brake) {
      const read = understand(paper, brake);
      const verdict = judgeAxle(read.found, read.limits, read.asNew);
      this.#seen = { paper, brake, read, verdict };
    }
    return this.#seen;
  }

  get forecast(): AxleForecast | null {
    const { read } = this.judged;
    if (read.distance === undefined) return null;
    return axleForecast(
      this.session.brake,
      read.found,
      read.limits,
      read.distance,
      read.drumFitted,
    );
  }

  select(wheel: Wheel, line: number): void {
    this.wheel = wheel;
    this.session.lookAt(wheel);
    this.line = Math.max(0, Math.min(lines.length - 1, line));
    this.session.changed();
  }

  tell(said: string, findings: readonly string[] = []): void {
    this.said = said;
    this.findings = findings;
    this.session.changed();
  }

  /** Makes the stage show the brake of the chosen wheel. */
  load(): void {
    const { read } = this.judged;
    if (read.wrong > 0) {
      this.tell('Not loaded: a place on the sheet cannot be read.', this.wrongPlaces());
      return;
    }
    const result = loadMeasured(this.session.rig, toReadings(read, this.wheel));
    if (!result.ok) {
      this.tell(
        'Not loaded. The sheet stays as it is.',
        result.findings.map((f) => `${placeName(f.path)}: found ${f.found}; allowed ${f.allowed}.`),
      );
      return;
    }
    this.#drawn = null;
    this.session.lookAt(this.wheel);
    this.session.load(result.state);
    this.tell(
      `The stage shows the ${this.wheel} wheel as measured, tooth ${result.state.tooth}. ${result.notes.map(filledText).join(' ')}`.trim(),
    );
  }

  /** Measures the brake on the bench and writes the sheet of the chosen wheel, for practice. */
  take(): void {
    const { session } = this;
    const m = measure(session.brake, session.state);
    // Never towards good: a lining is read down, a bore up.
    const mm = (value = 0): string => down(value, 2).toFixed(2);
    const bore = (value = 0): string => (-down(-value, 2)).toFixed(2);
    const lining = (which: 'lead' | 'trail') => {
      const l = m.lining[which === 'lead' ? 'front' : 'rear'];
      return {
        [`${which}Toe`]: mm(l?.toe),
        [`${which}Thin`]: mm(l?.thinnest),
        [`${which}Heel`]: mm(l?.heel),
      };
    };
    const [a, b, c] = m.drum;
    const { condition } = session.state;
    const fluid = m.greasy?.front === true || m.greasy?.rear === true;
    const texts: Partial<Record<WheelKey, string>> = {
      drumA: bore(a),
      drumB: bore(b),
      drumC: bore(c),
      drumDeep: bore(a),
      lip: lipHeight(session.rig, session.state).toFixed(2),
      ...lining('lead'),
      ...lining('trail'),
      tooth: String(m.tooth ?? 0),
      leverOff: String(m.leverOffStop ?? 0),
      faces: fluid ? 'bad' : 'good',
      boots: fluid ? 'bad' : 'good',
      springs: condition.springFactor < 1 ? 'bad' : 'good',
      adjuster: condition.adjusterSeized ? 'bad' : 'good',
    };
    const fitted = deskOf(WearDesk, session).firstRow?.drumRadius;
    sheetOnBench.fill(this.wheel, texts, {
      distance: String(Math.round((m.distance ?? 0) / KM)),
      drumFitted: fitted === undefined ? '' : bore(2 * fitted),
    });
    this.tell(
      `Taken from the brake on the bench to the ${this.wheel} wheel, as a gauge would read to 0.01 mm.`,
    );
  }

  clear(): void {
    sheetOnBench.clear();
    this.asking = false;
    this.tell('The sheet is clear.');
  }

  undo(): void {
    sheetOnBench.undo();
    this.tell('The sheet is back as it was.');
  }

  ask(asking: boolean): void {
    this.asking = asking;
    this.session.changed();
  }

  /** Every place that cannot be read: place, found, allowed. */
  wrongPlaces(): string[] {
    const { read } = this.judged;
    return (['left', 'right'] as const).flatMap((w) =>
      lines.flatMap((l) => {
        const r = l.kind === 'size' ? read.sizes[w][l.key] : null;
        return r && !r.ok ? [`${l.name}, ${w} wheel: found ${r.found}; allowed ${r.allowed}.`] : [];
      }),
    );
  }
}

/** A finding's path as the sheet names the place. */
function placeName(path: string): string {
  const of: Readonly<Record<string, string>> = {
    'drum.0': 'drumA',
    'drum.1': 'drumB',
    'drum.2': 'drumC',
    'lining.front.toe': 'leadToe',
    'lining.front.thinnest': 'leadThin',
    'lining.front.heel': 'leadHeel',
    'lining.rear.toe': 'trailToe',
    'lining.rear.thinnest': 'trailThin',
    'lining.rear.heel': 'trailHeel',
    tooth: 'tooth',
    leverOffStop: 'leverOff',
  };
  return lines.find((l) => l.key === of[path])?.name ?? path;
}
