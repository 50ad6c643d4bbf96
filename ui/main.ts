import '@fontsource-variable/encode-sans/wdth.css';
import './page.css';
import { TakeupApp } from './app/takeup-app.ts';
import { opening } from './record/home.ts';
import { stationOf } from './stations/index.ts';
import { sizesOfTexts } from './stations/own/read.ts';
import { loadReader } from './typed-size.ts';

const opened = await opening(async (own, texts) => {
  await loadReader();
  return sizesOfTexts(own, texts);
});
// A page that opens where sizes are read waits for their reader; where it cannot be had, the station says so.
if (stationOf((opened.linked ?? opened.history.present).station).readsSizes) {
  await loadReader().catch(() => {});
}
document.body.prepend(new TakeupApp(opened));
