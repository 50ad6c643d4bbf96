import { html, nothing, type TemplateResult } from 'lit';
import { piecesLanguageChoice as texts } from '../../sim/words/en.ts';
import {
  choose,
  type Language,
  languages,
  namesOfLanguages,
  offered,
  spoken,
} from '../language.ts';

/**
 * The choice of the page's language. Each language says its own name, and German says of itself who made it: that is
 * for those who read it, in whichever language the page stands.
 */

const choice = (language: Language): TemplateResult =>
  html`<button lang=${language} class=${spoken() === language ? 'on' : ''} aria-pressed=${spoken() === language} @click=${() => choose(language)}>${namesOfLanguages[language]}</button>`;

/** All languages in a row, under their heading. */
export const languageChoice = (): TemplateResult =>
  html`<div class="lab" id="language">${texts.language}</div><div class="seg" role="group" aria-labelledby="language">${languages.map(choice)}</div><p lang="de">${texts.germanIsMadeByMachine}</p>`;

/** One quiet line for whoever's browser asks for a language that the page has and does not speak. */
export function languageOffer(): TemplateResult | typeof nothing {
  const language = offered();
  if (language === null) return nothing;
  return html`<p class="speaks" lang=${language}><button @click=${() => choose(language)}>${namesOfLanguages[language]}</button> ${texts.germanIsMadeByMachine}</p>`;
}
