import '@fontsource-variable/encode-sans/wdth.css';
import './page.css';
import { TakeupApp } from './app/takeup-app.ts';
import { bring } from './app/waiting.ts';
import { opening } from './record/home.ts';
import { stationOf } from './stations/index.ts';
import { loadReader } from './typed-size.ts';

const opened = await opening(async (own, texts) => {
  const [{ sizesOfTexts }] = await Promise.all([import('./stations/own/read.ts'), loadReader()]);
  return sizesOfTexts(own, texts);
});
// The page begins with the station that it opens at; where that cannot be had, its place says so.
await bring(stationOf((opened.linked ?? opened.history.present).station));
document.body.prepend(new TakeupApp(opened));
