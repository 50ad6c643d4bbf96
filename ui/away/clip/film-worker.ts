import face from '@fontsource-variable/encode-sans/files/encode-sans-latin-wdth-normal.woff2?url';
import { printTheme, themes } from '../../theme.ts';
import { FilmPainter } from './film-painter.ts';
import type { FromWorker, Order, Picture, ToWorker } from './picture.ts';
import type { Sink } from './sink.ts';
import { FACE } from './write-words.ts';

/** Paints the pictures of a film and puts them into a file, away from the page. */

interface Here {
  readonly fonts?: FontFaceSet;
  onmessage: ((e: MessageEvent<ToWorker>) => void) | null;
  postMessage(message: FromWorker, transfer?: Transferable[]): void;
}
const here = globalThis as unknown as Here;

const themeOf = ({ theme }: Order) => (theme === 'print' ? printTheme : themes[theme]);

async function sinkOf(order: Order, canvas: OffscreenCanvas): Promise<Sink> {
  if (order.file === 'loop') return (await import('./loop-sink.ts')).loopSink(order);
  if (order.file === 'strip')
    return (await import('./strip-sink.ts')).stripSink(order, themeOf(order));
  return (await import('./video-sink.ts')).videoSink(order, canvas);
}

/** The page's face; where a worker has none to be had, what the system has stands in. */
async function loadFace(): Promise<void> {
  const font = new FontFace(FACE, `url(${face})`, { weight: '100 900', stretch: '75% 125%' });
  here.fonts?.add(await font.load());
}

let making: { readonly painter: FilmPainter; readonly sink: Sink } | null = null;
let painted = 0;
/** One after the other, in the order in which they came. */
let last: Promise<void> = Promise.resolve();

async function begin(order: Order): Promise<void> {
  await loadFace().catch(() => undefined);
  const painter = new FilmPainter(order.width, order.height, order.sheet, themeOf(order));
  making = { painter, sink: await sinkOf(order, painter.canvas) };
  here.postMessage({ painted });
}

async function paint(picture: Picture | null): Promise<void> {
  if (!making) return;
  if (picture) making.painter.paint(picture);
  await making.sink.add(making.painter.canvas, painted);
  painted += 1;
  here.postMessage({ painted });
}

async function hear(asked: ToWorker): Promise<void> {
  if ('order' in asked) return begin(asked.order);
  if ('picture' in asked) return paint(asked.picture);
  const made = await making?.sink.end(asked.end.sounds, asked.end.captions);
  if (made) here.postMessage({ made }, [made.bytes]);
}

/** Says that it is there, ms: while a picture waits for its film, nothing else is said. */
setInterval(() => here.postMessage({ alive: true }), 500);

here.onmessage = ({ data }) => {
  last = last
    .then(() => hear(data))
    .catch((error: unknown) => {
      making = null;
      const failed = error instanceof Error ? error.message : String(error);
      here.postMessage({ failed });
    });
};
