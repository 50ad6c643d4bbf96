/**
 * Closed form of a rigid shoe on a pin with pressure as the sine of the angle from the pin:
 * BF = mu·(h/r) / (X ∓ mu·Y), X = (a/r)·[arc − sin(arc)·cos(A3)] / [4·sin(arc/2)·sin(A3/2)],
 * Y = 1 − (a/r)·cos(arc/2)·cos(A3/2), A3 = th1 + th2; minus for the leading shoe. Same form as in
 * Limpert, Brake Design and Safety, ch. 2 (form from memory; derived and checked by element sums).
 *
 * @param a pin from the drum’s centre, @param h arm of the push, both over the radius
 * @param from lining’s ends from the pin’s line, degrees; @param sign 1 for the leading shoe, −1 for the trailing
 */
export function closedFactor(
  mu: number,
  a: number,
  h: number,
  from: number,
  to: number,
  sign: 1 | -1,
): number {
  const rad = Math.PI / 180;
  const arc = (to - from) * rad;
  const a3 = (to + from) * rad;
  const x = (a * (arc - Math.sin(arc) * Math.cos(a3))) / (4 * Math.sin(arc / 2) * Math.sin(a3 / 2));
  const y = 1 - a * Math.cos(arc / 2) * Math.cos(a3 / 2);
  return (mu * h) / (x - sign * mu * y);
}
