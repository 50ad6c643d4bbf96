import { questions } from '../../questions/index.ts';
import type { Question } from '../../questions/types.ts';
import type { Session } from '../../session.ts';
import { DrumDesk } from '../drum-off/desk.ts';
import { FaultsDesk } from '../faults/desk.ts';
import { VAN_TITLE, vanRig, vanState } from '../faults/van.ts';
import { ShoeDesk, type ShoeStep } from '../new-shoes/desk.ts';
import { deskOf } from '../station.ts';

/** Tells the page to open a station: the event's detail is its id. */
export const OPEN = 'open-station';

/** What is searched for, and the question whose answer is being shown. */
export class QuestionsDesk {
  search = '';
  asked: Question | null = null;
  rev = 0;
  readonly #session: Session;

  constructor(session: Session) {
    this.#session = session;
  }

  #tell(): void {
    this.rev += 1;
    this.#session.changed();
  }

  look(text: string): void {
    this.search = text;
    this.#tell();
  }

  /** Questions in which every word searched for begins a word. */
  get found(): readonly Question[] {
    const words = this.search.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
    return questions.filter((q) => {
      const text = ` ${q.group} ${q.ask} ${q.answer} ${q.steps}`
        .toLowerCase()
        .replace(/[^\p{L}\p{N}]+/gu, ' ');
      return words.every((w) => text.includes(` ${w}`));
    });
  }

  /** Sets the bench as the answer needs it and opens its station. */
  show(q: Question): void {
    const session = this.#session;
    const { setup } = q;
    if (!q.station) return;
    this.asked = q;
    if (setup.state) {
      if (session.brake.states.some((s) => s.name === setup.state)) session.standing(setup.state);
      else session.refit(vanRig().brake, vanState(setup.state), VAN_TITLE);
    }
    session.dispatchEvent(new CustomEvent(OPEN, { detail: q.station }));
    if (setup.fault || setup.van) {
      const faults = deskOf(FaultsDesk, session);
      faults.show(setup.van ? 'find' : 'browse');
      if (setup.van) faults.bring(setup.van);
      else if (setup.fault) faults.choose(setup.fault);
    }
    if (setup.shoes) {
      fitUpTo(deskOf(ShoeDesk, session), setup.shoes.step, setup.shoes.tooth);
    }
    if (setup.drum) {
      const drum = deskOf(DrumDesk, session);
      drum.hold({ liningsRusted: false, ...setup.drum.held });
      if (setup.drum.page) drum.open(setup.drum.page);
    }
    for (const layer of setup.layers ?? []) if (!session.layers[layer]) session.toggle(layer);
    session.turn(setup.turning ?? 1);
    if (setup.bar) session.pressTo(setup.bar);
    this.#tell();
  }

  /** Back to the list. */
  back(): void {
    this.asked = null;
    this.#session.dispatchEvent(new CustomEvent(OPEN, { detail: 'questions' }));
    this.#tell();
  }

  close(): void {
    this.asked = null;
    this.#tell();
  }
}

/** The steps of New shoes before the wanted one, done. */
function fitUpTo(shoes: ShoeDesk, step: ShoeStep, tooth = 0): void {
  shoes.restart();
  if (step > 2) {
    shoes.go(2);
    shoes.setTooth(tooth);
  }
  if (step > 3) {
    shoes.go(3);
    shoes.centre();
  }
  if (step > 5) {
    shoes.go(5);
    shoes.tryDrum();
    shoes.press('silent');
  }
  shoes.go(step);
}
