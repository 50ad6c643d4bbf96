import '@fontsource-variable/encode-sans/wdth.css';
import './page.css';
import './app/takeup-app.ts';
