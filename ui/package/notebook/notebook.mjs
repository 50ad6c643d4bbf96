// @ts-check
import { cells } from './cells.mjs';

/** What the cells hand on; each fills in its part. */
const bench = /** @type {import('./cells.mjs').Bench} */ ({});

const names = /** @type {(keyof typeof cells)[]} */ (Object.keys(cells));

/** @param {string} name */
const sectionOf = (name) =>
  /** @type {HTMLElement} */ (document.querySelector(`[data-cell="${name}"]`));

/** @param {keyof typeof cells} name */
async function run(name) {
  const section = sectionOf(name);
  const out = /** @type {HTMLOutputElement} */ (section.querySelector('output'));
  section.dataset['ran'] = 'no';
  out.textContent = 'Working it out…';
  /** @param {string} field */
  const typed = (field) => {
    const input = /** @type {HTMLInputElement} */ (section.querySelector(`[name="${field}"]`));
    if (!input.checkValidity() || input.value === '') {
      throw new Error(
        `${input.labels?.[0]?.textContent?.trim()}: from ${input.min} to ${input.max}`,
      );
    }
    return input.valueAsNumber;
  };
  try {
    out.replaceChildren(await cells[name](bench, typed));
    section.dataset['ran'] = 'yes';
  } catch (error) {
    out.textContent = error instanceof Error ? error.message : String(error);
    section.dataset['ran'] = 'failed';
  }
}

/** Runs are one after another: a cell needs what those before it made. */
let last = Promise.resolve();

/** @param {keyof typeof cells} first */
function runFrom(first) {
  for (const name of names.slice(names.indexOf(first))) last = last.then(() => run(name));
}

for (const name of names) {
  const section = sectionOf(name);
  const code = document.createElement('pre');
  code.tabIndex = 0;
  code.setAttribute('role', 'region');
  code.setAttribute('aria-label', `Lines of cell ${names.indexOf(name) + 1}`);
  code.textContent = cells[name].toString();
  const button = document.createElement('button');
  button.type = 'button';
  button.textContent = 'Run';
  button.setAttribute('aria-label', `Run from cell ${names.indexOf(name) + 1}`);
  button.onclick = () => runFrom(name);
  section.append(code, button, document.createElement('output'));
}
runFrom('scene');
