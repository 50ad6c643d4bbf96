import { type CSSResult, html, LitElement, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { type Instant, readingOf } from '../../sim/index.ts';
import { wordsOf } from '../adjusters.ts';
import { number } from '../format.ts';
import { Fullness, SingleKeys, storeOf } from '../full.ts';
import { slower } from '../pace.ts';
import { Part, wanted } from '../part.ts';
import { type BrakeRef, chooseBrake } from '../record/bench.ts';
import { dialsOn, hasDials } from '../record/dials.ts';
import { backToMine, show } from '../record/guest.ts';
import { benchTitle } from '../record/guest-title.ts';
import { handsIn, letGoHand } from '../record/hands.ts';
import { Home, type Opening } from '../record/home.ts';
import { type StationId, stationNames } from '../record/moment.ts';
import { type LayerName, PRESS_BAR, Session } from '../session.ts';
import './stage-view.ts';
import { away, icons, lens, mark } from '../pieces/icons.ts';
import { NARROW_STAGE, pageSize, roomForBrakes, roomForTabs } from '../pieces/page-sizes.ts';
import type { PartId } from '../stage/part-names.ts';
import type { StageInput } from '../stage/scene.ts';
import type { Drawing } from '../stage/shapes.ts';
import { type Entry, handsEntry, stationOf, stations } from '../stations/index.ts';
import type { PageSize, PageView, Station } from '../stations/station.ts';
import { type ThemeName, themeCss, themes } from '../theme.ts';
import { Announcer } from './announcer.ts';
import type { BenchSheet } from './bench-sheet.ts';
import { brakeOfKey, brakeOptions } from './brake-options.ts';
import { caseBar } from './case-bar.ts';
import { followDevice } from './device-theme.ts';
import { edgeBox, edgeCard, edgeStyles } from './edge-card.ts';
import { guestBar, guestStyles } from './guest-bar.ts';
import type { KeysSheet } from './keys-sheet.ts';
import { layerNames } from './layer-names.ts';
import { footOf } from './layout.ts';
import type { ReadingsTable } from './readings-table.ts';
import type { StageView } from './stage-view.ts';
import { bring, bringRest, ready } from './waiting.ts';
import './pedal.ts';
import { labelWords, appTakeupApp as texts } from '../../sim/words/en.ts';
import { printDone, printMoment } from './print-page.ts';
import { FocusMover, keepsSpace } from './space-key.ts';
import { styles } from './styles.ts';
import { troubleBar, troubleStyles } from './trouble-bar.ts';
import { undoButton, undone, undoStyles } from './undo-bar.ts';

type Drawn = Pick<Drawing, 'shapes' | 'labels'>;

/** What was scrolled before a reload is waited for so many frames. */
const SCROLL_FRAMES = 300;
/** Readings are put on the page at most this often, ms; where pictures are far apart half as often. */
const READ_EVERY = 90;
/** Pictures further apart than this, ms, are a slow machine's: at 60 a second they are 17. */
const SLOW = 24;
/** A slow machine leaves the brake out of a picture at most this often, ms. */
const LEAVES_OUT = 200;
/** So many layers are in the row at first: gap fan, comb, forces, names. */
const FEW_LAYERS = 4;
/** Height of what tells how far the shoes part, px. */
const PRESS_HIGH = { wide: 104, middle: 88, narrow: 112 } as const;
/** Height of the counter's card, px. */
const CARD_HEIGHT = 84;
/** How far a counter of many words stands out from the loupe's rim, px. */
const LONG_CARD = 100;

/** Only wires: stations, stage, keys and the frame loop around one session. */
export class TakeupApp extends LitElement {
  static override styles = [styles, edgeStyles, guestStyles, undoStyles, troubleStyles];
  readonly session: Session;
  readonly home: Home;
  readonly full = new Fullness(storeOf());
  readonly singleKeys = new SingleKeys(storeOf());
  #instant: Instant;
  #readAt = 0;
  #before = 0;
  #frame = 0;
  #agreement = 0;
  #moves = false;
  /** A newer page that is offered. */
  #newer: TemplateResult | typeof nothing = nothing;
  #spaceHeld = false;
  readonly #mover = new FocusMover();
  /** What tells of shoes that bend. */
  readonly #bending = new Part(
    async () => (await import('./bending.ts')).shoesThatBend,
    ({ styles }) => this.#dress([styles]),
  );
  /** Names, kept moments and what else a class asks for beside the brake. */
  readonly #kit = new Part(
    async () => (await import('./class-kit.ts')).classKit,
    ({ styles, WordsHere }) => {
      this.#dress(styles);
      this.#words = new WordsHere(() => this.requestUpdate());
      this.#written.bring().catch(() => undefined);
    },
  );
  #words: import('./words-here.ts').WordsHere | null = null;
  /** What takes files that are let go over the page. */
  readonly #drops = new Part(
    async () => {
      const { DropHint } = await import('./drop.ts');
      return new DropHint(this.session, this.home);
    },
    (hint) => this.renderRoot.append(hint),
  );
  /** What stands beside the stage while a lesson is being written. */
  readonly #written = new Part(
    async () => (await import('../stations/lessons/write.ts')).writingBeside,
    () => this.requestUpdate(),
  );
  /** Dials on the stage. */
  readonly #dials = new Part(
    async () => (await import('./dials/index.ts')).dials,
    ({ styles }) => this.#dress([styles]),
  );
  /** What the wall has beside the drawing. */
  readonly #wall = new Part(
    async () => {
      const { Wall } = await import('./wall.ts');
      this.#dress([Wall.styles]);
      return new Wall(this.session, () => this.requestUpdate());
    },
    () => this.requestUpdate(),
  );
  /** What those who hear the page are told now. */
  #told = '';
  readonly #announcer: Announcer;
  /** On a small stage: what stands beside the brake is shown instead of it. */
  #beside = false;
  #dressed: ThemeName | '' = '';
  readonly #colours = new CSSStyleSheet();
  readonly #scrolled: Readonly<Record<string, number>>;
  /** The page's own title; before it goes the station's, by which windows and steps back are told apart. */
  readonly #title = document.title;

  /** @param opened what the page begins with */
  constructor(opened: Opening) {
    super();
    this.session = new Session(
      opened.history,
      matchMedia('(prefers-reduced-motion: reduce)').matches,
    );
    if (opened.linked) this.session.put(opened.linked, texts.linkOpened);
    this.session.watches = () => this.#seesMoving;
    this.session.acts = (press) => this.#station().acts?.(this.session, press) ?? press;
    for (const told of [this.session, this.full])
      told.addEventListener('change', () => {
        this.#readAt = 0;
        this.#isReady = false;
      });
    followDevice(this.session, opened.linked !== null, storeOf());
    this.home = new Home(this.session, opened, () => this.#scrolls());
    this.#scrolled = opened.scroll;
    this.#instant = this.#seen();
    this.#announcer = new Announcer(this.#happens);
  }

  /** What may be told to those who hear the page. */
  get #happens() {
    const { pedal, events, paceNow, station } = this.session;
    return { pedal, events, paceNow, place: stationNames[station] };
  }

  #station(): Station {
    const { moment, station } = this.session;
    const entry = handsIn(moment) ? handsEntry : stationOf(station);
    return ready(entry, () => this.session.changed());
  }

  /** The moving brake is on the stage, not a moment of the station's own. */
  get #seesMoving(): boolean {
    const station = this.#station();
    if (pageSize() === 'narrow' && station.phoneStage === false) return false;
    return (station.shown?.(this.session) ?? null) === null;
  }

  /** Rules of stations that were opened. */
  readonly #taken = new Set<unknown>();

  /** Takes on the rules that a station brings along. */
  #wear({ styles }: Station): void {
    if (!styles?.styleSheet || this.#taken.has(styles)) return;
    this.#taken.add(styles);
    this.shadowRoot?.adoptedStyleSheets.push(styles.styleSheet);
  }

  #show(station: Entry): void {
    this.#beside = false;
    this.session.do(show, station.id);
  }

  /** Opens Ask with its field ready to be typed into. */
  async #ask(): Promise<void> {
    this.#show(stationOf('ask'));
    await bring(stationOf('ask'));
    this.requestUpdate();
    await this.updateComplete;
    const field = this.renderRoot.querySelector<HTMLInputElement>('#ask-field');
    field?.focus();
    // What was asked before is there to be read, and gives way to what is typed.
    field?.select();
  }

  /** Puts another brake on the bench, new, with the looks and the station kept. */
  #choose(key: string): void {
    const brake: BrakeRef | null = brakeOfKey(key);
    if (brake) this.session.do(chooseBrake, brake);
  }

  /** What scrolls, by name: the page itself and what stands beside and over the stage. */
  #scrollers(): Readonly<Record<string, Element | null>> {
    const find = (selector: string) => this.renderRoot.querySelector(selector);
    const { station } = this.session;
    return {
      page: document.scrollingElement,
      [`${station} side`]: find('.side'),
      [`${station} list`]: find(
        'takeup-questions, takeup-ask, takeup-said, takeup-kind, .startover',
      ),
      // A sheet and My brake scroll inside themselves.
      [`${station} sheet`]:
        find('takeup-inspect, takeup-own')?.shadowRoot?.querySelector('.scroll') ?? null,
    };
  }

  #scrolls(): Readonly<Record<string, number>> {
    const all = Object.entries(this.#scrollers());
    return Object.fromEntries(all.map(([name, e]) => [name, e?.scrollTop ?? 0]));
  }

  /** As it was scrolled before a reload, once there is something to scroll. */
  protected override async firstUpdated(): Promise<void> {
    await this.updateComplete;
    // A station that reads sizes is there only when its reader is: what is not there yet is waited for.
    const left = new Map(Object.entries(this.#scrolled).filter(([, at]) => at > 0));
    for (let n = 0; n < SCROLL_FRAMES && left.size > 0; n++) {
      await new Promise(requestAnimationFrame);
      for (const [name, e] of Object.entries(this.#scrollers())) {
        const at = left.get(name);
        if (!e || at === undefined || e.scrollHeight - e.clientHeight < at - 1) continue;
        e.scrollTop = at;
        left.delete(name);
      }
    }
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.shadowRoot?.adoptedStyleSheets.push(this.#colours);
    this.home.start();
    this.#mover.connect();
    window.addEventListener('pointerup', this.#pointerUp);
    window.addEventListener('keydown', this.#enough, true);
    window.addEventListener('pointerdown', this.#enough, true);
    window.addEventListener('keydown', this.#key);
    for (const kind of ['keydown', 'click']) window.addEventListener(kind, this.#noteFocus, true);
    window.addEventListener('keyup', this.#keyUp);
    window.addEventListener('blur', this.#blur);
    window.addEventListener('beforeprint', this.#print);
    window.addEventListener('afterprint', printDone);
    for (const kind of ['dragover', 'drop'] as const) window.addEventListener(kind, this.#early);
    this.#frame = requestAnimationFrame(this.#tick);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#mover.disconnect();
    window.removeEventListener('keydown', this.#enough, true);
    window.removeEventListener('pointerdown', this.#enough, true);
    window.removeEventListener('keydown', this.#key);
    for (const kind of ['keydown', 'click'])
      window.removeEventListener(kind, this.#noteFocus, true);
    window.removeEventListener('keyup', this.#keyUp);
    window.removeEventListener('blur', this.#blur);
    window.removeEventListener('pointerup', this.#pointerUp);
    window.removeEventListener('beforeprint', this.#print);
    window.removeEventListener('afterprint', printDone);
    for (const kind of ['dragover', 'drop'] as const) window.removeEventListener(kind, this.#early);
    this.home.stop();
    cancelAnimationFrame(this.#frame);
  }

  /** Any key and any tap ends what is shown slowly. */
  #enough = (e: Event): void => {
    if (!(e instanceof KeyboardEvent && e.repeat)) this.session.skipShow();
  };

  /** A drag ends with the finger: the next one is a step of its own. */
  #pointerUp = (): void => this.session.close();

  #print = (): void => {
    printMoment(this.#page(pageSize()), this.#station(), this.#stage()?.drawings ?? []);
  };

  /** Where the pedal was when its move was last answered, bar, and when, ms. */
  #answered = { pedal: 0, at: Number.NEGATIVE_INFINITY };

  /**
   * A slow machine shows first what answers whoever moved the pedal (pedal.ts), in a picture of its own; the brake,
   * and all that is told of it, follow in the next. The brake's time is none the less for it.
   */
  #answersFirst(now: number): boolean {
    const { pedal } = this.session;
    if (pedal === this.#answered.pedal) return false;
    const { at } = this.#answered;
    this.#answered = { pedal, at };
    if (now - this.#before < SLOW || now - at < LEAVES_OUT) return false;
    this.#answered = { pedal, at: now };
    return true;
  }

  #tick = (now: number): void => {
    if (this.#answersFirst(now)) {
      this.#frame = requestAnimationFrame(this.#tick);
      return;
    }
    const slow = this.#before > 0 && now - this.#before > SLOW;
    this.#before = now;
    if (!this.#isReady) this.#step(now);
    this.#stage()?.draw(now, slow, this.#isReady);
    this.#isReady = false;
    // A station that shows no drawing on a phone has no brake to wait for.
    const drawn = pageSize() !== 'narrow' || this.#station().phoneStage !== false;
    if (!this.#moves && (this.#stage()?.painter || !drawn)) this.#begin();
    // On a slow machine tasks of their own: a key that has come meanwhile is heard before them. But of a press that is
    // shown words and sound go with the picture: the number counts with the hit.
    const later = slow && !this.session.showing;
    if (now - this.#readAt >= (slow ? 2 : 1) * READ_EVERY) {
      this.#readAt = now;
      if (later) setTimeout(this.#read, 0, now);
      else this.#read(now);
    }
    if (later) setTimeout(this.#getReady, 0);
    this.#frame = requestAnimationFrame(this.#tick);
  };

  /** When the brake was last let go on, ms. */
  #stepped = 0;
  /** The next picture is stepped and made ready; not any more, once somebody has changed something. */
  #isReady = false;

  #step(now: number): void {
    const gap = this.#stepped ? Math.max(0, now - this.#stepped) : 0;
    this.#stepped = now;
    this.session.frame(Math.min(0.1, gap / 1000));
  }

  /** The half of the next picture that can be done before the screen asks for it. */
  #getReady = (): void => {
    if (!this.isConnected || this.session.showing) return;
    this.#step(performance.now());
    this.#stage()?.ready();
    this.#isReady = true;
  };

  /** What the page says beside the stage. */
  #read = (now: number): void => {
    if (!this.isConnected) return;
    this.#bend(now);
    if (dialsOn(this.session.moment)) this.#dials.need(this.#fails);
    if (
      this.session.layers.names ||
      this.session.layers.polygons ||
      this.session.moment.parts.compare.kept
    )
      this.#kit.need(this.#fails);
    if (this.session.moment.parts.lessons.draft !== null) this.#written.need(this.#fails);
    this.#instant = this.#seen();
    this.#told = this.#announcer.hear(now / 1000, this.#happens);
    this.#agreement =
      this.#station().agreement?.(this.session) ?? this.session.agreement(this.session.instant());
    this.requestUpdate();
  };

  /** The brake is there and moves: what may be wanted next comes while nobody waits for it. */
  #begin(): void {
    this.#moves = true;
    performance.mark('takeup moves');
    this.#stage()?.bringCard();
    bringRest()
      .then(async () => {
        this.#kit.bring().catch(() => undefined);
        await this.#drops.bring();
        const { keepOffline } = await import('./offline.ts');
        await keepOffline((newer) => {
          this.#newer = newer;
          this.requestUpdate();
        });
      })
      .catch(() => undefined);
  }

  /** Shoes that bend, or are to bend, or no longer: their linings are seen to. */
  #bend(now: number): void {
    const { session } = this;
    if (!session.bending && !session.bends) return;
    this.#bending.there?.lookAfter(session, now);
    this.#bending.need(this.#fails);
  }

  /** A file that is let go before what takes it has come: else the browser would show it in the page's place. */
  readonly #early = (e: DragEvent): void => {
    if (this.#drops.there || !e.dataTransfer?.types.includes('Files')) return;
    e.preventDefault();
    const files = e.type === 'drop' ? [...e.dataTransfer.files] : [];
    if (files.length > 0) wanted(this.home, this.#drops.bring()).then((hint) => hint?.take(files));
  };

  readonly #fails = (trouble: string): void => this.home.tell(trouble);

  /** How parts look that have come later. */
  #dress(styles: readonly CSSResult[]): void {
    for (const { styleSheet } of styles)
      if (styleSheet) this.shadowRoot?.adoptedStyleSheets.push(styleSheet);
    this.requestUpdate();
  }

  /** The kit for what somebody has just asked for. */
  async #withKit(then: (kit: typeof import('./class-kit.ts').classKit) => void): Promise<void> {
    const kit = await wanted(this.home, this.#kit.bring());
    if (kit) then(kit);
  }

  /** A part was tapped that may be the one that is asked for. */
  readonly #part = (e: CustomEvent<PartId>): void =>
    this.#kit.there?.answer(this.session, e.detail);

  /** What is drawn over the brake by what is loaded later. */
  readonly #bow = (session: Session, input: StageInput): Drawn | null => {
    const bow = this.#bending.there?.bow(session, input) ?? null;
    const under = this.#kit.there ? this.#kit.there.over(session, input, bow) : bow;
    return this.#dials.there ? this.#dials.there.over(session, input, under) : under;
  };

  /** The moment on the stage: the station's own, or that of the moving brake. */
  #seen(): Instant {
    return this.#station().shown?.(this.session) ?? this.session.instant();
  }

  /** Keys of the whole page; a focused control keeps its own. */
  #key = (e: KeyboardEvent): void => {
    const target = e.composedPath()[0] as HTMLElement;
    if ((e.ctrlKey || e.metaKey) && !e.altKey) {
      this.#walkKey(e);
      return;
    }
    if (e.altKey || this.singleKeys.mutes(e)) return;
    const { session } = this;
    // What lies over the page goes first.
    if (session.wall && this.#wall.there?.first(e)) {
      e.preventDefault();
      return;
    }
    const called = stations.find((s) => s.key === e.key);
    if (this.#station().key?.(this.session, e, target)) {
      e.preventDefault();
      return;
    }
    if (session.wall && this.#wall.there?.key(e, target, this.#page(pageSize()), this.#station())) {
      e.preventDefault();
      return;
    }
    // A field keeps its keys; a list those that could find an entry. An open sheet keeps its own.
    if (e.key === ' ') {
      this.#spaceDown(e, target);
      return;
    }
    if (target.closest('input, textarea, dialog[open]')) return;
    const list = target.closest('select');
    const sought = (o: HTMLOptionElement) => o.label.trim().startsWith(e.key);
    if (list && (!called || [...list.options].some(sought))) return;
    if (called?.id === 'ask') this.#ask();
    else if (called) this.#show(called);
    else if (e.key === '.') session.oneStep();
    else if (e.key === ',') session.stepBack();
    else if (e.key === 'r') session.back.turn();
    else if (e.key === 'c') session.back.lastClick();
    else if (e.key === '[') session.goAt(slower(session.pace, 1));
    else if (e.key === ']') session.goAt(slower(session.pace, -1));
    else if (e.key === 'Escape' && session.back.look) session.back.end();
    else if ('hn'.includes(e.key) && this.#station().unnamed)
      session.say(this.#station().unnamed ?? '');
    else if (e.key === 'h') session.hideNames(session.revealed === null);
    else if (e.key === 'n') this.#kit.there?.revealNext(session, this.#stage()?.names ?? []);
    else if (e.key === 'd') this.#withKit(() => this.#words?.turn());
    else if (e.key === 'g') this.#withKit((kit) => kit.keepNow(session));
    else if (e.key === 't' && !this.#covered) this.#openTable();
    else if (e.key === 'e' || e.key === 'E') this.#takeAway(e.shiftKey);
    else if (e.key === 'q' && session.wall && session.moment.parts.lessons.keys) this.#showCode();
    else if (e.key === '?') this.#openKeys();
    else if (e.key === 'm') this.full.turn();
    else if (e.key === 'b') session.toggleBending();
    else if (e.key === 'p' && !this.#station().draws) session.toggle('polygons');
    else if (e.key === 'u' && hasDials(session.moment)) session.toggle('dials');
    else if (e.key === 'w' && pageSize() !== 'narrow') session.showOnWall(!session.wall);
    else if (e.key === 'Escape' && session.moment.hands.hold) session.do(letGoHand);
    else if (e.key === 'Escape' && session.wall) session.showOnWall(false);
    else if (e.key === 'Escape' && session.moment.guest) session.do(backToMine);
    else if (e.key === 'f') this.#fullScreen();
    else if (e.key === '+' || e.key === '=') this.#stage()?.zoom(1.25);
    else if (e.key === '-') this.#stage()?.zoom(1 / 1.25);
    else if (e.key === '0') this.#stage()?.zoom(0);
    else return;
    e.preventDefault();
  };

  /** Space is the pedal, save where what has the focus keeps it. */
  #spaceDown(e: KeyboardEvent, target: Element): void {
    const { pedal } = this.#station();
    if (keepsSpace(target, pedal === true, this.#mover.byPointer)) return;
    if (!this.#spaceHeld && pedal) this.session.pressTo(PRESS_BAR);
    this.#spaceHeld = true;
    e.preventDefault();
  }

  /** Undo and redo, in a field too: what was typed is in the record. */
  #walkKey(e: KeyboardEvent): void {
    const key = e.key.toLowerCase();
    if (key === 'z' && e.shiftKey) this.session.redo();
    else if (key === 'z') this.session.undo();
    else if (key === 'y') this.session.redo();
    else return;
    e.preventDefault();
  }

  #fullScreen(): void {
    // A browser may refuse it (in a frame, by policy): the page then stays as large as it is.
    if (document.fullscreenElement) document.exitFullscreen().catch(() => undefined);
    else document.documentElement.requestFullscreen().catch(() => undefined);
  }

  #keyUp = (e: KeyboardEvent): void => {
    if (e.key !== ' ' || !this.#spaceHeld) return;
    this.#spaceHeld = false;
    this.session.release();
    // Some browsers press a focused button only now.
    e.preventDefault();
  };

  /** A key let go in another window must not leave the pedal down. */
  #blur = (): void => {
    if (!this.#spaceHeld) return;
    this.#spaceHeld = false;
    this.session.release();
  };

  /** The station keeps its readings to itself now. */
  get #covered(): boolean {
    return this.#station().covers?.(this.session) === true;
  }

  #stage(): StageView | null {
    return this.renderRoot.querySelector<StageView>('takeup-stage');
  }

  async #openTable(): Promise<void> {
    if (!(await wanted(this.home, import('./readings-table.ts')))) return;
    const table = this.renderRoot.querySelector<ReadingsTable>('takeup-readings');
    await table?.updateComplete;
    table?.open();
  }

  async #openKeys(): Promise<void> {
    if (!(await wanted(this.home, import('./keys-sheet.ts')))) return;
    const sheet = this.renderRoot.querySelector<KeysSheet>('takeup-keys');
    await sheet?.updateComplete;
    sheet?.open();
  }

  /** What stands on the bench leaves it: loaded when it is first asked for. */
  async #takeAway(now = false, way?: string): Promise<void> {
    const part = await wanted(this.home, import('./take-away.ts'));
    const [page, station, at] = [
      this.#page(pageSize()),
      this.#station(),
      this.#stage()?.at ?? null,
    ];
    part?.takeAway(
      this.renderRoot,
      { page, station, at, home: this.home, covered: this.#covered },
      now,
      way,
    );
  }

  /** On the wall: the moment as a code for phones. */
  async #showCode(): Promise<void> {
    const part = await wanted(this.home, import('./wall-code.ts'));
    await part?.showCode(this.renderRoot, this.session);
  }

  /** The Bench sheet comes when it is first opened, or while nobody waits for it. */
  async #openSheet(): Promise<void> {
    if (!(await wanted(this.home, import('./bench-sheet.ts')))) return;
    const sheet = this.renderRoot.querySelector<BenchSheet>('takeup-bench-sheet');
    await sheet?.updateComplete;
    sheet?.open();
  }

  /** What sticks above the controls must know their height. */
  readonly #controls = new ResizeObserver(([entry]) => {
    const controls = entry?.target as HTMLElement | undefined;
    controls?.parentElement?.style.setProperty(
      '--ctl',
      `${Math.max(0, controls.offsetHeight - 2)}px`,
    );
  });
  #watched: Element | null = null;

  #watchControls(): void {
    const controls = this.renderRoot.querySelector('.side > .ctl');
    if (controls === this.#watched) return;
    this.#controls.disconnect();
    this.#watched = controls;
    if (controls) this.#controls.observe(controls);
    else this.renderRoot.querySelector<HTMLElement>('.side')?.style.removeProperty('--ctl');
  }

  /** The station that was open when the focus was last looked after. */
  #cameTo: StationId | null = null;
  /** What last had the focus. */
  #focused: Element | null = null;
  /** Asked before each key and click does something: between two drawings the focus may have come and gone. */
  #noteFocus = (): void => {
    let deep = this.shadowRoot?.activeElement ?? null;
    while (deep?.shadowRoot?.activeElement) deep = deep.shadowRoot.activeElement;
    this.#focused = deep;
  };

  /**
   * Whoever opens a station by a key, or by what goes away with the last one, stands nowhere: the focus goes to the
   * page's main part, which is called like the station. So it is heard, and Tab goes on from there.
   */
  #lookAfterFocus(): void {
    const { station } = this.session;
    const came = this.#cameTo !== null && this.#cameTo !== station;
    const lost = this.#focused !== null && !this.#focused.isConnected;
    this.#cameTo = station;
    const active = this.shadowRoot?.activeElement ?? null;
    const nowhere = active === null && document.activeElement === document.body;
    if (nowhere && (came || lost)) {
      this.#focused = null;
      this.renderRoot.querySelector<HTMLElement>('main')?.focus({ preventScroll: true });
      if (came) this.#announcer.arrived(stationNames[station]);
    }
  }

  protected override updated(): void {
    this.#watchControls();
    this.#lookAfterFocus();
    const { theme, station } = this.session;
    document.title = `${stationNames[station]} – ${this.#title}`;
    if (theme === this.#dressed) return;
    this.#dressed = theme;
    this.#colours.replaceSync(themeCss(themes[theme], ':host'));
  }

  #top(size: PageSize) {
    const { session } = this;
    const open = stationOf(this.session.station);
    const at = (id: StationId) => open.id === id;
    const onBench = session.guest ?? benchTitle(session.moment);
    const view = texts.view(session.theme === 'sheet' ? texts.sheet : texts.board);
    const tab = (s: Entry) =>
      html`<button class=${open === s ? 'on' : ''} aria-current=${open === s ? 'page' : nothing} @click=${() => this.#show(s)}><i>${s.key}</i>${stationNames[s.id]}</button>`;
    return html`<header class="top"><div class="brand">${mark}<span>${texts.takeup}</span></div>
      ${
        size === 'narrow' || !roomForTabs()
          ? html`<select class="where" aria-label=${texts.station} @change=${(e: Event) => this.#show(stationOf((e.target as HTMLSelectElement).value))}>${stations.map((s) => html`<option value=${s.id} .selected=${live(open === s)}>${stationNames[s.id]}</option>`)}</select>`
          : html`<nav class="tabs" aria-label=${texts.stations}>${stations.filter((s) => !s.noTab).map(tab)}</nav>`
      }
      <div class="util">
        ${undoButton(session, size)}
        ${
          size === 'wide' || (size === 'middle' && roomForBrakes())
            ? html`<label class="brake" title=${texts.brakeOnTheBench(onBench)}><span class="name">${texts.brake}</span><select aria-label=${texts.brake} @change=${(e: Event) => this.#choose((e.target as HTMLSelectElement).value)}>${brakeOptions(session)}</select></label>`
            : size === 'narrow'
              ? nothing
              : html`<span class="onbench" title=${texts.brakeOnTheBench(onBench)}>${onBench}</span>`
        }
        ${
          size === 'narrow'
            ? nothing
            : html`<button aria-haspopup="dialog" ?disabled=${this.#covered} @click=${() => this.#openTable()}>${texts.table}</button>${size === 'wide' ? html`<button aria-label=${view} title=${view} @click=${() => session.look(session.theme === 'sheet' ? 'board' : 'sheet')}><span class="word">${texts.view2} </span>${session.theme === 'sheet' ? texts.sheet : texts.board}</button>` : nothing}`
        }
        ${size === 'narrow' ? nothing : html`<button data-to="start" class=${at('start') ? 'on' : ''} aria-current=${at('start') ? 'page' : nothing} @click=${() => this.#show(stationOf('start'))}>${texts.start}</button>`}
        ${size === 'wide' ? html`<button data-to="lessons" class=${at('lessons') ? 'on' : ''} aria-current=${at('lessons') ? 'page' : nothing} @click=${() => this.#show(stationOf('lessons'))}>${texts.lessons}</button>` : nothing}<button data-to="ask" class="asks ${at('ask') ? 'on' : ''}" aria-label=${texts.ask} aria-current=${at('ask') ? 'page' : nothing} @click=${() => this.#ask()}>${lens}${size === 'narrow' ? nothing : texts.ask}</button>
        ${size === 'narrow' ? nothing : html`<button class="asks" aria-haspopup="dialog" aria-label=${texts.takeAway} title=${texts.takeAwayE} @click=${() => this.#takeAway()}>${away}</button>`}<button aria-haspopup="dialog" @click=${() => this.#openSheet()}>${size === 'narrow' ? texts.show : texts.bench}</button>
      </div></header>
      <takeup-bench-sheet .session=${session} .home=${this.home} .size=${size} .shows=${this.#station().layers} .rev=${session.revision} @choose=${(e: CustomEvent<string>) => this.#choose(e.detail)} @table=${() => this.#openTable()} @keys=${() => this.#openKeys()} @away=${() => this.#takeAway()} @words=${() => this.#withKit(() => this.#words?.turn())}></takeup-bench-sheet>
      <takeup-keys .single=${this.singleKeys}></takeup-keys>
      <takeup-readings .session=${session} .instant=${this.#instant} .kept=${this.#kit.there?.keptReadings(session) ?? null} .rigid=${this.#bending.there?.rigidReadings(session, this.#instant) ?? null}></takeup-readings>`;
  }

  #layers() {
    const { session } = this;
    const { layers } = this.#station();
    // The row is full: dials and polygons have buttons beside the stage.
    const whole = layerNames(session).filter(
      ([name]) => name !== 'dials' && name !== 'polygons' && (layers?.includes(name) ?? true),
    );
    if (layers?.length === 0) return nothing;
    const { full } = this.full;
    const all = full ? whole : whole.filter(([name], i) => i < FEW_LAYERS || session.layers[name]);
    const on = all.filter(([name]) => session.layers[name]).map(([, text]) => text);
    if (session.bending) on.push(texts.shoesThatBendB);
    return html`<div class="show" role="group" aria-label=${texts.show}>${all.map(([name, text]) => html`<button class=${session.layers[name] ? 'on' : ''} aria-pressed=${session.layers[name]} aria-label=${text} @click=${() => session.toggle(name)}>${icons[name]}<span>${text}</span></button>`)}
      ${full ? (this.#station().draws ? nothing : this.#kit.there?.keepButton(session)) : html`<button class="more" title=${texts.allLayersReadingsAndSteps} @click=${() => this.full.turn()}>${texts.more}</button>`}
      <div class="says">${texts.on(on.join(', ') || texts.nothingWord)}</div></div>`;
  }

  #card() {
    const { session } = this;
    if (!session.layers.loupe) return nothing;
    const flash = session.clock - session.clickedAt < 0.24;
    // Of a press that is shown the tooth counts with the hit.
    const { tooth } = session.showing ? session.shown : this.#instant;
    const words = wordsOf(session.brake);
    const { head, value, after } = words.counter(session.brake.adjuster, tooth);
    return html`<div class="card ${flash && words.timbre ? 'flash' : ''}" .style=${this.#cardPlace()}><b>${head}</b><strong data-tooth=${tooth}>${value}</strong>${after}</div>`;
  }

  #edge() {
    const { session } = this;
    if (!session.layers.edge) return nothing;
    // Asked of a page that has just been written to, its boxes are laid out once more.
    const box = this.#stage()?.getBoundingClientRect();
    if (!box) return nothing;
    const place = edgeBox(box.width, box.height, this.#foot(pageSize()));
    return edgeCard(session, this.#instant, place);
  }

  /** The counter sits at the loupe's rim, clear of the teeth. */
  #cardPlace(): string {
    const stage = this.#stage();
    const at = stage?.cardAt;
    if (!stage || !at) return '';
    const box = stage.getBoundingClientRect();
    if (box.width < NARROW_STAGE)
      return `right:10px;top:${(box.height - this.#foot(pageSize()) - 96).toFixed(0)}px`;
    const right = this.session.wheel === 'right';
    // On a low stage it reaches up into the loupe rather than down over the chart.
    const lowest = box.height - this.#foot(pageSize()) - CARD_HEIGHT;
    const top = `top:${Math.min(at[1] + 8, lowest).toFixed(0)}px`;
    if (wordsOf(this.session.brake).longCounter)
      return right
        ? `left:${(at[0] - LONG_CARD).toFixed(0)}px;${top}`
        : `right:${(box.width - at[0] - LONG_CARD).toFixed(0)}px;${top}`;
    return right
      ? `right:${(box.width - at[0] - 18).toFixed(0)}px;${top}`
      : `left:${(at[0] - 18).toFixed(0)}px;${top}`;
  }

  #foot(size: PageSize): number {
    const foot = footOf(this.#station(), size, this.session.wall);
    return this.#tellsPress && !this.#station().foot ? foot + PRESS_HIGH[size] : foot;
  }

  /** How far the shoes part is told: of a press that is shown, and where one looks at a tooth while pressing. */
  get #tellsPress(): boolean {
    const { session } = this;
    if (session.wall || this.#covered || !wordsOf(session.brake).timbre) return false;
    return session.showing || (this.#station().pedal === true && session.layers.loupe);
  }

  /** Under the brake, or in the place of what stands in the stage's foot. */
  #pressPanel(size: PageSize) {
    if (!this.#tellsPress) return nothing;
    const { foot } = this.#station();
    const bottom = footOf({ foot: undefined }, size, false) - (foot && size === 'wide' ? 60 : 0);
    const height = foot ? foot.height[size] : PRESS_HIGH[size];
    return html`<takeup-press size=${size} ?roomy=${foot !== undefined} .session=${this.session} .style=${`bottom:${bottom}px;height:${height}px`}></takeup-press>`;
  }

  /** All of it, or what tells most: where a station has both. */
  #moreOrLess({ few }: Station) {
    if (!few) return nothing;
    const { full } = this.full;
    return html`<button class="btn moreless" data-more aria-expanded=${full} @click=${() => this.full.turn()}>${full ? texts.less : few}<kbd aria-hidden="true">m</kbd></button>`;
  }

  /** Switches dials and force polygons: where one tries what a press does, and wherever they are on. */
  #extras(station: Station) {
    const { session } = this;
    const { moment, layers } = session;
    const shown = (name: LayerName): boolean => session.station === 'apply' || layers[name];
    const turn = (name: LayerName, text: string, key: string) =>
      html`<button class="btn moreless" data-layer=${name} aria-pressed=${layers[name]} @click=${() => session.toggle(name)}>${text}<kbd aria-hidden="true">${key}</kbd></button>`;
    const dials = hasDials(moment) && shown('dials');
    const bodies = !station.draws && shown('polygons');
    if (!dials && !bodies) return nothing;
    return html`<div class="extras">${dials ? turn('dials', labelWords.dials, 'u') : nothing}${bodies ? turn('polygons', labelWords.polygons, 'p') : nothing}</div>`;
  }

  /** What the station lays over the stage: beside the brake, or on a small stage over all of it, when asked for. */
  #over(page: PageView, station: Station) {
    const over = station.over?.(page) ?? nothing;
    if (!station.besideIs || !this.#stage()?.small) return over;
    const turn = () => {
      this.#beside = !this.#beside;
      this.requestUpdate();
    };
    return html`<div class="one ${this.#beside ? 'laid' : ''}" .style=${`--foot:${this.#foot(page.size)}px`}>
      <button class="turn" aria-pressed=${this.#beside} @click=${turn}>${this.#beside ? texts.brake : station.besideIs}</button>
      <div>${over}</div></div>`;
  }

  /** Half drawing, half words, for the last row of a classroom. */
  #onWall(page: PageView, station: Station) {
    const { session } = this;
    this.#wall.need(() => this.requestUpdate());
    const stage = this.#stage();
    const bending = this.#bending.there?.besideOnWall(session, this.#instant) ?? '';
    return html`<main class="wall ${session.moment.parts.lessons.blank ? 'blank' : ''}" data-station=${session.station} tabindex="-1" aria-label=${stationNames[session.station]}>
        <section class="stage" aria-label=${texts.brakeDrawing}>
          <takeup-stage class="drawn" .session=${session} .station=${station} .foot=${0} .bow=${this.#bow} @part=${this.#part}></takeup-stage>${this.#wall.there?.over(page, station)}
        </section>
        ${this.#wall.there?.side(page, station, stage?.numbered ? stage.names : [], bending) ?? html`<section><p class="missed" role="alert">${this.#wall.trouble}</p></section>`}
      </main>
      <div class="hidden" role="status" data-told>${this.#told}</div>`;
  }

  #page(size: PageSize): PageView {
    const list = this.session.readings(this.#instant);
    const find = (key: string) => readingOf(list, key);
    return {
      session: this.session,
      instant: this.#instant,
      find,
      size,
      full: this.full.full,
    };
  }

  override render() {
    const { session } = this;
    const size = pageSize();
    const station = this.#station();
    this.#wear(station);
    const page = this.#page(size);
    const strip = station.foot;
    if (session.wall) return this.#onWall(page, station);
    const [guest, carried] = [guestBar(session), caseBar(session)];
    const bar =
      guest !== nothing && carried !== nothing
        ? html`<div class="bars">${guest}${carried}</div>`
        : guest !== nothing
          ? guest
          : carried;
    return html`${this.#top(size)}${troubleBar(this.home)}${this.#newer}
      <main class="work ${bar === nothing ? '' : 'answers'}" data-station=${session.station} tabindex="-1" aria-label=${stationNames[session.station]} @table=${() => this.#openTable()} @bench=${() => this.#openSheet()} @words=${() => this.#withKit(() => this.#words?.turn(true))} @away=${(e: CustomEvent<string>) => this.#takeAway(false, e.detail)}>
        ${bar}
        <section class="stage" aria-label=${texts.brakeDrawing} ?hidden=${size === 'narrow' && station.phoneStage === false} .style=${size === 'narrow' && strip ? `height:${410 + strip.height.narrow}px` : ''}>
          <takeup-stage class="drawn" .style=${station.inset?.(page) ?? ''} .session=${session} .station=${station} .foot=${this.#foot(size)} .bow=${this.#bow} @part=${this.#part}></takeup-stage>
          ${this.#card()}
          ${this.#edge()}
          ${this.#over(page, station)}
          ${this.#pressPanel(size)}
          ${undone(session, this.#foot(size))}
          ${!this.#covered && (size === 'middle' || (size === 'wide' && !strip)) ? this.#layers() : nothing}
          ${strip ? html`<div class="strip" .style=${`height:${strip.height[size]}px`}>${strip.strip(page)}</div>` : nothing}
        </section>
        <aside class="side">
          ${session.layers.names ? this.#kit.there?.names(session, this.#stage(), size, station.unnamed) : nothing}
          ${session.moment.parts.lessons.draft === null ? nothing : this.#written.there?.(session)}
          ${this.#dials.there?.beside(session)}
          ${this.#kit.there?.forcesBeside(session, this.#instant)}
          ${this.#kit.there?.keptBeside(session, this.#instant, station)}
          ${this.#bending.there?.beside(session, this.#instant, station)}
          ${station.side(page)}${this.#moreOrLess(station)}${this.#extras(station)}
          ${station.controls(page)}
        </aside>
      </main>
      ${this.#words?.card(this.renderRoot)}
      <div class="hidden" role="status" data-told>${this.#told}</div>
      <div class="hidden" data-check=${this.#agreement.toExponential(1)}>${texts.twoWaysToTheSame(number(100 * this.#agreement, 2))}</div>`;
  }
}
customElements.define('takeup-app', TakeupApp);
