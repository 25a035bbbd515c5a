import type { Batch } from '@larderwright/calc/batch';
import { describe, expect, it } from 'vitest';
import { demos } from '../../../content/demo/index.ts';
import { formulaRows } from '../../../worksheets/records-desk/formula-rows.ts';
import { readingRows } from '../../../worksheets/records-desk/reading-rows.ts';

const demo = demos['country-terrine'] as Batch;

describe('the table of a formula', () => {
  const [headings = [], ...rows] = formulaRows(demo);
  const column = (name: string) => rows.map((row) => row[headings.indexOf(name)]);

  it('has a row for every line and as many cells as headings', () => {
    expect(rows).toHaveLength(demo.formula.lines.length);
    for (const row of rows) expect(row).toHaveLength(headings.length);
  });

  it('writes grams and shares as numbers', () => {
    // Derived by hand from the demo's weights: 1000 g of venison in a meat block of 2,800 g.
    expect(column('Planned g')[0]).toBe(1000);
    expect(column('Share of the meat block %')[0]).toBeCloseTo(35.714, 3);
    expect(column('Nitrite on pack %').filter((cell) => cell !== null)).toEqual([6.25]);
  });

  it('leaves blank what is unknown, and never writes zero for it', () => {
    const blank = { ...demo.formula.lines[0], amount: { text: '', unit: 'g', origin: 'default' } };
    const [, row] = formulaRows({ ...demo, formula: { ...demo.formula, lines: [blank as never] } });
    expect(row?.slice(6, 10)).toEqual([null, null, null, null]);
  });
});

describe('the table of readings', () => {
  it('has every reading of every probe, in order of time, with the offset taken off', () => {
    const batch: Batch = {
      ...demo,
      process: {
        ...demo.process,
        logs: demo.process.logs.slice(0, 1).map((log) => ({
          ...log,
          offset: { text: '0.5', unit: 'dC', origin: 'entered' },
          readings: [
            { ...log.readings[1], excluded: { reason: 'steam', initials: 'x', at: '' } },
            { ...log.readings[0] },
            { ...log.readings[2], temperature: { text: 'ERR', unit: 'C', origin: 'entered' } },
          ] as typeof log.readings,
        })),
      },
    };
    const [headings = [], ...rows] = readingRows(batch);
    const cell = (row: number, name: string) => rows[row]?.[headings.indexOf(name)];
    const shown = Number(batch.process.logs[0]?.readings[1]?.temperature.text);
    expect(rows).toHaveLength(3);
    expect(cell(0, 'Core °C, offset taken off')).toBeCloseTo(shown - 0.5, 9);
    expect(rows.map((_, row) => cell(row, 'Counts'))).toEqual([
      'yes',
      'left out by a person',
      'cannot be read',
    ]);
    expect(cell(1, 'Left out because')).toBe('steam');
    expect(cell(2, 'Core °C, offset taken off')).toBeNull();
    expect(cell(2, 'Shown, as typed')).toBe('ERR');
  });
});
