import { sceneRulesDuty as words } from '../../words/en.ts';
import { must, ownNames, type Rule } from './rule.ts';

/** Duties that have the right types and cannot be driven. */
export const dutyRules: readonly Rule[] = [
  {
    name: words.dutyOfItsName,
    reason: words.dutyOfItsReason,
    broken: ({ duties }) => ownNames('duties', duties),
  },
  {
    name: words.pressureOrDecelerationName,
    reason: words.pressureOrDecelerationReason,
    broken: ({ duties }) =>
      duties.flatMap((d, i) =>
        d.stops.flatMap(({ pressure, deceleration }, n) =>
          must(
            (pressure === undefined) !== (deceleration === undefined),
            `duties.${i}.stops.${n}.pressure`,
            pressure === undefined
              ? words.neitherPressureNorDeceleration
              : words.pressureAndDeceleration,
            words.oneOfTheTwo,
          ),
        ),
      ),
  },
  {
    name: words.pressureToLockName,
    reason: words.pressureToLockReason,
    broken: ({ duties: [first] }) =>
      must(
        first?.stops[0]?.deceleration === undefined,
        'duties.0.stops.0.deceleration',
        words.aDeceleration,
        words.aPressure,
      ),
  },
  {
    name: words.sharesOfTheName,
    reason: words.sharesOfTheReason,
    broken: ({ duties }) =>
      duties.flatMap((d, i) => {
        const shares = d.weather.reduce((sum, w) => sum + w.share, 0);
        return must(
          shares <= 1 + 1e-9,
          `duties.${i}.weather`,
          words.sharesThatAddUpTo(shares),
          words.atMost1Together,
        );
      }),
  },
  {
    name: words.filmsOfWaterName,
    reason: words.filmsOfWaterReason,
    broken: ({ duties }) =>
      duties.flatMap((d, i) =>
        d.weather.flatMap(({ surface, film }, n) =>
          must(
            film === undefined || surface === 'wet' || surface === 'damp',
            `duties.${i}.weather.${n}.film`,
            words.aFilmOf(surface),
            words.aFilmOfWetOr,
          ),
        ),
      ),
  },
  {
    name: words.descentsOnTheName,
    reason: words.descentsOnTheReason,
    broken: ({ duties }) =>
      duties.flatMap((d, i) => {
        const down = d.descents.reduce((sum, h) => sum + h.length * h.perKm, 0);
        return must(
          down <= 1 + 1e-9,
          `duties.${i}.descents`,
          words.kmOfDescentInEach(down),
          words.atMost1Together,
        );
      }),
  },
];
