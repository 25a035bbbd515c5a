import { controlChart } from '@larderwright/calc/trends';
import { describe, expect, it } from 'vitest';
import { listsItsChecks, published } from '../../tools/published.ts';

/** SAS/QC User's Guide 9.22, Example 9.4: diameters of 30 steel belts, and their control limits as listed. */
const BELTS = [
  ...[24.05, 23.99, 23.95, 23.93, 23.97, 24.02, 24.06, 24.1, 23.98, 24.03],
  ...[23.91, 24.06, 24.06, 23.96, 23.98, 24.06, 24.01, 24.0, 23.93, 23.92],
  ...[24.09, 24.11, 24.05, 23.98, 23.98, 24.06, 24.02, 24.06, 23.97, 23.96],
];
const CITED = 'SAS/QC User’s Guide 9.22, Example 9.4';

/** NIST/SEMATECH e-Handbook 6.3.2.2: flow rates of the first ten batches. From memory. */
const FLOWS = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];

describe('control limits of individual values', () => {
  const belts = controlChart(BELTS).limits;
  const flows = controlChart(FLOWS).limits;
  it.each([
    ['mean', 24.0083, belts?.mean, 0.00005],
    ['lower limit', 23.8571, belts?.lower, 0.00005],
    ['upper limit', 24.1596, belts?.upper, 0.00005],
    ['mean moving range', 0.056897, belts?.meanRange, 0.0000005],
    ['upper limit of the ranges', 0.18585, belts?.rangeUpper, 0.00001],
    ['standard deviation', 0.050423, belts?.sigma, 0.0000005],
  ] as const)('%s of 30 belts is as printed', (what, theirs, ours, within) => {
    published({
      what: `Individuals chart, 30 diameters: ${what}`,
      cited: CITED,
      sourceId: 'sas-qc-tires',
      kind: 'printed',
      unit: 'cm',
      theirs,
      ours: ours ?? Number.NaN,
      within,
    });
  });

  // 3/1.128, rounded, in the handbook; 3 ÷ (2/√π) here: a difference of 3 in 10 000 of half the width.
  it.each([
    ['mean', 50.81, flows?.mean, 0.005],
    ['lower limit', 45.8159, flows?.lower, 0.002],
    ['upper limit', 55.8041, flows?.upper, 0.002],
  ] as const)('%s of ten flow rates is as the handbook has it, from memory', (what, theirs, ours, within) => {
    published({
      what: `Individuals chart, ten flow rates: ${what}`,
      cited: 'NIST/SEMATECH e-Handbook, 6.3.2.2 (from memory)',
      sourceId: 'nist-individuals-charts',
      kind: 'printed',
      unit: '',
      theirs,
      ours: ours ?? Number.NaN,
      within,
    });
  });

  it('finds the ten in control, as the handbook says of both charts', () => {
    const { points } = controlChart(FLOWS);
    expect(points.filter(({ signals, jump }) => jump || signals.length > 0)).toEqual([]);
  });
});

listsItsChecks('trends');
