import { type Sections, section, speak } from '../sim/words/section.ts';
import { type Language, languageHere } from './language.ts';
import { tellLessonsBy } from './lessons/in-language.ts';

/**
 * Has the page speak the language that is asked for before the first text of it is taken: in what is built, every
 * section of texts imports this module (`ui/serve/words.mjs`), and so waits for it. Other languages than English are
 * loaded here, and only here.
 */

const others: Readonly<Record<Exclude<Language, 'en'>, () => Promise<Sections>>> = {
  de: async () => {
    const [{ default: texts }, { commasIn }, { germanTexts }] = await Promise.all([
      import('../sim/words/de.ts'),
      import('./decimal-comma.ts'),
      import('./lessons/german.ts'),
    ]);
    tellLessonsBy(germanTexts);
    return commasIn<Sections>(texts);
  },
};

const asked = languageHere();
if (asked !== 'en') {
  try {
    speak(await others[asked]());
    document.documentElement.lang = asked;
  } catch {
    // It was never kept and cannot be had now: the page is there in English, and says so by its tag.
  }
}

export { section };
