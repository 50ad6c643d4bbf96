import { html, type TemplateResult } from 'lit';
import { awaySheetsSheets as texts } from '../../../sim/words/en.ts';
import { lessonNamed, shipped } from '../../lessons/library.ts';
import { namesSheet } from '../../pieces/names-on-paper.ts';
import type { PaperSize } from '../../pieces/papers.ts';
import type { Session } from '../../session.ts';
import { faultLog } from '../../stations/faults/on-paper.ts';
import { InspectDesk } from '../../stations/inspect/desk.ts';
import { measurementPage } from '../../stations/inspect/print.ts';
import { isAsked, predictionAnswers, predictions } from '../../stations/lessons/on-paper.ts';
import { orderPagesOf } from '../../stations/order/on-paper.ts';
import { deskOf } from '../../stations/station.ts';
import { wearReport } from '../../stations/wear-on-paper.ts';

/** All sheets that can be printed of what stands on the bench: a new one is a row here. */
export interface SheetKind {
  readonly id: string;
  readonly name: string;
  readonly tells: string;
  /** Its pages, and as a second set the same with answers or filled in, each with the words of its button. */
  readonly sets: readonly {
    readonly id: string;
    readonly name: string;
    pages(session: Session, lesson: string, paper: PaperSize): readonly TemplateResult[];
  }[];
  /** It is of a lesson that is chosen. */
  readonly ofLesson?: true;
}

/** Lessons with something to predict, in the order of the course. */
export const lessonsAsked = shipped.filter(isAsked);

const lessonOf = (session: Session, name: string) =>
  lessonNamed(session.moment, name) ?? lessonsAsked[0];

export const sheets: readonly SheetKind[] = [
  {
    id: 'names',
    name: texts.namesName,
    tells: texts.namesTells,
    sets: [
      { id: 'names', name: texts.namesName2, pages: (s) => [namesSheet(s, false)] },
      { id: 'names-answers', name: texts.namesAnswersName, pages: (s) => [namesSheet(s, true)] },
    ],
  },
  {
    id: 'predictions',
    name: texts.predictionsName,
    tells: texts.predictionsTells,
    ofLesson: true,
    sets: [
      {
        ...{ id: 'predictions', name: texts.namesName2 },
        pages: (s, name) => {
          const lesson = lessonOf(s, name);
          return lesson ? predictions(s, lesson) : [];
        },
      },
      {
        ...{ id: 'predictions-answers', name: texts.answers },
        pages: (s, name) => {
          const lesson = lessonOf(s, name);
          return lesson ? [predictionAnswers(s, lesson)] : [];
        },
      },
    ],
  },
  {
    id: 'measurements',
    name: texts.measurementsName,
    tells: texts.measurementsTells,
    sets: [
      {
        ...{ id: 'measurements', name: texts.blank },
        pages: (s) => [measurementPage(deskOf(InspectDesk, s), true)],
      },
      {
        ...{ id: 'measurements-filled', name: texts.asFilledIn },
        pages: (s) => [measurementPage(deskOf(InspectDesk, s), false)],
      },
    ],
  },
  {
    id: 'wear',
    name: texts.wearName,
    tells: texts.wearTells,
    sets: [{ id: 'wear', name: texts.wearName2, pages: (s) => [wearReport(s)] }],
  },
  {
    id: 'log',
    name: texts.logName,
    tells: texts.logTells,
    sets: [
      { id: 'log', name: texts.blank, pages: (s) => [faultLog(s, false)] },
      { id: 'log-filled', name: texts.logFilledName, pages: (s) => [faultLog(s, true)] },
    ],
  },
  {
    id: 'order',
    name: texts.orderName,
    tells: texts.orderTells,
    sets: [
      {
        id: 'removal',
        name: texts.removalName,
        pages: (s, _, paper) => orderPagesOf(s, 'apart', paper),
      },
      {
        id: 'fitting',
        name: texts.fittingName,
        pages: (s, _, paper) => orderPagesOf(s, 'together', paper),
      },
    ],
  },
];

export const pagesOf = (pages: readonly TemplateResult[]): TemplateResult => html`${pages}`;
