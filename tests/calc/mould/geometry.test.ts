import {
  circularSegmentMm2,
  crustCavity,
  dimensionsOf,
  MOULD_SIZES,
  type MouldShape,
  mouldGeometry,
} from '@larderwright/calc/mould';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

const SHAPES: readonly MouldShape[] = ['rectangular', 'tapered', 'half-cylinder', 'cylinder', 'roof', 'oval'];

function litres(shape: MouldShape, measures: Parameters<typeof mouldGeometry>[1], depthMm?: number): number {
  const geometry = mouldGeometry(shape, measures);
  if (!geometry) throw new Error(`no geometry for ${shape}`);
  return geometry.volumeToMm3(depthMm ?? geometry.depthMm) / 1e6;
}

describe('usual moulds', () => {
  // Printed beside the usual inside measures; the volumes are arithmetic on them. Common practice, no source.
  const printed: Record<string, [brimL: number, fillL: number | null]> = {
    'loaf-1l': [1.2, 1.04],
    'terrine-1.2l': [1.41, 1.19],
    'terrine-2l': [2.07, 1.79],
    'terrine-large': [2.82, 2.46],
    'bar-narrow': [1.08, 0.99],
    'bar-slim': [0.72, 0.66],
    'pie-hinged': [2.04, 1.62],
    'pie-hinged-long': [2.23, 1.76],
    'loaf-tapered': [1.85, 1.58],
    roof: [0.79, 0.68],
    gutter: [0.75, 0.75],
    'terrine-oval': [1.45, 1.26],
    'pie-oval': [2.4, null],
    'round-deep': [1.23, 1.08],
    'loaf-mini': [0.27, 0.24],
    ramekin: [0.2, 0.18],
    'jar-350ml': [0.41, 0.35],
    'ham-box': [3.39, 3.39],
    'brawn-pan': [4.28, 3.6],
    'roll-60': [0.85, 0.85],
    'roll-80': [1.76, 1.76],
  };

  test('every usual mould is checked', () => {
    expect(MOULD_SIZES.map((size) => size.id).sort()).toEqual(Object.keys(printed).sort());
  });

  for (const size of MOULD_SIZES) {
    const [brimL = Number.NaN, fillL = null] = printed[size.id] ?? [];
    test(`${size.name}: ${brimL} L to the rim${fillL === null ? '' : `, ${fillL} L filled`} (common practice, no source)`, () => {
      expect(Math.abs(litres(size.shape, size.measures) - brimL)).toBeLessThanOrEqual(0.0051);
      if (fillL === null) return;
      const inside = size.crustMm ? crustCavity(size.measures, size.crustMm) : size.measures;
      const geometry = mouldGeometry(size.shape, inside);
      const filled = geometry
        ? geometry.volumeToMm3(geometry.depthMm - (size.headspaceMm ?? 0)) / 1e6
        : Number.NaN;
      expect(Math.abs(filled - fillL)).toBeLessThanOrEqual(0.0051);
    });
  }
});

describe('volume to a depth', () => {
  test('a tapered tin 250 × 110 over 230 × 95, 75 deep, holds 1.85 L (derived, prismatoid rule)', () => {
    const measures = { length: 250, width: 110, baseLength: 230, baseWidth: 95, depth: 75 };
    expect(litres('tapered', measures)).toBeCloseTo(1.85, 2);
    // The mean of top and base areas reads more.
    expect(((250 * 110 + 230 * 95) / 2) * 75).toBeGreaterThan(litres('tapered', measures) * 1e6);
  });

  test('a roof mould filled to half its depth holds a quarter: 0.197 of 0.788 L (derived)', () => {
    const roof = { width: 75, depth: 70, length: 300 };
    expect(litres('roof', roof)).toBeCloseTo(0.7875, 9);
    expect(litres('roof', roof, 35)).toBeCloseTo(0.7875 / 4, 9);
  });

  test('a roll filled to its middle holds half, and a gutter is that half (derived)', () => {
    expect(litres('cylinder', { diameter: 80, length: 300 }, 40)).toBeCloseTo(
      litres('half-cylinder', { diameter: 80, length: 300 }),
      12,
    );
  });

  test('a gutter filled to half its radius holds 39.1 % of it (derived: π/3 − √3/4 against π/2)', () => {
    const share = circularSegmentMm2(40, 20) / circularSegmentMm2(40, 40);
    expect(share).toBeCloseTo((Math.PI / 3 - Math.sqrt(3) / 4) / (Math.PI / 2), 12);
  });

  test('agrees with stacking thin slices, for every shape at every depth', () => {
    const mm = fc.double({ min: 20, max: 400, noNaN: true });
    fc.assert(
      fc.property(
        fc.constantFrom(...SHAPES),
        fc.record({ length: mm, width: mm, depth: mm, baseLength: mm, baseWidth: mm, diameter: mm }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        (shape, all, part) => {
          const { needed, oneOf } = dimensionsOf(shape);
          const measures = Object.fromEntries(
            [...needed, ...oneOf.slice(0, 1)].map((key) => [key, all[key]]),
          );
          const geometry = mouldGeometry(shape, measures);
          if (!geometry) throw new Error('no geometry');
          const depthMm = geometry.depthMm * part;
          const slices = 2000;
          let sum = 0;
          for (let i = 0; i < slices; i += 1) {
            sum += (geometry.surfaceAtMm2(((i + 0.5) / slices) * depthMm) * depthMm) / slices;
          }
          expect(geometry.volumeToMm3(depthMm) / sum).toBeCloseTo(1, 3);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('never falls as the fill rises', () => {
    for (const size of MOULD_SIZES) {
      const geometry = mouldGeometry(size.shape, size.measures);
      let before = 0;
      for (let part = 0.05; part <= 1.0001; part += 0.05) {
        const now = geometry?.volumeToMm3(Math.min(1, part) * geometry.depthMm) ?? Number.NaN;
        expect(now).toBeGreaterThan(before);
        before = now;
      }
    }
  });
});

describe('measures a shape needs', () => {
  test('a cylinder stands with a depth, lies with a length, and does neither with both or none', () => {
    expect(mouldGeometry('cylinder', { diameter: 80, depth: 40 })?.closed).toBe(false);
    expect(mouldGeometry('cylinder', { diameter: 80, length: 350 })?.closed).toBe(true);
    expect(mouldGeometry('cylinder', { diameter: 80, length: 350, depth: 40 })).toBeNull();
    expect(mouldGeometry('cylinder', { diameter: 80 })).toBeNull();
  });

  test('a missing, zero, negative or endless measure makes no mould', () => {
    for (const shape of SHAPES) {
      const { needed, oneOf } = dimensionsOf(shape);
      const all = [...needed, ...oneOf.slice(0, 1)];
      const good = Object.fromEntries(all.map((key) => [key, 80]));
      expect(mouldGeometry(shape, good)).not.toBeNull();
      for (const key of all) {
        for (const bad of [Number.NaN, 0, -0, -80, Number.POSITIVE_INFINITY]) {
          expect(mouldGeometry(shape, { ...good, [key]: bad }), `${shape} ${key} ${bad}`).toBeNull();
        }
        const { [key]: _, ...rest } = good;
        expect(mouldGeometry(shape, rest), `${shape} without ${key}`).toBeNull();
      }
    }
  });
});
