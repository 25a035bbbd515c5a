import { COOL_RULE_SETS } from '@larderwright/calc/cooling';
import { CURE_RULE_SETS } from '@larderwright/calc/cure';
import { COOK_RULE_SETS, isByFat } from '@larderwright/calc/lethality';
import { holdWords, limitTemps, servesPhrase } from './cook-words.ts';
import { coolConditions, legWords } from './cool-words.ts';
import { EXPRESSED_AS, limitPhrase, WEIGHT_BASIS } from './cure-words.ts';
import type { Anchor } from './table-anchor.ts';

/** The parts of each table page that can be linked and searched, by the page's slug. */
export const TABLE_PARTS: Readonly<Record<string, readonly Anchor[]>> = {
  'cooking-lethality': COOK_RULE_SETS.map((set) => ({
    id: set.id,
    label: `${set.jurisdiction}: ${set.title}`,
    words: set.limits.map((limit) => {
      const { celsius, fahrenheit, printed } = limitTemps(limit);
      const hold = isByFat(limit.hold) ? 'hold by fat' : holdWords(limit.hold.printed);
      return [celsius, fahrenheit, printed, hold, servesPhrase(limit)]
        .filter((part) => part !== '')
        .join(', ');
    }),
  })),
  'cooling-windows': COOL_RULE_SETS.map((set) => ({
    id: set.id,
    label: `${set.jurisdiction}: ${set.title}`,
    words: [
      ...set.legs.map((leg) => {
        const { from, to, most } = legWords(leg);
        return `${from} to ${to} in ${most}`;
      }),
      ...coolConditions(set),
    ],
  })),
  'nitrite-limits': CURE_RULE_SETS.map((set) => ({
    id: set.id,
    label: `${set.jurisdiction}: ${set.title}`,
    words: [
      set.title,
      ...set.limits.map(
        (limit) =>
          `${limitPhrase(limit)}: ${limit.printed} mg/kg (ppm) as ${EXPRESSED_AS[limit.expressedAs]}, on ${WEIGHT_BASIS[limit.basis]}`,
      ),
    ],
  })),
};
