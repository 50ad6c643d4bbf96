import { html, render } from 'lit';
import { embedMain as words } from '../../sim/words/en.ts';
import { readAsked } from './address.ts';
import { TakeupEmbed } from './embed.ts';
import type { Kit } from './kit.ts';

/** Shows what the address asks for, or what is wrong with it. */
export async function embed(kit: Kit): Promise<void> {
  const asked = await readAsked(kit, location.search, location.hash);
  if ('wrong' in asked) {
    render(html`<p role="alert">${words.thisBrakeCouldNotBe(asked.wrong)}</p>`, document.body);
    return;
  }
  if (asked.moment.parts.questions.asked !== null) await import('../questions/index.ts');
  const entry = kit.stationOf(asked.moment.station);
  const [station] = await Promise.all([entry.load(), entry.readsSizes && kit.loadReader()]);
  document.body.prepend(new TakeupEmbed(kit, asked, station));
}
