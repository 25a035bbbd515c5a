import { dimensionsOf, type MouldShape } from '@larderwright/calc/mould';
import { describe, expect, test } from 'vitest';
import { drawingScale, mouldOutline } from '../../../worksheets/mould-and-fill/outline.ts';
import { SHAPE_NAMES } from '../../../worksheets/words/mould-names.ts';

const SHAPES = Object.keys(SHAPE_NAMES) as MouldShape[];

describe('the outline of a mould', () => {
  test.each(SHAPES)('%s can be drawn before anything is measured, and says that it is assumed', (shape) => {
    const outline = mouldOutline(shape, {});
    expect(outline.known).toBe(false);
    expect(outline.section.path).not.toMatch(/NaN|undefined/);
    expect(outline.plan.path).not.toMatch(/NaN|undefined/);
  });

  test.each(SHAPES)('%s is known once every measure it needs is there', (shape) => {
    const { needed, oneOf } = dimensionsOf(shape);
    const measures = Object.fromEntries(
      [...needed, ...oneOf.slice(0, 1)].map((dimension) => [dimension, 100]),
    );
    expect(mouldOutline(shape, measures).known).toBe(true);
  });

  test('has the proportions of the mould itself', () => {
    const { section, plan } = mouldOutline('rectangular', { length: 290, width: 95, depth: 75 });
    expect([section.widthMm, section.heightMm]).toEqual([95, 75]);
    expect([plan.widthMm, plan.heightMm]).toEqual([290, 95]);
  });

  test('of a half-round gutter is half as deep as it is wide', () => {
    const { section } = mouldOutline('half-cylinder', { length: 300, diameter: 80 });
    expect([section.widthMm, section.heightMm]).toEqual([80, 40]);
  });

  test('of a cylinder stands with a depth and lies with a length', () => {
    expect(mouldOutline('cylinder', { diameter: 80, depth: 40 }).roll).toBe(false);
    expect(mouldOutline('cylinder', { diameter: 80, length: 350 }).roll).toBe(true);
  });

  test.each([0, -5, Number.NaN, Number.POSITIVE_INFINITY])('takes no measure of %d', (length) => {
    const outline = mouldOutline('rectangular', { length, width: 95, depth: 75 });
    expect(outline.known).toBe(false);
    expect(outline.plan.path).not.toMatch(/NaN|Infinity/);
  });
});

describe('the scale of the drawing', () => {
  test('keeps both outlines inside their room', () => {
    const room = { width: 248, height: 190 };
    for (const shape of SHAPES) {
      const outline = mouldOutline(shape, { length: 2000, width: 30, depth: 500 });
      const scale = drawingScale(outline, room);
      expect(outline.plan.widthMm * scale).toBeLessThanOrEqual(room.width + 1e-9);
      expect((outline.plan.heightMm + outline.section.heightMm) * scale).toBeLessThanOrEqual(
        room.height + 1e-9,
      );
    }
  });
});
