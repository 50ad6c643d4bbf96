import { askSaidToldOther as texts } from '../../../sim/words/en.ts';
/** More of what people say of stations, ways in, pages, words and what is not here, by the entry's key. */
export const toldOther: Readonly<Record<string, string>> = texts.toldOther;
