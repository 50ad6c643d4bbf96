import { BAR, type Rig, rest } from '../../sim/index.ts';
import { number } from '../format.ts';
import { drawBrake, type Layers } from '../stage/scene.ts';
import { toSvg } from '../stage/svg.ts';
import { fitView } from '../stage/view.ts';
import { printTheme, themes } from '../theme.ts';
import { type Arguments, choiceOf, quoted, sizeOf, UsageError } from './args.ts';
import { asJson } from './json.ts';
import { pressOf } from './press.ts';
import type { Say } from './print.ts';

/** Layers as the page names them to the hand, and what the drawing takes. */
const LAYERS: Readonly<Record<string, Layers>> = {
  gaps: { fan: 20 },
  'true-gaps': { fan: 1 },
  pressure: { comb: true },
  forces: { forces: true },
  names: { names: true },
  rest: { ghost: true },
  heat: { heat: true },
};
const COLOURS = { sheet: themes.sheet, board: themes.board, print: printTheme } as const;

function layersOf(args: Arguments): Layers {
  const text = args.options.get('layers');
  if (text === undefined) return { forces: true };
  const all: Layers = {};
  for (const name of text.split(',').map((part) => part.trim())) {
    const layer = Object.hasOwn(LAYERS, name) ? LAYERS[name] : undefined;
    if (!layer && name !== 'none')
      throw new UsageError('--layers', quoted(name), [...Object.keys(LAYERS), 'none'].join(', '));
    Object.assign(all, layer);
  }
  return all;
}

/** `figure`: the drawing of the pressed brake as SVG, vectors and text alone. */
export async function figure(args: Arguments, rig: Rig, say: Say): Promise<void> {
  const width = await sizeOf(args, 'width', 1600, 'px', [200, 10000]);
  const height = await sizeOf(args, 'height', 1100, 'px', [200, 10000]);
  const theme = COLOURS[choiceOf(args, 'colours', ['sheet', 'board', 'print'], 'print')];
  const layers = layersOf(args);
  const { pressure, drum, state, instant } = await pressOf(args, rig);
  const { brake } = rig;
  const drawing = drawBrake({
    brake,
    state,
    instant,
    rest: rest(rig, state),
    layers,
    view: fitView(brake, { width, height, band: 30 }),
    theme,
    roles: 'full',
    caption: `${number(pressure / BAR, 1)} bar, drum ${drum}`,
  });
  const svg = toSvg([drawing], theme, { title: brake.title });
  say(
    args.flags.has('json')
      ? asJson({ scene: brake.name, command: 'figure', width, height, svg })
      : svg,
  );
}
