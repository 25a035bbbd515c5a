import {
  type CurvePoint,
  decimalReductionMin,
  equivalentMin,
  HEAT_RESISTANCE,
  LINE_70_Z7_5,
  LINE_70_Z10,
  LINE_90_UK,
  LINE_90_US,
  lethalRate,
  logReduction,
  pasteurisationValue,
  trichinellaFreezingMeanH,
  zFromPoints,
} from '@larderwright/calc/lethality';
import { convert } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';
import { listsItsChecks, published } from '../../tools/published.ts';

const curve = (points: readonly (readonly [number, number])[]): CurvePoint[] =>
  points.map(([timeMin, tempC]) => ({ timeMin, tempC }));

const hold = (tempC: number, minutes: number) =>
  curve([
    [0, tempC],
    [minutes, tempC],
  ]);

/** Relative agreement, as a share. */
function expectNear(value: number, wanted: number, share: number) {
  expect(Math.abs(value - wanted) / wanted, `${value} against ${wanted}`).toBeLessThan(share);
}

describe('lethality arithmetic against printed figures', () => {
  it('carries 70 °C for 2 min to 65 °C with z = 6', () => {
    // ACMSF, burger report, March 2007, summary para 3: 13.6 min
    published({
      what: '70 °C for 2 min carried to 65 °C with z = 6 °C',
      sourceId: 'acmsf-2007',
      cited: 'ACMSF, burger report, March 2007, summary paragraph 3',
      kind: 'printed',
      theirs: 13.6,
      ours: equivalentMin(2, 65, { refC: 70, zC: 6 }),
      unit: 'min',
      within: 0.05,
    });
  });

  it.each([
    // Chilled Food Association 2006, reprinted by the Food Standards Agency
    [80, '129'],
    [83, '60'],
    [85, '36'],
    [88, '17'],
    [92, '6.3'],
    [95, '3.2'],
    [100, '1'],
  ] as const)('gives the printed equivalent of 90 °C for 10 min at %d °C', (tempC, printed) => {
    const minutes = equivalentMin(10, tempC, LINE_90_UK);
    expect(Number(minutes.toPrecision(minutes >= 100 ? 3 : 2))).toBe(Number(printed));
    published({
      what: `90 °C for 10 min carried to ${tempC} °C`,
      sourceId: 'cfa-2006',
      cited: 'Chilled Food Association, Best Practice Guidelines, 2006',
      kind: 'printed',
      theirs: Number(printed),
      ours: minutes,
      unit: 'min',
      // Half of the last place that is printed.
      within: minutes < 10 ? 0.05 : 0.5,
    });
  });

  it('asks more below 90 °C with the United States z', () => {
    // FDA Fish and Fishery Products Hazards and Controls Guidance, Table A-4: z = 7 °C; 51.79 min derived
    expectNear(equivalentMin(10, 85, LINE_90_US), 51.79, 0.001);
  });

  it('finds the same value in 100 min at 70, 10 at 80 and 1 at 90 °C with z = 10', () => {
    // Demester & Vacher 2011, teaching document on sous-vide
    for (const [tempC, minutes] of [
      [70, 100],
      [80, 10],
      [90, 1],
    ] as const)
      published({
        what: `Pasteurisation value of ${minutes} min at ${tempC} °C, reference 70 °C, z = 10 °C`,
        cited: 'Demester & Vacher 2011, teaching document on sous-vide',
        kind: 'printed',
        theirs: 100,
        ours: pasteurisationValue(hold(tempC, minutes), LINE_70_Z10),
        unit: 'min at 70 °C',
        within: 1e-9,
      });
  });

  it('finds z from two D-values', () => {
    // Carlier et al. 1996: 5.05 and 6.74 °C
    for (const [d55, d60, printed] of [
      [17.8, 1.82, 5.05],
      [19.2, 3.48, 6.74],
    ] as const)
      published({
        what: `z from D of ${d55} min at 55 °C and ${d60} min at 60 °C`,
        sourceId: 'heat-resistance-papers',
        cited: 'Carlier et al. 1996',
        kind: 'printed',
        theirs: printed,
        ours:
          zFromPoints([
            { tempC: 55, dMin: d55 },
            { tempC: 60, dMin: d60 },
          ]) ?? Number.NaN,
        unit: '°C',
        within: 0.005,
      });
  });

  it.each([
    // Juneja et al. 1997, five points, printed 6.0; Qu et al. 2024, four points, printed 4.8
    ['ecoli-beef', 5.961, 6.0],
    ['salmonella-chicken-liver', 4.773, 4.8],
  ] as const)('finds z by least squares for %s', (id, derived, printed) => {
    const row = HEAT_RESISTANCE.find((entry) => entry.id === id);
    const zC = zFromPoints(row?.points ?? []) ?? Number.NaN;
    expect(Math.abs(zC - derived)).toBeLessThan(0.001);
    published({
      what:
        id === 'ecoli-beef'
          ? 'z of E. coli in beef, five points'
          : 'z of Salmonella in chicken liver, four points',
      sourceId: 'heat-resistance-papers',
      cited: id === 'ecoli-beef' ? 'Juneja et al. 1997' : 'Qu et al. 2024',
      kind: 'printed',
      theirs: printed,
      ours: zC,
      unit: '°C',
      within: 0.05,
    });
  });

  it('finds no z where D does not fall or one temperature stands alone', () => {
    expect(zFromPoints([{ tempC: 55, dMin: 2 }])).toBeNull();
    expect(
      zFromPoints([
        { tempC: 55, dMin: 2 },
        { tempC: 60, dMin: 3 },
      ]),
    ).toBeNull();
    expect(
      zFromPoints([
        { tempC: 55, dMin: 2 },
        { tempC: 55, dMin: 3 },
      ]),
    ).toBeNull();
    expect(
      zFromPoints([
        { tempC: 55, dMin: 0 },
        { tempC: Number.NaN, dMin: 3 },
      ]),
    ).toBeNull();
  });

  it('gives the mean freezing line of Trichinella at -15 °C', () => {
    // Kotula et al. 1990: 57.3 min, printed "64 min" with 7 min added
    published({
      what: 'Trichinella at −15 °C, the mean line and 7 min',
      sourceId: 'kotula-1990',
      cited: 'Kotula et al. 1990',
      kind: 'printed',
      theirs: 64,
      ours: trichinellaFreezingMeanH(-15) * 60 + 7,
      unit: 'min',
      within: 1,
    });
  });

  it('takes Tref and z as parameters', () => {
    // French course notes on heat-treatment schedules: Tref 60, z 7, 68 °C: 14 and 28 units
    const beer = { refC: 60, zC: 7 };
    for (const [minutes, units] of [
      [1, 14],
      [2, 28],
    ] as const)
      published({
        what: `Pasteurisation units of ${minutes} min at 68 °C, reference 60 °C, z = 7 °C`,
        cited: 'French course notes on heat-treatment schedules',
        kind: 'printed',
        theirs: units,
        ours: pasteurisationValue(hold(68, minutes), beer),
        unit: 'min at 60 °C',
        within: 0.5,
      });
  });

  it.each([
    // Food Standards Agency, pairs equal to 70 °C for 2 min: 45, 10, 0.5, 0.1 min; z = 7.5 gives them before rounding up
    [60, 43.1, 45],
    [65, 9.28, 10],
    [75, 0.431, 0.5],
    [80, 0.0928, 0.1],
  ] as const)('stays under the published pair at %d °C with z = 7.5', (tempC, derived, printed) => {
    const minutes = equivalentMin(2, tempC, LINE_70_Z7_5);
    expectNear(minutes, derived, 0.001);
    expect(minutes).toBeLessThanOrEqual(printed);
  });
});

describe('lethality arithmetic, derived cases', () => {
  // derived: the arithmetic stands beside each expectation
  it('integrates an even hold', () => {
    // 10^(-7/7.5) = 0.1166; x 30
    expectNear(lethalRate(63, LINE_70_Z7_5), 0.1166, 0.001);
    expectNear(pasteurisationValue(hold(63, 30), LINE_70_Z7_5), 3.498, 0.001);
  });

  it('integrates a straight rise exactly, and shows what one trapezoid makes of it', () => {
    // 7.5 / (ln 10 x 0.5) x (1 - 10^-2) = 6.449; 30 x 1.01 / 2 = 15.15
    const rise = curve([
      [0, 55],
      [30, 70],
    ]);
    expectNear(pasteurisationValue(rise, LINE_70_Z7_5), 6.449, 0.001);
    expectNear(pasteurisationValue(rise, LINE_70_Z7_5, { method: 'trapezoid' }), 15.15, 0.001);
  });

  it('integrates a terrine core by all three methods', () => {
    const core = curve([
      [0, 50],
      [10, 55],
      [20, 59],
      [30, 62],
      [40, 64.5],
      [50, 66.5],
      [60, 68],
      [65, 68.5],
      [70, 68],
      [80, 66],
      [90, 63],
      [100, 59.5],
      [110, 56],
      [120, 52],
    ]);
    // sum of segment integrals, worked row by row
    expectNear(pasteurisationValue(core, LINE_70_Z7_5, { method: 'trapezoid' }), 22.49, 0.001);
    expectNear(pasteurisationValue(core, LINE_70_Z7_5), 21.83, 0.001);
    expectNear(pasteurisationValue(core, LINE_70_Z7_5, { method: 'fail-safe' }), 16.66, 0.001);
    expectNear(pasteurisationValue(core.slice(0, 8), LINE_70_Z7_5), 11.91, 0.001);
    expectNear(pasteurisationValue(core, LINE_70_Z10), 29.77, 0.001);
  });

  it('states the size of the bias on one wide step', () => {
    // 60 to 70 °C in 10 min, z 7.5: trapezoid 5.232, exact 3.106, fail-safe 0.4642
    const step = curve([
      [0, 60],
      [10, 70],
    ]);
    expectNear(pasteurisationValue(step, LINE_70_Z7_5, { method: 'trapezoid' }), 5.232, 0.001);
    expectNear(pasteurisationValue(step, LINE_70_Z7_5), 3.106, 0.001);
    expectNear(pasteurisationValue(step, LINE_70_Z7_5, { method: 'fail-safe' }), 0.4642, 0.001);
  });

  it('turns a value into log reductions with the D of the same line', () => {
    // 40 x 10^-0.2 = 25.24; / 2.95 (E. faecalis convention) = 8.555
    const value = pasteurisationValue(hold(68, 40), LINE_70_Z10);
    expectNear(value, 25.24, 0.001);
    expectNear(logReduction(value, 2.95), 8.555, 0.001);
    // 40 x 10^0.4 = 100.5 min at 66 °C
    expectNear(equivalentMin(40, 66, LINE_70_Z10), 100.5, 0.001);
  });

  it('predicts the rounded rows behind the United States meat column', () => {
    // FSIS Appendix A: 67 s at 150 °F for 6.5-log, z = 10 °F; table rows 6720, 720, 240, 22 s
    const line = { refC: convert(150, 'F', 'C'), zC: 50 / 9 };
    const holdS = (tempF: number) => equivalentMin(67, convert(tempF, 'F', 'C'), line);
    for (const [tempF, seconds] of [
      [130, 6700],
      [140, 670],
      [145, 211.9],
      [155, 21.19],
    ] as const)
      expectNear(holdS(tempF), seconds, 0.001);
    // 5-log at 155 °F: 16.3 s (Food Code 17 s, patty rule 16 s)
    expectNear((holdS(155) * 5) / 6.5, 16.3, 0.001);
  });

  it('shows that 145 °F for 4 min is far less against Listeria than 70 °C for 2 min', () => {
    // D55 12.66 min, z 9.22 (fit to O'Bryan 2006, Bolton 2000, Hansen & Knøchel 1996; typesetting of the copy lost)
    const line = { refC: 55, zC: 9.22 };
    expectNear(decimalReductionMin(12.66, 70, line), 0.2989, 0.001);
    expectNear(2 / decimalReductionMin(12.66, 70, line), 6.691, 0.001);
    expectNear(4 / decimalReductionMin(12.66, convert(145, 'F', 'C'), line), 2.204, 0.001);
  });

  it('uses two z-values in one process, also along a line that crosses Tref', () => {
    // 20 x 10^(-5/9) + 4 x 10^(2/10) = 5.565 + 6.340
    const parts =
      pasteurisationValue(hold(85, 20), LINE_90_UK) + pasteurisationValue(hold(92, 4), LINE_90_UK);
    expectNear(parts, 11.9, 0.001);
    // 85 to 95 °C in 10 min: 9/ln10 x (1 - 10^(-5/9)) + 10/ln10 x (10^0.5 - 1) = 2.821 + 9.391
    expectNear(
      pasteurisationValue(
        curve([
          [0, 85],
          [10, 95],
        ]),
        LINE_90_UK,
      ),
      12.21,
      0.001,
    );
  });

  it('reads a Fahrenheit profile with a Fahrenheit z', () => {
    // derived: D150 0.1718 min, z 10 °F
    const line = { refC: convert(150, 'F', 'C'), zC: 50 / 9 };
    const profileF = [
      [0, 118],
      [10, 128],
      [20, 134],
      [30, 138],
      [40, 140],
      [45, 140],
      [55, 137],
      [70, 128],
    ] as const;
    const core = curve(profileF.map(([minutes, tempF]) => [minutes, convert(tempF, 'F', 'C')]));
    const exact = pasteurisationValue(core, line);
    const trapezoid = pasteurisationValue(core, line, { method: 'trapezoid' });
    expectNear(exact, 2.914, 0.001);
    expectNear(trapezoid, 3.122, 0.001);
    expectNear(logReduction(exact, 0.1718), 16.96, 0.001);
    expectNear(logReduction(trapezoid, 0.1718), 18.17, 0.001);
    // 10^(-5/10)
    expectNear(lethalRate(convert(145, 'F', 'C'), line), 0.3162, 0.0002);
  });

  it('leaves out what lies below a floor', () => {
    const rise = curve([
      [0, 55],
      [30, 70],
    ]);
    // from 60 °C at minute 10: 7.5 / (ln 10 x 0.5) x (1 - 10^(-10/7.5)) = 6.212
    expectNear(pasteurisationValue(rise, LINE_70_Z7_5, { floorC: 60 }), 6.212, 0.001);
    expect(
      pasteurisationValue(
        curve([
          [0, 50],
          [30, 59],
        ]),
        LINE_70_Z7_5,
        { floorC: 60 },
      ),
    ).toBe(0);
  });
});

listsItsChecks('lethality');
