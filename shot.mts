import { chromium } from 'playwright-core';
import { serve } from './ui/serve/static.mjs';
const { address } = await serve('dist', 0);
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--force-color-profile=srgb'] });
for (const [w, h, name] of [[1920,1080,'d'],[1366,768,'l'],[390,844,'p']] as const) {
  const page = await browser.newPage({ viewport: { width: w, height: h }, reducedMotion: 'reduce' });
  page.on('console', m => { if (m.type() === 'error') console.log(m.text().slice(0,160)); }); page.on('pageerror', e => console.log('ERR', e.message));
  await page.goto(address + '?station=vary'); await page.waitForTimeout(4000);
  await page.screenshot({ path: `/tmp/vary-${name}.png` });
  if (name === 'd') {
    const box = await page.locator('takeup-curve').boundingBox();
    await page.mouse.click(box!.x + 0.55 * box!.width, box!.y + 300); await page.waitForTimeout(1500);
    await page.screenshot({ path: `/tmp/vary-d2.png` });
  }
  if (name === 'p') { await page.screenshot({ path: `/tmp/vary-pf.png`, fullPage: true }); }
  await page.close();
}
await browser.close(); process.exit(0);
