import { afterAll, expect, it, vi } from 'vitest';
import { gapsOf } from '../../../sim/index.ts';
import { madeIn, sceneOf, stageAt, stages } from '../../stages.ts';

/** Gaps that would hang over the stage are drawn less exaggerated, and the drawing says by how much. */

vi.mock('uplot', () => ({ default: class {} }));
afterAll(() => vi.resetModules());

it('a fan of a wide gap is drawn with less, stands on the stage, closes in a press as one, and says its factor', async () => {
  const made = await madeIn('en');
  const { fanFactor } = await import('../../../ui/fan-factor.ts');
  const { openLesson, goToStep, tell } = await import('../../../ui/lessons/wants.ts');
  const { shipped } = await import('../../../ui/lessons/library.ts');
  const session = made.Session.of(sceneOf('quay-van'), true);
  expect(fanFactor(session)).toBe(20);
  // Its teeth held fast and worn to the limit: some 2.5 mm at the centre.
  const press = shipped.find((l) => l.name === 'the-press');
  if (!press) throw new Error('no such lesson');
  session.do(openLesson, press);
  session.do(goToStep, press, 3);
  session.do(tell, press);
  session.do(goToStep, press, 4);
  session.do(goToStep, press, 3);
  session.frame(1 / 60);
  const factor = fanFactor(session);
  const { front } = session.instant().shoes;
  const now = gapsOf(session.brake.shoes.front, front).centre;
  expect(factor).toBeLessThan(20);
  expect(factor).toBeGreaterThan(1);
  const wall = stages.find(({ name }) => name === 'wall 1920');
  const station = made.stations.find(({ id }) => id === 'lessons');
  if (!wall || !station) throw new Error('no such stage');
  const at = stageAt(made, session, station, wall);
  if (!at) throw new Error('not drawn');
  const [drawing] = made.drawStage(at).drawings;
  expect(drawing?.labels.map((l) => l.text)).toContain(`gap ×${factor}`);
  // The outermost of the fan: what is asked here from the drawing's own scale.
  const { brake } = session;
  const across = brake.drum.radiusNew + brake.drum.rim + now * factor;
  expect(2 * across * made.viewAt(at).scale).toBeLessThan(wall.width);
  session.press(60);
  for (let i = 0; i < 60; i++) session.frame(1 / 60);
  expect(fanFactor(session)).toBe(factor);
});
