import { lent } from './trig-in.ts';

Math.sin = lent.sin;
Math.cos = lent.cos;
