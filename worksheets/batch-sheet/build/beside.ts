import type { Assessment } from '@larderwright/calc/batch';
import { COME_UP, type MeatKind, reductionsOf, valuesOf } from '@larderwright/calc/lethality';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/batch-sheet/build/beside.ts';
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
    uk && fr ? say.p70CZ75(minutes(uk.wholeMin), minutes(fr.wholeMin)) : '',
    taken === null
      ? say.comeUpNotShown
      : say.comeUpTo544C(COME_UP.fromC, durationWords(taken, 'up'), state === 'over' ? say.over6H : ''),
    ...organisms.map(({ row, whole }) => say.inLog(row.organism, row.food, reductionText(whole), row.paper)),
  ];
  return [say.informationProbeErrorTakenOff(parts.filter(Boolean).join('; '))];
}

/** Growth in the cooling by the published sets. No verdict rests on it. */
export function besideCool({ growth, cook }: Assessment): string[] {
  const logs = growth[0]?.logs ?? [];
  const log = logs.find(({ logId }) => logId === cook.values.rulingLogId) ?? logs[0];
  if (!log) return [];
  const head = say.informationCPerfringensCooling;
  if (log.doubt !== null) return [say.cannotTell(head, GROWTH_DOUBT_WORDS[log.doubt])];
  const sets = log.sets.map(({ set, withoutLag, withLag }) =>
    say.atMostTenfoldsWithoutLagWith(
      GROWTH_FOOD_WORDS[set.id].toLowerCase(),
      logsText(withoutLag.most),
      logsText(withLag.most),
    ),
  );
  return [say.modelsFromMemory(head, log.ended ? '' : say.soFar, sets.join('; '))];
}
