import german from '../sim/words/de.ts';
import { section, speak } from '../sim/words/section.ts';
import { commasIn } from './decimal-comma.ts';
import { languageHere } from './language.ts';
import { germanTexts } from './lessons/german.ts';
import { tellLessonsBy } from './lessons/in-language.ts';

/** As speak.ts, for the page that is one file: it has all languages in itself, and nothing is waited for. */

const asked = languageHere();
if (asked === 'de') {
  speak(commasIn(german));
  tellLessonsBy(germanTexts);
  document.documentElement.lang = asked;
}

export { section };
