import type { SectionNet } from '@larderwright/calc/cook-plan';
import { sectionAt } from '@larderwright/calc/cook-plan';
import { describe, expect, it } from 'vitest';
import { isobands, isoline, outlinePieces } from '../../../worksheets/charts/isobands.ts';
import { sectionRows } from '../../../worksheets/charts/section-model.ts';
import { timeText } from '../../../worksheets/charts/time-text.ts';

/** Half of a body 60 mm wide and 40 mm high, in a net of 3 × 4 cells. */
function net(): SectionNet {
  const x: number[] = [];
  const y: number[] = [];
  const triangles: number[] = [];
  for (let j = 0; j <= 4; j++) {
    for (let i = 0; i <= 3; i++) {
      x.push(10 * i);
      y.push(10 * j);
      if (i === 3 || j === 4) continue;
      const a = i + 4 * j;
      triangles.push(a, a + 1, a + 5, a, a + 5, a + 4);
    }
  }
  return {
    xMm: Float32Array.from(x),
    yMm: Float32Array.from(y),
    triangles: Uint16Array.from(triangles),
    cut: 'across',
  };
}

/** 2 °C for each mm up, 1 °C for each mm out: straight, so that straight lines draw it exactly. */
const field = ({ xMm, yMm }: SectionNet) => Float32Array.from(xMm, (x, i) => 5 + x + 2 * (yMm[i] ?? 0));

const areaOf = (polygon: readonly number[]) => {
  let twice = 0;
  for (let i = 0; i < polygon.length; i += 2) {
    const [x1 = 0, y1 = 0] = [polygon[i], polygon[i + 1]];
    const [x2 = 0, y2 = 0] = [polygon[(i + 2) % polygon.length], polygon[(i + 3) % polygon.length]];
    twice += x1 * y2 - x2 * y1;
  }
  return Math.abs(twice) / 2;
};

describe('a field of temperature', () => {
  it('is parted into bands that cover it once', () => {
    const section = net();
    const bands = isobands(section, field(section), [0, 20, 40, 60, 80]);
    const areas = bands.map((polygons) => polygons.reduce((sum, polygon) => sum + areaOf(polygon), 0));
    // Derived: 30 × 40 mm, and under 20 °C the triangle x + 2 y < 15: 15 × 7.5 ÷ 2.
    expect(areas.reduce((sum, area) => sum + area, 0)).toBeCloseTo(1200, 3);
    expect(areas[0]).toBeCloseTo(56.25, 3);
  });

  it('has lines where that temperature is', () => {
    const section = net();
    const pieces = isoline(section, field(section), 42);
    expect(pieces.length).toBeGreaterThan(3);
    for (const [x1, y1, x2, y2] of pieces) {
      expect(5 + x1 + 2 * y1).toBeCloseTo(42, 4);
      expect(5 + x2 + 2 * y2).toBeCloseTo(42, 4);
    }
  });

  it('is read between its nodes, mirrored, and nowhere outside', () => {
    const section = net();
    expect(sectionAt(section, field(section), 13, 27)).toBeCloseTo(5 + 13 + 54, 4);
    expect(sectionAt(section, field(section), -13, 27)).toBeCloseTo(5 + 13 + 54, 4);
    expect(sectionAt(section, field(section), 31, 27)).toBeNull();
    expect(sectionAt(section, field(section), 0, 41)).toBeNull();
  });

  it('has an outline without its plane of symmetry', () => {
    const length = outlinePieces(net()).reduce(
      (sum, [x1, y1, x2, y2]) => sum + Math.hypot(x2 - x1, y2 - y1),
      0,
    );
    expect(length).toBeCloseTo(30 + 40 + 30, 6);
  });

  it('is a table of five heights from the top down', () => {
    const section = net();
    const rows = sectionRows({ net: section, tempC: field(section), when: '' });
    expect(rows.map(({ heightMm }) => heightMm)).toEqual([40, 30, 20, 10, 0]);
    expect(rows[0]?.cells.map((cell) => Math.round(cell ?? 0))).toEqual([85, 100, 115]);
  });
});

describe('time since a start', () => {
  it('counts on past a day', () => {
    const clock = { clock: 'elapsed', offsetMin: 0 } as const;
    expect(timeText(clock, 0)).toBe('0:00');
    expect(timeText(clock, 65 * 60_000)).toBe('1:05');
    expect(timeText(clock, 1505 * 60_000)).toBe('25:05');
  });
});
