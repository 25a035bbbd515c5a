import type { Assessment, Batch } from '@larderwright/calc/batch';
import type { CoolLeg } from '@larderwright/calc/cooling';
import { thresholdC } from '@larderwright/calc/lethality';
import { fixedText } from '@larderwright/calc/quantities';
import { linePath, stretches, thinned, tracePoints } from '../../charts/trace.ts';
import { clockAt, offsetOf } from '../../parts/clock-text.ts';
import { curvePoint } from '../../readings/curve-point.ts';
import { limitTemp } from '../../words/limit-temp.ts';
import { CURVE_MM, type CurveSize } from '../curve-size.ts';
import type { SheetCurve } from '../sheet-model.ts';

/** Lowest and highest the picture reaches at least, °C. */
const LEAST_TOP_C = 60;
const COLUMNS = 300;

/**
 * All readings of the log that rules the cook, from the heat to the cold, small enough for the record copy.
 *
 * @param size of the drawing, mm; with more height the temperatures of the cooling rule are drawn too
 */
export function buildCurve(
  batch: Batch,
  { cook, cool }: Assessment,
  size: CurveSize = CURVE_MM,
): SheetCurve | null {
  const { values } = cook;
  const ruling = values.logs.find(({ logId }) => logId === values.rulingLogId) ?? values.logs[0];
  const points = (ruling?.log.readings ?? []).flatMap((reading) => curvePoint(reading) ?? []);
  const trace = tracePoints(points);
  const [first, last] = [trace[0], trace.at(-1)];
  if (!first || !last || trace.length < 3 || last.atMs <= first.atMs) return null;
  const taken = points.filter(({ mark }) => mark === 'taken').map(({ tempC }) => tempC);
  const peakC = taken.reduce((most, tempC) => Math.max(most, tempC), Number.NEGATIVE_INFINITY);
  const limitC = values.limit ? thresholdC(values.limit.stated, 'C') : null;
  const topC = Math.max(LEAST_TOP_C, peakC, limitC ?? 0) + 2;
  const { width, height, left, right, top, bottom } = size;
  const x = (atMs: number) =>
    left + ((atMs - first.atMs) / (last.atMs - first.atMs)) * (width - left - right);
  // A reading that cannot be is drawn at the edge it lies beyond.
  const y = (tempC: number) =>
    height - bottom - (Math.min(topC, Math.max(0, tempC)) / topC) * (height - top - bottom);
  const put = ({ atMs, tempC }: { atMs: number; tempC: number }) => ({ x: x(atMs), y: y(tempC) });
  const zone = offsetOf(ruling?.readings[0]?.at ?? batch.createdAt);
  const sound = trace.filter(({ mark }) => mark === 'taken');
  return {
    line: stretches(sound)
      .map((part) => linePath(thinned(part, COLUMNS).map(put)))
      .join(''),
    odd: points.filter(({ mark }) => mark !== 'taken').map((point) => put(point)),
    limit:
      limitC === null || !values.limit
        ? null
        : { y: y(limitC), label: limitTemp(values.limit.stated, 'minimum').text },
    cooling: size === CURVE_MM ? [] : coolingLines(cool.values.ruleSet?.legs ?? [], y),
    starts: clockAt(first.atMs, zone),
    ends: clockAt(last.atMs, zone),
    top: `${fixedText(topC, 0, 'up')} °C`,
  };
}

/** Where the legs of the cooling rule begin and end, each once. */
function coolingLines(legs: readonly CoolLeg[], y: (tempC: number) => number): SheetCurve['cooling'] {
  const stated = legs.flatMap(({ from, to }) => (from === null ? [to] : [from, to]));
  const lines = stated.map((temp) => ({
    y: y(thresholdC(temp, 'C')),
    label: limitTemp(temp, 'maximum').text,
  }));
  return [...new Map(lines.map((line) => [line.label, line])).values()];
}
