// @ts-check
// What a browser is told to refuse, in one place: for our own server, for the page's own words, and for other hosts.

/** What the page may load and do: its own files, pictures and films that it makes itself, and nothing else. */
const rules = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  // A film that was just made, shown before it is saved.
  'media-src blob:',
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
];

/** As a page can say it of itself. Who may frame it, only a header can say. */
export const POLICY = rules.join('; ');

/** The bench is nobody's to frame: what is pressed in it is kept. */
export const NOT_FRAMED = "frame-ancestors 'none'";

/** On every answer but the policy. */
export const HEADERS = {
  // No page of another site may load anything from here, nor keep a hand on the page's window.
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'referrer-policy': 'no-referrer',
  'x-content-type-options': 'nosniff',
};
