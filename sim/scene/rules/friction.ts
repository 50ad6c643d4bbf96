import { lettersBy } from '../../brake/letters.ts';
import { mostFactor } from '../../brake/rubbing.ts';
import { tableAt } from '../../math/table.ts';
import { sceneRulesFriction as words } from '../../words/en.ts';
import { frictionOf } from '../rubbing.ts';
import { type Breach, eachShoe, must, type Rule } from './rule.ts';

type Table = readonly (readonly [number, number])[];

/** Greatest friction that any state of a lining may come to: no lining grips harder than rubber on stone. */
const MOST = 1.5;

const most = (table: Table): number => Math.max(...table.map((row) => row[1]));

function rising(key: string, table: Table): Breach[] {
  return table.flatMap((row, i) => {
    const before = table[i - 1];
    return must(
      !before || row[0] > before[0],
      `${key}.${i}.0`,
      words.cAfterC(row[0], before?.[0]),
      words.risingTemperatures,
    );
  });
}

/** Friction and wear against temperature and surface. */
export const frictionRules: readonly Rule[] = [
  {
    name: words.tablesRiseName,
    reason: words.tablesRiseReason,
    broken: (s) => [
      ...rising('frictionAgainstTemperature', s.frictionAgainstTemperature),
      ...rising('wearAgainstTemperature', s.wearAgainstTemperature),
      ...Object.entries(s.frictionOfSurfaces).flatMap(([name, surface]) =>
        rising(
          `frictionOfSurfaces.${name}.factorAgainstTemperature`,
          surface?.factorAgainstTemperature ?? [],
        ),
      ),
    ],
  },
  {
    name: words.lettersAsTheName,
    reason: words.lettersAsTheReason,
    broken: (s) =>
      eachShoe(s, ({ lining }, at) => {
        const { friction } = lining;
        if (typeof friction === 'number') return [];
        const cold = frictionOf(friction);
        const told = lettersBy((t) => cold * tableAt(s.frictionAgainstTemperature, t));
        return must(
          told.letters === friction,
          `${at}.lining.friction`,
          words.byFrictionAgainstTemperature(friction, told.letters, told.hot.toFixed(3)),
          words.orATableThatLeads(told.letters, friction),
        );
      }),
  },
  {
    name: words.frictionOfAName,
    reason: words.frictionOfAReason,
    broken: (s) => {
      const surfaces = Object.values(s.frictionOfSurfaces).map((surface) =>
        most(surface?.factorAgainstTemperature ?? [[0, 1]]),
      );
      const law = s.frictionAgainstPressureAndSpeed;
      const factor =
        Math.max(most(s.frictionAgainstTemperature), 1) *
        Math.max(...surfaces, 1) *
        (law ? mostFactor(law) : 1);
      return eachShoe(s, ({ lining }, at) => {
        const friction = frictionOf(lining.friction);
        return must(
          friction * factor <= MOST,
          `${at}.lining.friction`,
          words.upToByItsTables(lining.friction, (friction * factor).toFixed(2)),
          words.atMostWithAllFactors(MOST),
        );
      });
    },
  },
];
