import {
  KM,
  lipHeight,
  loadMeasured,
  measure,
  type OwnSizes,
  type Wheel,
} from '../../../sim/index.ts';
import { inspectDesk as words } from '../../../sim/words/en.ts';
import {
  type AxleForecast,
  type AxleVerdict,
  axleForecast,
  filledText,
  judgeAxle,
  type LimitKey,
  type LimitSet,
  limitSets,
} from '../../../sim/workshop/index.ts';
import { down } from '../../format.ts';
import { ownOf } from '../../record/derive.ts';
import { show } from '../../record/guest.ts';
import { Kept } from '../../record/kept.ts';
import type { Session } from '../../session.ts';
import { type AskLine, type AxleKey, type HeadKey, type Line, lines } from './lines.ts';
import { type Paper, typedIn, type WheelKey } from './paper.ts';
import {
  ask,
  bringBack,
  chooseLimits,
  choosePlain,
  clear,
  fill,
  type InspectPart,
  load,
  select,
  tell,
  write,
  writeAxle,
  writeHead,
  writeLimit,
} from './part.ts';
import { placeOf, readAt, toReadings, type Understood, understand } from './read.ts';

interface Judged {
  readonly read: Understood;
  readonly verdict: AxleVerdict;
}

/** The sheet of the session's record as the station shows it: read, judged, forecast. */
export class InspectDesk {
  readonly session: Session;
  readonly #judged = new Kept<Judged>();
  readonly #forecast = new Kept<AxleForecast | null>();

  constructor(session: Session) {
    this.session = session;
  }

  get #part(): InspectPart {
    return this.session.moment.parts.inspect;
  }
  get paper(): Paper {
    return this.#part.paper;
  }
  get wheel(): Wheel {
    return this.#part.wheel;
  }
  /** Place in the list of lines. */
  get line(): number {
    return this.#part.line;
  }
  get open(): Line {
    return lines[this.line] ?? (lines[0] as Line);
  }
  get asking(): boolean {
    return this.#part.asking;
  }
  get said(): string {
    return this.#part.said;
  }
  get findings(): readonly string[] {
    return this.#part.findings;
  }
  get blank(): boolean {
    return !typedIn(this.paper);
  }
  /** Is there a sheet from before that can be brought back? */
  get canBringBack(): boolean {
    return this.#part.before !== null;
  }

  /** What was typed of the brake on the bench; null where it is none of one's own. */
  get #own(): OwnSizes | null {
    const { bench, shelf } = this.session.moment;
    return ownOf(bench.brake, shelf)?.sizes ?? null;
  }

  /** Limits to choose from, and the chosen ones. */
  get limitSets(): readonly LimitSet[] {
    return limitSets(this.session.brake, this.#own);
  }
  get limitSet(): LimitSet {
    const sets = this.limitSets;
    return sets.find((s) => s.id === this.paper.limitsFrom) ?? (sets[0] as LimitSet);
  }

  /** The sheet as read and judged; made anew when a text or the brake changes. */
  get judged(): Judged {
    const { paper } = this;
    const { brake } = this.session;
    const own = this.#own;
    return this.#judged.of([paper, brake, own], () => {
      const read = understand(paper, brake, own);
      return { read, verdict: judgeAxle(read.found, read.limits, read.asNew) };
    });
  }

  get forecast(): AxleForecast | null {
    const { read } = this.judged;
    const { distance } = read;
    const { brake } = this.session;
    return this.#forecast.of([read, brake], () =>
      distance === undefined
        ? null
        : axleForecast(brake, read.found, read.limits, distance, read.fitted),
    );
  }

  write(wheel: Wheel, key: WheelKey, text: string): void {
    this.session.do(write, wheel, key, text);
  }
  writeAxle(key: AxleKey, text: string): void {
    this.session.do(writeAxle, key, text);
  }
  writeHead(key: HeadKey, text: string): void {
    this.session.do(writeHead, key, text);
  }
  writeLimit(key: LimitKey, text: string): void {
    this.session.do(writeLimit, key, text);
  }
  chooseLimits(id: LimitSet['id']): void {
    this.session.do(chooseLimits, id);
  }
  /** What is asked once for both wheels, as it is typed. */
  writeAsked(line: AskLine, text: string): void {
    if (line.key === 'drumNew') this.writeAxle(line.key, text);
    else this.writeLimit(line.key, text);
  }
  choosePlain(plain: 'mm' | 'in'): void {
    this.session.do(choosePlain, plain);
  }

  select(wheel: Wheel, line: number): void {
    this.session.do(select, wheel, line);
  }
  /** The field that the cursor went to opens its place: going there is nothing to be undone. */
  focus(wheel: Wheel, line: number): void {
    this.session.amend(select, wheel, line);
  }

  /** Nothing came of a button: that is told, and is no step of its own. */
  #tell(said: string, findings: readonly string[]): void {
    this.session.amend(tell, said, findings);
  }

  /** Goes to where a brake with the sheet's own drum is made. */
  toOwn(): void {
    this.session.do(show, 'own');
  }

  /** Makes the stage show the brake of the chosen wheel. */
  load(): void {
    const { read } = this.judged;
    if (read.wrong > 0) {
      this.#tell(words.notLoadedAPlaceOn, this.wrongPlaces());
      return;
    }
    // Where nothing is measured, all of the brake would be loaded as new.
    if (Object.keys(read.found[this.wheel].sizes).length === 0) {
      this.#tell(words.notLoadedNothingIsMeasured(this.wheel), []);
      return;
    }
    const result = loadMeasured(this.session.rig, toReadings(read, this.wheel));
    if (!result.ok) {
      this.#tell(words.notLoadedTheSheetStays, [
        ...result.findings.map((f) => words.foundAllowed(placeName(f.path), f.found, f.allowed)),
        ...(result.findings.some((f) => f.path.startsWith('drum.'))
          ? [words.theBrakeOnTheBench]
          : []),
      ]);
      return;
    }
    const { wheel } = this;
    const said = words
      .theStageShowsTheWheel(wheel, result.state.tooth, result.notes.map(filledText).join(' '))
      .trim();
    this.session.do(load, wheel, result.state, said);
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
    session.do(fill, this.wheel, texts, {
      distance: String(Math.round((m.distance ?? 0) / KM)),
      drumFitted: bore(2 * session.moment.bench.life.start.drumRadius),
      drumNew: mm(2 * session.brake.drum.radiusNew),
    });
  }

  clear(): void {
    this.session.do(clear);
  }
  bringBack(): void {
    this.session.do(bringBack);
  }
  ask(asking: boolean): void {
    this.session.do(ask, asking);
  }

  /** Every place that cannot be read: place, found, allowed. */
  wrongPlaces(): string[] {
    const { read } = this.judged;
    return (['left', 'right'] as const).flatMap((w) =>
      lines.flatMap((l) => {
        // What is asked once is told once.
        const r = l.kind === 'ask' && w === 'right' ? null : readAt(read, l, w);
        return r && !r.ok ? [words.foundAllowed2(placeOf(l, w), r.found, r.allowed)] : [];
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
