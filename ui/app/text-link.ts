import { html, type TemplateResult } from 'lit';

/**
 * Leads to a text that comes with the page: a file beside it, or, where the page is one file (ui/serve/one-file.mjs),
 * a text within it under the same name.
 */

const made = new Map<string, string>();

function addressOf(file: string): string {
  const within = document.getElementById(file);
  if (!(within instanceof HTMLTextAreaElement)) return `./${file}`;
  const known = made.get(file);
  if (known) return known;
  const text = new Blob([within.value], { type: 'text/plain;charset=utf-8' });
  const address = URL.createObjectURL(text);
  made.set(file, address);
  return address;
}

export const textLink = (file: string, words: string): TemplateResult =>
  html`<a href=${addressOf(file)} target="_blank" rel="noopener">${words}</a>`;
