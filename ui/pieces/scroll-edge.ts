import { css } from 'lit';

/**
 * Ground of a box that scrolls: where more lies above or below, a dark edge says so. The sheet scrolls
 * along with what stands in the box and covers the edge where nothing more lies.
 */
export const scrollEdge = css`linear-gradient(var(--sheet), var(--sheet)) 0 0 / 100% 16px no-repeat local, linear-gradient(var(--sheet), var(--sheet)) 0 100% / 100% 16px no-repeat local, linear-gradient(var(--ink), transparent) 0 0 / 100% 12px no-repeat scroll, linear-gradient(transparent, var(--ink)) 0 100% / 100% 12px no-repeat scroll, var(--sheet)`;
