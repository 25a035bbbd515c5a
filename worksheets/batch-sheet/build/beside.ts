import type { Assessment } from '@larderwright/calc/batch';
import { COME_UP, type MeatKind, reductionsOf, valuesOf } from '@larderwright/calc/lethality';
import { fixedText } from '@larderwright/calc/quantities';
import { durationWords } from '../../parts/clock-text.ts';
import { reductionText } from '../../words/after-cook.ts';
import { GROWTH_DOUBT_WORDS, GROWTH_FOOD_WORDS, logsText } from '../../words/growth.ts';

/** Organisms named on paper: the screen has them all. */
const MOST_ORGANISMS = 2;
const minutes = (value: number) => fixedText(value, value < 10 ? 2 : 0, 'down');

/** What stands beside the verdict of the cook. No verdict rests on it. */
export function besideCook({ cook }: Assessment, meats: readonly MeatKind[]): string[] {
  const { logs, rulingLogId, facts } = cook.values;
  const ruling = logs.find(({ logId }) => logId === rulingLogId);
  if (!ruling || ruling.readings.length === 0) return [];
  const [uk, fr] = valuesOf(ruling);
  const { minutes: taken, state } = ruling.comeUp;
  const organisms = reductionsOf(ruling, meats, facts.comminuted !== false).slice(0, MOST_ORGANISMS);
  const parts = [
    uk && fr
      ? `P(70 °C, z 7.5) ${minutes(uk.wholeMin)} min, P(70 °C, z 10) ${minutes(fr.wholeMin)} min, come-up and carry-over counted`
      : '',
    taken === null
      ? 'come-up not shown'
      : `come-up ${COME_UP.fromC} to 54.4 °C ${durationWords(taken, 'up')}${state === 'over' ? ', OVER 6 h' : ''}`,
    ...organisms.map(
      ({ row, whole }) => `${row.organism} in ${row.food} ${reductionText(whole)} log (${row.paper})`,
    ),
  ];
  return [`Information, probe error taken off: ${parts.filter(Boolean).join('; ')}.`];
}

/** Growth in the cooling by the published sets. No verdict rests on it. */
export function besideCool({ growth, cook }: Assessment): string[] {
  const logs = growth[0]?.logs ?? [];
  const log = logs.find(({ logId }) => logId === cook.values.rulingLogId) ?? logs[0];
  if (!log) return [];
  const head = 'Information, C. perfringens in the cooling';
  if (log.doubt !== null) return [`${head}: cannot tell, ${GROWTH_DOUBT_WORDS[log.doubt]}`];
  const sets = log.sets.map(
    ({ set, withoutLag, withLag }) =>
      `${GROWTH_FOOD_WORDS[set.id].toLowerCase()} at most ${logsText(withoutLag.most)} tenfolds without lag, ${logsText(withLag.most)} with`,
  );
  return [`${head}${log.ended ? '' : ', SO FAR'}, models from memory: ${sets.join('; ')}.`];
}
