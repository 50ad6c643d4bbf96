import '@fontsource-variable/encode-sans/wdth.css';
import './page.css';
import { TakeupApp } from './app/takeup-app.ts';
import { opening } from './record/home.ts';
import { sizesOfTexts } from './stations/own/read.ts';

document.body.prepend(new TakeupApp(await opening(sizesOfTexts)));
