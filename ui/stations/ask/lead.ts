import type { Leads } from '../../ask/types.ts';
import { openLesson } from '../../lessons/wants.ts';
import { notLoaded } from '../../part.ts';
import { show } from '../../record/guest.ts';
import { layersOf } from '../../record/parts.ts';
import { toggleLayer } from '../../record/view.ts';
import type { Session } from '../../session.ts';
import { chooseFault } from '../faults/part.ts';
import { openOrder } from '../order/wants.ts';
import { showQuestion } from '../questions/part.ts';
import { openTopic, type Topic } from '../see/part.ts';
import { carryFigures } from './wants.ts';

/** Goes where an entry leads. Gives true where it is the page that opens it: a dialog or a list of its own. */
export function follow(session: Session, leads: Leads): boolean {
  switch (leads.to) {
    case 'question':
      session.do(showQuestion, leads.id);
      return false;
    case 'fault':
      session.do(show, 'faults');
      session.do(chooseFault, leads.id);
      return false;
    case 'station':
      session.do(show, leads.id);
      return false;
    case 'see':
      session.do(openTopic, leads.topic as Topic);
      return false;
    case 'lesson':
      // The lessons are larger than Ask: they come with the first of them.
      import('../../lessons/library.ts').then(
        ({ lessonNamed }) => {
          const lesson = lessonNamed(session.moment, leads.name);
          if (lesson) session.do(openLesson, lesson);
        },
        () => session.say(notLoaded()),
      );
      return false;
    case 'order':
      session.do(openOrder, leads.page);
      return false;
    case 'figures':
      session.do(carryFigures, leads.figures);
      return false;
    case 'names':
      session.do(show, 'apply');
      if (!layersOf(session.moment).names) session.do(toggleLayer, 'names');
      return false;
    case 'bending':
      session.do(show, 'apply');
      if (!session.bending) session.toggleBending();
      return false;
    case 'dials':
    case 'polygons':
      session.do(show, 'apply');
      if (!layersOf(session.moment)[leads.to]) session.do(toggleLayer, leads.to);
      return false;
    case 'words':
      // Where most of them stand; Ask has none.
      session.do(show, 'apply');
      return true;
    case 'table':
    case 'away':
    case 'bench':
      return true;
    case 'nothing':
      return false;
  }
}
