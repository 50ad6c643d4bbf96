import {
  BAR,
  balance,
  createRig,
  freshState,
  gapsOf,
  nearestScene,
  type OwnKey,
  readSceneText,
  rest,
  type Scene,
  shoeFactor,
} from '../../../sim/index.ts';
import {
  judgeOwn,
  type OwnBrake,
  type OwnJudged,
  ownBrakes,
  soundScene,
  teachingScenes,
} from '../../own-brakes.ts';
import { PRESS_BAR, type Session } from '../../session.ts';
import { readQuantity } from '../../units.ts';

/** What the brake on the bench would do, new: told beside the fields. */
export interface Preview {
  readonly gap: number;
  /** NaN where it locks. */
  readonly factor: number;
  readonly drags: boolean;
}

export class OwnDesk {
  readonly session: Session;
  /** Drum as typed before a brake is made. */
  drumText = '';
  /** Teaching brake chosen to start from; null: the nearest. */
  chosen: number | null = null;
  asking = '';
  said = '';
  findings: readonly string[] = [];
  readonly teaching: readonly Scene[] = teachingScenes();
  #seen: { own: OwnBrake; judged: OwnJudged } | null = null;
  #preview: { brake: Session['brake']; told: Preview } | null = null;

  constructor(session: Session) {
    this.session = session;
  }

  /** One's own brake on the bench, if it is one. */
  get own(): OwnBrake | undefined {
    return ownBrakes.of(this.session.brake.name);
  }

  get judged(): OwnJudged | null {
    const { own } = this;
    if (!own) return null;
    if (this.#seen?.own !== own) this.#seen = { own, judged: judgeOwn(own) };
    return this.#seen.judged;
  }

  /** Teaching brake to start from: the one chosen, or the nearest to the typed drum. */
  get start(): number {
    if (this.chosen !== null) return this.chosen;
    const r = readQuantity(this.drumText, 'mm', [80, 500]);
    return r.ok ? nearestScene(this.teaching, r.value) : 0;
  }

  get preview(): Preview {
    const { brake } = this.session;
    if (this.#preview?.brake !== brake) {
      const rig = createRig(brake);
      const state = freshState(brake);
      const still = rest(rig, state);
      const pressed = balance(rig, state, { pressure: PRESS_BAR * BAR, turning: 1 });
      const gaps = (['front', 'rear'] as const).map((s) => gapsOf(brake.shoes[s], still.shoes[s]));
      const gap = gaps.reduce((sum, g) => sum + g.centre / 2, 0);
      const factor = shoeFactor(pressed, 'front') + shoeFactor(pressed, 'rear');
      const drags = gaps.some((g) => Math.min(g.toe, g.centre, g.heel) <= 0);
      this.#preview = { brake, told: { gap, factor, drags } };
    }
    return this.#preview.told;
  }

  tell(said: string, findings: readonly string[] = []): void {
    this.said = said;
    this.findings = findings;
    this.asking = '';
    this.session.changed();
  }

  /** Makes one's own brake. Gives the name to be put on the bench; null when the drum cannot be read. */
  make(): string | null {
    const base = this.teaching[this.start] as Scene;
    const text = this.drumText.trim();
    const r = text === '' ? null : readQuantity(text, 'mm', [80, 500]);
    if (r && !r.ok) {
      this.tell('Not made.', [`Drum Ø: found ${r.found}; allowed: ${r.allowed}`]);
      return null;
    }
    return ownBrakes.make(
      base,
      `My brake ${ownBrakes.list.length + 1}`,
      text ? { drumNew: text } : {},
    );
  }

  /** Keeps the text; a sound brake goes onto the bench at once, new. */
  write(own: OwnBrake, key: OwnKey, text: string): void {
    const judged = ownBrakes.write(own.name, key, text);
    if (judged?.scene) this.#refit(judged.scene);
    this.session.changed();
  }

  #refit(scene: Scene): void {
    const read = readSceneText(JSON.stringify(scene));
    if (read.ok) this.session.refit(read.brake, freshState(read.brake));
  }

  rename(own: OwnBrake, title: string): void {
    ownBrakes.rename(own.name, title);
    this.session.changed();
  }

  /** Reads a scene file; gives the name to be put on the bench, or null with findings told. */
  take(fileName: string, text: string): string | null {
    const read = readSceneText(text);
    if (!read.ok) {
      this.tell(
        `${fileName} was not taken; nothing else has changed.`,
        read.findings.map((f) => `${f.path}: found ${f.found}; allowed: ${f.allowed}`),
      );
      return null;
    }
    return ownBrakes.make(read.scene, read.scene.title);
  }

  /** The scene file of one's brake, as text. */
  fileOf(own: OwnBrake): string {
    return `${JSON.stringify(soundScene(own), null, 2)}\n`;
  }
}
