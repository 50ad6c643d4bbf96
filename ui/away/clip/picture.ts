import type { Drawing } from '../../stage/shapes.ts';
import type { ThemeName, Token } from '../../theme.ts';

/** One picture of a film as plain data: what a worker paints. All px are of its sheet, whatever the film's size. */

export interface Sheet {
  /** px */
  readonly width: number;
  readonly height: number;
  /** Times larger words on the drawing. */
  readonly words: number;
  /** A small picture for paper: no title, and what is said stands under the speed in place of figures. */
  readonly small: boolean;
}

/** A film's sheet: at 1280×720 each px is 4/3 device px, at 1920×1080 two. */
export const SHEET: Sheet = { width: 960, height: 540, words: 1, small: false };
/** One of a strip's, shown 93 mm wide: 20 px are 7 points there. */
export const SMALL_SHEET: Sheet = { width: 780, height: 520, words: 1.6, small: true };

/** A line of text beside the drawing. */
export interface Word {
  readonly text: string;
  readonly x: number;
  /** Middle of its letters. */
  readonly y: number;
  readonly size: number;
  readonly weight: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly colour: Token;
}

/** A plain rectangle under the words, or a line. */
export interface Block {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly colour: Token;
}

export interface Picture {
  readonly drawings: readonly Drawing[];
  readonly blocks: readonly Block[];
  readonly words: readonly Word[];
}

/** A click that is heard: when, s of the film, and how loud its hit is, mJ. */
export interface Sound {
  readonly at: number;
  readonly timbre: 'plate' | 'pawl';
  readonly energy: number;
}

/** What is said from one moment of the film to another, s. */
export interface Cue {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

export type FileKind = 'mp4' | 'webm' | 'loop' | 'strip';

/** What the worker is to make of the pictures that follow. */
export interface Order {
  readonly file: FileKind;
  readonly theme: ThemeName | 'print';
  readonly title: string;
  /** Width of a picture's sheet, px. */
  readonly sheet: number;
  /** Device px of one picture. */
  readonly width: number;
  readonly height: number;
  /** Pictures a second. */
  readonly rate: number;
}

export type ToWorker =
  | { readonly order: Order }
  /** Null: the one before stands on. */
  | { readonly picture: Picture | null }
  | { readonly end: { readonly sounds: readonly Sound[]; readonly captions: string } };

/** What it made, and of what kinds its tracks are. */
export interface Made {
  readonly bytes: ArrayBuffer;
  readonly type: string;
  readonly extension: string;
  /** In a word: H.264, VP9, Opus … */
  readonly codecs: readonly string[];
}

export type FromWorker =
  | { readonly painted: number }
  /** It is there, and nothing else is new. */
  | { readonly alive: true }
  | { readonly made: Made }
  | { readonly failed: string };
