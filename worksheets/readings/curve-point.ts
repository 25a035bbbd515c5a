import type { CheckedReading } from '@larderwright/calc/probe-log';
import type { CurvePoint } from '../charts/index.ts';

/** A checked reading as a mark on a chart; null for one without a figure. */
export function curvePoint(reading: CheckedReading): CurvePoint | null {
  if (reading.tempC === null) return null;
  const mark = reading.state === 'excluded' ? 'excluded' : reading.state === 'counts' ? 'taken' : 'flagged';
  return { id: reading.id, atMs: reading.atMs, tempC: reading.tempC, mark };
}
