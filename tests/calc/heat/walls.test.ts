import {
  constantMaterial,
  enthalpyOf,
  enthalpyTable,
  fatLining,
  foodMaterial,
  type HeatStage,
  type Layer,
  type Material,
  mouldLayers,
  simulate,
  temperatureOf,
  WALLS,
  wallLayer,
} from '@larderwright/calc/heat';
import { afterAll, describe, expect, it } from 'vitest';
import { valueAt } from './curve.ts';
import { even, type JudgeMaterial, judge, plain } from './judge/judge.ts';
import { printTable } from './print.ts';

/** A loaf without ends, so that the judge needs one cell along: half of a section 100 × 75 mm, cells of 3.75 mm up. */
const WIDTH = 100;
const DEPTH = 75;
const startC = 4;

const constant = constantMaterial(0.45, 1050, 3500);
const farce = foodMaterial({
  water: 0.575,
  protein: 0.16,
  fat: 0.245,
  carbohydrate: 0.005,
  fibre: 0,
  ash: 0.015,
});

interface WallCase {
  readonly name: string;
  readonly material: Material | null;
  /** From the food outward. */
  readonly layers: readonly Layer[];
  readonly levelMm: number | null;
  readonly minutes: readonly number[];
  /** Cells through each layer, for the judge. */
  readonly layerCells: readonly number[];
}

const CASES: readonly WallCase[] = [
  {
    name: 'stoneware of 8 mm, under water to the rim',
    material: constant,
    layers: [wallLayer('stoneware')],
    levelMm: null,
    minutes: [30, 60, 90],
    layerCells: [3],
  },
  {
    name: 'stoneware of 8 mm, water to 52.5 mm',
    material: constant,
    layers: [wallLayer('stoneware')],
    levelMm: 52.5,
    minutes: [30, 60, 90],
    layerCells: [3],
  },
  {
    name: 'cast iron of 4 mm, water to 26.25 mm',
    material: constant,
    layers: [wallLayer('cast-iron')],
    levelMm: 26.25,
    minutes: [30],
    layerCells: [1],
  },
  {
    name: 'back fat of 3 mm in cast iron of 4 mm, water to 26.25 mm',
    material: constant,
    layers: [fatLining(3), wallLayer('cast-iron')],
    levelMm: 26.25,
    minutes: [30],
    layerCells: [1, 1],
  },
  {
    name: 'a farce whose properties vary, no wall',
    material: farce,
    layers: [],
    levelMm: 52.5,
    minutes: [30, 60, 90],
    layerCells: [],
  },
];

function judged(material: Material): JudgeMaterial {
  const table = enthalpyTable(material);
  let fastest = 0;
  for (let tempC = 0; tempC < 100; tempC++) {
    const heat = material.densityKgM3 * (material.enthalpyJkg(tempC + 1) - material.enthalpyJkg(tempC));
    fastest = Math.max(fastest, material.conductivityWmK(tempC) / heat);
  }
  return {
    conductivity: material.conductivityWmK,
    enthalpy: (tempC) => enthalpyOf(table, tempC),
    temperature: (enthalpy) => temperatureOf(table, enthalpy),
    fastest,
  };
}

/** Edges from the food outward through each layer, in m, from `from` on. */
function layerEdges(layers: readonly Layer[], cells: readonly number[], from: number): number[] {
  const edges: number[] = [];
  let at = from;
  for (const [index, { thicknessM }] of layers.entries()) {
    edges.push(...even(at, at + thicknessM, cells[index] ?? 1).slice(1));
    at += thicknessM;
  }
  return edges;
}

function judgeOf({ material, layers, levelMm, layerCells }: WallCase) {
  const food = judged(material ?? constant);
  const skins = layers.map(({ conductivityWmK, heatCapacityJm3K }) =>
    plain(conductivityWmK, heatCapacityJm3K, 1),
  );
  const outer = layerEdges(layers, layerCells, 0);
  const [half, depth] = [WIDTH / 2000, DEPTH / 1000];
  const across = [...even(0, half, 14), ...outer.map((edge) => half + edge)];
  const up = [...outer.map((edge) => -edge).reverse(), ...even(0, depth, 20)];
  const reach = layers.map((_, index) =>
    layers.slice(0, index + 1).reduce((sum, { thicknessM }) => sum + thicknessM, 0),
  );
  const skinAt = (out: number) => skins[reach.findIndex((end) => out < end)] ?? food;
  return judge({
    coordinates: 'cartesian',
    edges: [across, up, [0, 1]],
    materialAt: (x, y) => {
      const out = Math.max(x - half, -y);
      return out > 0 ? skinAt(out) : food;
    },
    startC,
    outside: (face, [, y]) => {
      if (face === 0 || face > 3) return null;
      const wet = face !== 3 && (levelMm === null || y < levelMm / 1000);
      return wet ? { film: 300, tempC: 85 } : { film: 25, tempC: 100 };
    },
  });
}

/** Coldest of the judge's innermost column, by the parabola through the coldest cell and its neighbours. */
function coldest(box: ReturnType<typeof judge>): number {
  const column = box.cells.flatMap(({ middle: [x, y] }, cell) => (x < 0.002 && y > 0 ? [cell] : []));
  const temps = column.map((cell) => {
    const next = box.tempC(cell + 1);
    return (9 * box.tempC(cell) - next) / 8;
  });
  const index = temps.indexOf(Math.min(...temps));
  const [below = 0, own = 0, above = 0] = temps.slice(index - 1, index + 2);
  return own - (above - below) ** 2 / (8 * (above - 2 * own + below));
}

describe('walls, linings and varying properties, against the judge', () => {
  const rows: (string | number)[][] = [];
  afterAll(() =>
    printTable('Core against the three-dimensional judge, °C', ['case', 'at min: judge (error)'], rows),
  );

  it.each(CASES)('$name: core within 0.3 °C', (wall) => {
    const water = { filmWm2K: 300, bath: { kind: 'course', tempC: 85 } } as const;
    const stage: HeatStage = {
      kind: 'bath',
      end: { when: 'time', minutes: 95 },
      air: { tempC: 100, filmWm2K: 25 },
      // Water to the rim wets the sides and the base; the top stays in air.
      water: { ...water, levelMm: wall.levelMm ?? DEPTH },
      faces: { end: 'closed' },
    };
    const material = wall.material ?? constant;
    const shape = { kind: 'rectangular', lengthMm: 400, widthMm: WIDTH, depthMm: DEPTH } as const;
    const { bottom, side, top } = mouldLayers({ wall: null, inside: wall.layers });
    const run = simulate({ shape, material, startC, layers: { bottom, side, top } }, [stage], {
      everyMin: 0.5,
    });
    if (run === null) throw new Error('a sound problem was refused');
    const box = judgeOf(wall);
    const errors = wall.minutes.map((minute) => {
      box.runTo(60 * minute);
      const wanted = coldest(box);
      return { minute, wanted, error: valueAt(run.timesMin, run.coreC, minute) - wanted };
    });
    rows.push([
      wall.name,
      errors
        .map(({ minute, wanted, error }) => `${minute}: ${wanted.toFixed(2)} (${error.toFixed(3)})`)
        .join('  '),
    ]);
    expect(Math.abs(run.energy.inJ / run.energy.riseJ - 1)).toBeLessThan(1e-3);
    for (const { error } of errors) expect(Math.abs(error)).toBeLessThan(0.3);
  });

  it('know every wall by a positive conductivity and heat', () => {
    for (const { conductivityWmK, heatCapacityJm3K, usualMm } of Object.values(WALLS)) {
      expect(Math.min(conductivityWmK, heatCapacityJm3K, usualMm)).toBeGreaterThan(0);
    }
  });
});
