import { html, nothing, type TemplateResult } from 'lit';
import { appOffline as words } from '../../sim/words/en.ts';
import { spoken } from '../language.ts';

/**
 * Has the browser keep the page for times without a network (ui/offline/worker.ts), once the brake moves and nobody
 * waits. Where a newer one has come, it is offered, and never put on by itself.
 */

/** What is offered, for the bar under the head; nothing where there is nothing newer. */
type Offer = TemplateResult | typeof nothing;

/** The newer page takes over, and this window opens anew in it: what stands on the bench is kept as by any reload. */
function takeOver(newer: ServiceWorker): void {
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), {
    once: true,
  });
  newer.postMessage('take over');
}

/** @param show called with what is offered, and again when it is put off */
export async function keepOffline(show: (offer: Offer) => void): Promise<void> {
  // Not from a file, and not where the browser forbids: the page works as it did, with its server.
  if (!('serviceWorker' in navigator) || !location.protocol.startsWith('http')) return;
  const kept = await navigator.serviceWorker.register('./offline.js').catch(() => undefined);
  if (!kept) return;
  const language = spoken();
  if (language !== 'en')
    navigator.serviceWorker.ready.then(
      ({ active }) => active?.postMessage({ keep: language }),
      () => undefined,
    );
  const offer = (): void => {
    const { waiting } = kept;
    // The first one of all waits for nobody, and is no news.
    if (!waiting || !navigator.serviceWorker.controller) return;
    show(html`<div class="newer" role="status"><p><span>${words.aNewerTakeupIsReady}</span>
      <button @click=${() => takeOver(waiting)}>${words.openIt}</button><button @click=${() => show(nothing)}>${words.later}</button></p></div>`);
  };
  offer();
  kept.addEventListener('updatefound', () => {
    kept.installing?.addEventListener('statechange', offer);
  });
}
