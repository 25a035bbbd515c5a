import { newProbeLog, newReading } from '@larderwright/calc/batch';
import { judgeHold } from '@larderwright/calc/lethality';
import { checkLog } from '@larderwright/calc/probe-log';
import type { ProbeLog } from '@larderwright/calc/process';
import { enteredEntry } from '@larderwright/calc/quantities';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { expect, it } from 'vitest';
import { CurveChart } from '../../../worksheets/charts/curve-chart.tsx';
import type { CurveModel } from '../../../worksheets/charts/model.ts';
import { curvePoint } from '../../../worksheets/readings/curve-point.ts';
import { runPaste } from '../../../worksheets/readings/paste-job.ts';
import { longLog, ROWS } from '../../fixtures/long-log.ts';

const read = runPaste({
  text: longLog(),
  options: { unit: 'C', startsOn: '2026-05-05', offset: '+02:00', startsAt: null },
});

function logOf(): ProbeLog {
  if (!read.log) throw new Error(`The log was not read: ${read.issue?.code}`);
  return {
    ...newProbeLog('long', null),
    offset: enteredEntry('0', 'dC'),
    error: enteredEntry('0.5', 'dC'),
    readings: read.log.readings.map(({ at, temperature }, index) => ({
      ...newReading(`${index}`, at, '', 'C', null),
      temperature,
    })),
  };
}

const log = logOf();
const request = {
  stated: { value: 70, unit: 'C' },
  holdS: 600,
  errorC: 0.5,
  offsetKnown: true,
  unitSuspect: false,
  heatOver: true,
} as const;
const judged = (of: ProbeLog) =>
  judgeHold(
    checkLog(of).readings.map((one) => ({ ...one, counts: one.state === 'counts' })),
    request,
  );

it('a log of a hundred thousand rows is read whole', () => {
  expect(log.readings).toHaveLength(ROWS);
});

it('and judged on every row: one that falls below the limit breaks the hold', () => {
  // At 70.5 °C or more by the display from row 20 000 on, until 3 + 68 e^(−x ÷ 9000) is under 70.45: 73 s after row 29 999.
  expect(judged(log)).toMatchObject({ state: 'pass', countedS: 10_072 });
  const at = 25_000;
  const dipped = {
    ...log,
    readings: log.readings.with(at, { ...newReading('dip', log.readings[at]?.at ?? '', '69.9', 'C', null) }),
  };
  expect(judged(dipped).countedS).toBe(30_072 - 25_001);
});

it('and drawn with no more marks and points than the picture has room for, the dip among them', () => {
  const points = checkLog({
    ...log,
    readings: log.readings.with(25_000, newReading('dip', log.readings[25_000]?.at ?? '', '40', 'C', null)),
  }).readings.flatMap((reading) => curvePoint(reading) ?? []);
  const model: CurveModel = { offsetMin: 120, series: [{ id: 'long', name: 'Probe', points }] };
  const picture = renderToString(h(CurveChart, { model, size: { width: 900, height: 360 } }));
  expect(picture.match(/<(?:path|line|text|g|circle|use)\b/g)?.length).toBeLessThan(200);
  expect(picture.length).toBeLessThan(120_000);
});

it('and checked again only where a text has changed', () => {
  const first = checkLog(log);
  expect(checkLog({ ...log })).toBe(first);
  // Changed in place, as no worksheet does: still seen.
  const [reading] = log.readings;
  if (!reading) throw new Error('There is no reading');
  reading.temperature = enteredEntry('6.5', 'C');
  expect(checkLog(log).readings[0]?.tempC).toBe(6.5);
  expect(checkLog({ ...log, offset: enteredEntry('1', 'dC') }).readings[0]?.tempC).toBe(5.5);
});
