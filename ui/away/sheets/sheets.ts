import { html, type TemplateResult } from 'lit';
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
    name: 'Names',
    tells: 'The brake with numbered leaders, and lines to write the names on.',
    sets: [
      { id: 'names', name: 'To fill in', pages: (s) => [namesSheet(s, false)] },
      { id: 'names-answers', name: 'With answers', pages: (s) => [namesSheet(s, true)] },
    ],
  },
  {
    id: 'predictions',
    name: 'Predictions',
    tells: 'A lesson’s questions, with room for the guess, for what was seen, and for why.',
    ofLesson: true,
    sets: [
      {
        ...{ id: 'predictions', name: 'To fill in' },
        pages: (s, name) => {
          const lesson = lessonOf(s, name);
          return lesson ? predictions(s, lesson) : [];
        },
      },
      {
        ...{ id: 'predictions-answers', name: 'Answers' },
        pages: (s, name) => {
          const lesson = lessonOf(s, name);
          return lesson ? [predictionAnswers(s, lesson)] : [];
        },
      },
    ],
  },
  {
    id: 'measurements',
    name: 'Measurements',
    tells:
      'The sheet of Inspect for both wheels: to take to a vehicle, or as it was filled in there.',
    sets: [
      {
        ...{ id: 'measurements', name: 'Blank' },
        pages: (s) => [measurementPage(deskOf(InspectDesk, s), true)],
      },
      {
        ...{ id: 'measurements-filled', name: 'As filled in' },
        pages: (s) => [measurementPage(deskOf(InspectDesk, s), false)],
      },
    ],
  },
  {
    id: 'wear',
    name: 'Wear report',
    tells: 'The life on the bench: its charts, what happened in it, and what ends first.',
    sets: [{ id: 'wear', name: 'Print', pages: (s) => [wearReport(s)] }],
  },
  {
    id: 'log',
    name: 'Find-the-fault log',
    tells:
      'The readings with their minutes: blank, or with what was found at the van that is open.',
    sets: [
      { id: 'log', name: 'Blank', pages: (s) => [faultLog(s, false)] },
      { id: 'log-filled', name: 'As it stands', pages: (s) => [faultLog(s, true)] },
    ],
  },
  {
    id: 'order',
    name: 'Order of the work',
    tells: 'Each step for this brake: what to do, what may fly, what to look at, and its caution.',
    sets: [
      {
        id: 'removal',
        name: 'Taking apart',
        pages: (s, _, paper) => orderPagesOf(s, 'apart', paper),
      },
      {
        id: 'fitting',
        name: 'Putting together',
        pages: (s, _, paper) => orderPagesOf(s, 'together', paper),
      },
    ],
  },
];

export const pagesOf = (pages: readonly TemplateResult[]): TemplateResult => html`${pages}`;
