import { cos, sin } from '../math/trig.ts';

/**
 * The engine binds Math.sin and Math.cos when it is loaded. This module is imported just before it
 * and lends the simulator's own, which give the same bits everywhere; trig-out.ts, imported just
 * after it, gives the platform's back.
 */
export const lent = { sin: Math.sin, cos: Math.cos };
Math.sin = sin;
Math.cos = cos;
