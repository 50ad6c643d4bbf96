// @ts-check
/** What a cell shows: tables and one curve, made of elements, since the page's policy forbids anything else. */

/**
 * @param {readonly (readonly [name: string, value: string])[]} rows
 * @returns {HTMLTableElement}
 */
export function table(rows) {
  const made = document.createElement('table');
  for (const [name, value] of rows) {
    const row = made.insertRow();
    const head = document.createElement('th');
    head.scope = 'row';
    head.textContent = name;
    row.append(head);
    row.insertCell().textContent = value;
  }
  return made;
}

/** @param {string} name @param {Readonly<Record<string, string | number>>} told */
function svg(name, told) {
  const made = document.createElementNS('http://www.w3.org/2000/svg', name);
  for (const [key, value] of Object.entries(told)) made.setAttribute(key, String(value));
  return made;
}

/** @param {number} x @param {number} y @param {string} text @param {string} anchor */
function word(x, y, text, anchor) {
  const made = svg('text', { x, y, 'text-anchor': anchor });
  made.textContent = text;
  return made;
}

const [WIDE, HIGH, LEFT, RIGHT, TOP, LOW] = [700, 330, 70, 20, 24, 48];

/**
 * A curve with the ends of its axes told.
 *
 * @param {readonly (readonly [x: number, y: number])[]} points
 * @param {string} across
 * @param {string} up
 */
export function curve(points, across, up) {
  const xs = points.map(([x]) => x);
  const [low, high] = [Math.min(...xs), Math.max(...xs)];
  const most = Math.max(...points.map(([, y]) => y));
  const bottom = HIGH - LOW;
  const placed = points.map(([x, y]) => {
    const px = LEFT + ((WIDE - LEFT - RIGHT) * (x - low)) / (high - low || 1);
    return `${px.toFixed(1)},${(bottom - ((bottom - TOP) * y) / (most || 1)).toFixed(1)}`;
  });
  const made = svg('svg', { viewBox: `0 0 ${WIDE} ${HIGH}`, role: 'img' });
  made.setAttribute(
    'aria-label',
    `${up} against ${across}: from ${points[0]?.[1].toFixed(0)} at ${low.toFixed(2)} to ${points.at(-1)?.[1].toFixed(0)} at ${high.toFixed(2)}`,
  );
  made.append(
    svg('path', { d: `M${LEFT} ${TOP}V${bottom}H${WIDE - RIGHT}` }),
    svg('polyline', { points: placed.join(' ') }),
    word(LEFT - 8, TOP + 8, most.toFixed(0), 'end'),
    word(LEFT - 8, bottom, '0', 'end'),
    word(LEFT, 16, up, 'start'),
    word(LEFT, bottom + 20, low.toFixed(2), 'middle'),
    word(WIDE - RIGHT, bottom + 20, high.toFixed(2), 'end'),
    word((LEFT + WIDE - RIGHT) / 2, bottom + 40, across, 'middle'),
  );
  return made;
}
