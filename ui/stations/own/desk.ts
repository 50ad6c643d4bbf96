import {
  BAR,
  type Brake,
  balance,
  type Expected,
  expected,
  type FoundKey,
  firstClick,
  freshState,
  gapsOf,
  nearestScene,
  type OwnAnswers,
  type OwnFigures,
  type OwnKey,
  type OwnSizes,
  ownAnswers,
  ownFigures,
  ownScene,
  readSceneText,
  type Scene,
  shoeFactor,
  sizeAt,
  tellFinding,
  wearRatio,
} from '../../../sim/index.ts';
import { ownDesk as words } from '../../../sim/words/en.ts';
import { ownSays, ownWords, type Say } from '../../../sim/workshop/index.ts';
import { chooseBrake, PRESS_BAR } from '../../record/bench.ts';
import { isBending, ownOf, restOf, rigid, rigOfBrake, sceneOfOwn } from '../../record/derive.ts';
import { otherFile } from '../../record/file-kind.ts';
import { Kept, KeptFor } from '../../record/kept.ts';
import { Piecewise } from '../../record/piecewise.ts';
import type { OwnBrake, Shelf } from '../../record/shelf.ts';
import type { Session } from '../../session.ts';
import {
  ask,
  make,
  measure,
  type OwnPart,
  remove,
  rename,
  restore,
  startFrom,
  tell,
  typeDrum,
  write,
} from './part.ts';
import {
  type FoundRead,
  frictionBand,
  judgeOwn,
  type OwnJudged,
  readDrum,
  readFound,
  sizesOfTexts,
  teachingScenes,
} from './read.ts';

/** What the brake on the bench would do, new: told beside the fields. */
export interface Preview {
  readonly gap: number;
  /** NaN where it locks. */
  readonly factor: number;
  readonly drags: boolean;
}

/** Figures before and after a change. Clicks come later than the rest, null until then. */
export interface Turned {
  readonly before: OwnFigures;
  readonly after: OwnFigures;
  readonly clicks: readonly [before: number, after: number] | null;
}

/** What the size typed last changed; where shoes bend, with them. */
export interface Changed extends Turned {
  readonly key: OwnKey;
  /** What it was before, in the unit of its field, and whether that was measured. */
  readonly was: number;
  readonly measured: boolean;
  /** The same with rigid shoes; null where they do not bend. */
  readonly rigid: Turned | null;
}

/** Friction of one's brake with its band, and what the band does to factor and torque; null: it locks. */
export interface FrictionTold extends ReturnType<typeof frictionBand> {
  readonly value: number;
  readonly answers: Answers;
  /** The same with rigid shoes; null where they do not bend. */
  readonly rigid: Answers | null;
}

type Answers = readonly [OwnAnswers | null, OwnAnswers | null];

/** Of what shoes a figure is told. */
type Kind = 'bend' | 'rigid';
type Pair = readonly [OwnFigures | null, OwnFigures | null];

/** One's brake with other sizes, its places kept. */
const sceneWith = (own: OwnBrake, sizes: OwnSizes): Scene =>
  ownScene(own.base, sizes, ownWords(own.base, sizes, own), own.photo?.seen);

/** Name that no other brake has, in any browser or window: 64 random bits. */
const newName = (): string =>
  `own-${Array.from(crypto.getRandomValues(new Uint32Array(2)), (n) => n.toString(36)).join('')}`;

const previews = new KeptFor<Brake, Preview>();

function previewOf(brake: Brake): Preview {
  const rig = rigOfBrake(brake);
  const state = freshState(brake);
  const still = restOf(rig, state);
  const pressed = balance(rig, state, { pressure: PRESS_BAR * BAR, turning: 1 });
  const gaps = (['front', 'rear'] as const).map((s) => gapsOf(brake.shoes[s], still.shoes[s]));
  return {
    gap: gaps.reduce((sum, g) => sum + g.centre / 2, 0),
    factor: shoeFactor(pressed, 'front') + shoeFactor(pressed, 'rear'),
    drags: gaps.some((g) => Math.min(g.toe, g.centre, g.heel) <= 0),
  };
}

/** Brakes of one's own as the page shows them: read, judged, and what the buttons ask for. */
export class OwnDesk {
  readonly session: Session;
  readonly teaching: readonly Scene[] = teachingScenes();
  readonly #judged = new KeptFor<OwnBrake, OwnJudged>();
  readonly #friction = {
    bend: new KeptFor<OwnBrake, FrictionTold>(),
    rigid: new KeptFor<OwnBrake, FrictionTold>(),
  };
  readonly #found = new KeptFor<object, FoundRead>();
  readonly #expected = { bend: new Kept<Expected | null>(), rigid: new Kept<Expected | null>() };
  readonly #figures = { bend: new Kept<Pair>(), rigid: new Kept<Pair>() };
  readonly #clicks: Record<Kind, Piecewise<string, number>>;
  readonly #ratios: Record<Kind, Piecewise<Brake, number>>;

  constructor(session: Session) {
    this.session = session;
    const redraw = () => session.changed();
    this.#clicks = { bend: new Piecewise(redraw), rigid: new Piecewise(redraw) };
    this.#ratios = { bend: new Piecewise(redraw), rigid: new Piecewise(redraw) };
  }

  get #part(): OwnPart {
    return this.session.moment.parts.own;
  }
  get shelf(): Shelf {
    return this.session.moment.shelf;
  }
  get drumText(): string {
    return this.#part.drumText;
  }
  /** Was a teaching brake chosen to start from? */
  get hasChosen(): boolean {
    return this.#part.chosen !== null;
  }
  /** Name of the brake whose deletion is asked about. */
  get asking(): string | null {
    return this.#part.asking;
  }
  get said(): string {
    return this.#part.said;
  }
  get findings(): readonly string[] {
    return this.#part.findings;
  }

  /** One's own brake on the bench, if it is one. */
  get own(): OwnBrake | undefined {
    return ownOf(this.session.moment.bench.brake, this.shelf);
  }

  get judged(): OwnJudged | null {
    const { own } = this;
    return own ? this.#judged.of(own, () => judgeOwn(own, own.texts)) : null;
  }

  /** Teaching brake to start from: the one chosen, or the nearest to the typed drum. */
  get start(): number {
    const { chosen, drumText } = this.#part;
    const at = this.teaching.findIndex((s) => s.name === chosen);
    if (at >= 0) return at;
    const r = readDrum(drumText);
    return r?.ok ? nearestScene(this.teaching, r.value) : 0;
  }

  get preview(): Preview {
    const { brake } = this.session;
    return previews.of(brake, () => previewOf(brake));
  }
  /** The same with rigid shoes; null where they do not bend. */
  get rigidPreview(): Preview | null {
    const { brake } = this.session;
    const plain = rigid(brake);
    return isBending(brake) ? previews.of(plain, () => previewOf(plain)) : null;
  }

  /** Does the bench's brake bend? */
  get bends(): boolean {
    return isBending(this.session.brake);
  }

  /** What the size typed last changed on the brake on the bench; null where none was, or it changed nothing sound. */
  get changed(): Changed | null {
    const { own } = this;
    const { changed } = this.#part;
    if (!own || !changed || changed.name !== own.name) return null;
    const { key, before } = changed;
    if (before[key] === own.sizes[key]) return null;
    const scenes = [sceneWith(own, before), sceneOfOwn(own)] as const;
    const rigid = this.#turned(own, before, scenes, false);
    const told = this.bends ? this.#turned(own, before, scenes, true) : rigid;
    return (
      told && {
        ...told,
        key,
        was: sizeAt(scenes[0], key),
        measured: before[key] !== undefined,
        rigid: this.bends ? rigid : null,
      }
    );
  }

  #turned(
    own: OwnBrake,
    before: OwnSizes,
    scenes: readonly [Scene, Scene],
    flexible: boolean,
  ): Turned | null {
    const kind = flexible ? 'bend' : 'rigid';
    const [was, now] = this.#figures[kind].of([own, before], () => [
      ownFigures(scenes[0], PRESS_BAR, flexible),
      ownFigures(scenes[1], PRESS_BAR, flexible),
    ]);
    if (!was || !now) return null;
    const { results } = this.#clicks[kind].of(JSON.stringify([own.name, before, own.sizes]), () =>
      scenes.map((scene) => () => firstClick(scene, flexible) ?? Number.NaN),
    );
    const [first, second] = results;
    return {
      before: was,
      after: now,
      clicks: first === undefined || second === undefined ? null : [first, second],
    };
  }

  /** Friction with its band, of the last sound sizes. */
  frictionOf(own: OwnBrake): FrictionTold {
    const { bends } = this;
    return this.#friction[bends ? 'bend' : 'rigid'].of(own, () => {
      const value = sizeAt(sceneOfOwn(own), 'friction');
      const band = frictionBand(own.texts.friction ?? '', value);
      const at = (friction: number, flexible: boolean): OwnAnswers | null =>
        ownAnswers(sceneWith(own, { ...own.sizes, friction }), PRESS_BAR, flexible);
      const both = (flexible: boolean): Answers => [
        at(band.least, flexible),
        at(band.most, flexible),
      ];
      return { ...band, value, answers: both(bends), rigid: bends ? both(false) : null };
    });
  }

  /** What was measured of it as it is now, read. */
  foundOf(own: OwnBrake): FoundRead {
    return this.#found.of(own.found ?? own, () => readFound(own.found ?? {}));
  }

  /**
   * What the measured figures say, as far as it is worked out, and whether more is coming; where shoes bend, what
   * rigid ones would say beside, null where they do not.
   */
  get says(): {
    readonly told: readonly Say[];
    readonly rigid: readonly Say[] | null;
    readonly working: boolean;
  } {
    const { brake } = this.session;
    const plain = this.#saysOf(rigid(brake), 'rigid');
    if (!isBending(brake)) return { ...plain, rigid: null };
    const bent = this.#saysOf(brake, 'bend');
    return { told: bent.told, rigid: plain.told, working: bent.working || plain.working };
  }

  #saysOf(brake: Brake, kind: Kind): { readonly told: readonly Say[]; readonly working: boolean } {
    const { own } = this;
    if (!own?.found) return { told: [], working: false };
    const rig = rigOfBrake(brake);
    const { found } = this.foundOf(own);
    const e = this.#expected[kind].of([rig, found], () => expected(rig, found));
    // How unlike both linings wear takes a drive: only where both were measured.
    const both = found.leading !== undefined && found.trailing !== undefined;
    const { results, working } = both
      ? this.#ratios[kind].of(brake, () => [() => wearRatio(rig)])
      : { results: [], working: false };
    return {
      told: ownSays(brake, own.sizes, found, e, results[0] ?? null),
      working,
    };
  }

  measure(own: OwnBrake, key: FoundKey, text: string): void {
    this.session.do(measure, own.name, key, text);
  }

  typeDrum(text: string): void {
    this.session.do(typeDrum, text);
  }
  startFrom(name: string): void {
    this.session.do(startFrom, name);
  }

  /** What a button answers; it is no step of its own. */
  tell(said: string, findings: readonly string[] = []): void {
    this.session.amend(tell, said, findings);
  }

  /** Makes one's own brake of the drum typed; tells what is wrong with that. */
  make(): void {
    const r = readDrum(this.drumText);
    if (r && !r.ok) {
      this.tell(words.notMade, [words.drumDiameterFoundAllowed(r.found, r.allowed)]);
      return;
    }
    const base = this.teaching[this.start] as Scene;
    const title = words.title(this.shelf.brakes.length + 1);
    const texts = r ? { drumNew: this.drumText.trim() } : {};
    const name = newName();
    const sizes = sizesOfTexts({ name, title, base }, texts) ?? {};
    this.session.do(make, name, base, title, texts, sizes);
  }

  /** Keeps the text; a sound brake goes onto the bench at once, new. */
  write({ name }: OwnBrake, key: OwnKey, text: string): void {
    // As it stands now: another field may have been typed since the page was drawn.
    const own = this.session.moment.shelf.brakes.find((b) => b.name === name);
    if (!own) return;
    const sizes = sizesOfTexts(own, { ...own.texts, [key]: text });
    this.session.do(write, own.name, key, text, sizes);
  }

  choose(own: OwnBrake): void {
    this.session.do(chooseBrake, { kind: 'own', name: own.name });
  }
  rename(own: OwnBrake, title: string): void {
    this.session.do(rename, own.name, title);
  }
  ask(name: string | null): void {
    this.session.do(ask, name);
  }
  remove(own: OwnBrake): void {
    this.session.do(remove, own.name);
  }
  restore(): void {
    this.session.do(restore);
  }

  /** Makes one's own brake of a scene file; tells what is wrong with one that cannot be read. */
  take(fileName: string, text: string): void {
    const other = otherFile(text, 'brake');
    if (other) {
      this.tell(words.wasNotTakenNothingElse(fileName, other), []);
      return;
    }
    const read = readSceneText(text);
    if (!read.ok) {
      this.tell(words.wasNotTakenNothingElse2(fileName), read.findings.map(tellFinding));
      return;
    }
    this.session.do(make, newName(), read.scene, read.scene.title, {}, {});
  }

  /** The scene file of one's brake, as text. */
  fileOf(own: OwnBrake): string {
    return `${JSON.stringify(sceneOfOwn(own), null, 2)}\n`;
  }
}
