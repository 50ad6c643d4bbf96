import '@fontsource-variable/encode-sans/wdth.css';
import './page.css';
import { BAR, readingOf } from '../sim/index.ts';
import { Announcer } from './app/announcer.ts';
import { TakeupApp } from './app/takeup-app.ts';
import { bring } from './app/waiting.ts';
import { number } from './format.ts';
import { pageSize } from './pieces/page-sizes.ts';
import { benchTitle } from './record/guest-title.ts';
import { begin as beginHistory } from './record/history.ts';
import { opening } from './record/home.ts';
import { readLink } from './record/link.ts';
import { Session } from './session.ts';
import { stationOf } from './stations/index.ts';
import { themeCss, themes } from './theme.ts';
import { loadReader } from './typed-size.ts';

const teacher = new URLSearchParams(location.search).get('teacher');
if (teacher !== null) {
  // The other window of a lesson: it has no bench of its own, and keeps nothing.
  const { TeacherWindow } = await import('./app/teacher.ts');
  document.body.prepend(new TeacherWindow(teacher));
} else if ('embed' in document.documentElement.dataset) {
  // embed.html (ui/serve/hosting.mjs): one brake in a page of somebody else.
  const { embed } = await import('./embed/main.ts');
  await embed({
    BAR,
    readingOf,
    Announcer,
    number,
    benchTitle,
    begin: beginHistory,
    readLink,
    Session,
    stationOf,
    themeCss,
    themes,
    loadReader,
  });
} else await begin();

/** The bench as it was left, or as the address has it. */
async function begin(): Promise<void> {
  // In the garage one begins with what is wrong; at a desk with the brake.
  const first = pageSize() === 'narrow' ? 'start' : 'apply';
  const opened = await opening(async (own, texts) => {
    const [{ sizesOfTexts }] = await Promise.all([import('./stations/own/read.ts'), loadReader()]);
    return sizesOfTexts(own, texts);
  }, first);
  // A question's band has its words from the list, which the page otherwise begins without.
  const present = opened.linked ?? opened.history.present;
  if (present.parts.questions.asked !== null)
    await import('./questions/index.ts').catch(() => undefined);
  // The page begins with the station that it opens at; where that cannot be had, its place says so.
  await bring(stationOf(present.station));
  document.body.prepend(new TakeupApp(opened));
}
