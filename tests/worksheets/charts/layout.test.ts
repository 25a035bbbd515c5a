import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { CurveChart } from '../../../worksheets/charts/curve-chart.tsx';
import { layoutChart } from '../../../worksheets/charts/layout.ts';
import { markPath, shapeOf } from '../../../worksheets/charts/mark-shape.ts';
import type { CurveModel } from '../../../worksheets/charts/model.ts';
import { extentOf, linearScale } from '../../../worksheets/charts/scale.ts';

const at = (clock: string) => Date.parse(`2026-03-03T${clock}:00+01:00`);
const model: CurveModel = {
  offsetMin: 60,
  series: [
    {
      id: 'a',
      name: 'Probe K-2',
      points: [
        { id: '1', atMs: at('11:15'), tempC: 70.8, mark: 'taken' },
        { id: '2', atMs: at('11:20'), tempC: 71.9, mark: 'taken' },
        { id: '3', atMs: at('11:25'), tempC: 20, mark: 'excluded' },
        { id: '4', atMs: at('11:30'), tempC: 73.1, mark: 'flagged' },
      ],
    },
  ],
  levels: [
    { kind: 'limit', tempC: 71, label: 'limit 71 °C' },
    { kind: 'act', tempC: 71.5, label: 'act at 71.5 °C' },
  ],
  runs: [{ fromMs: at('11:20'), toMs: at('11:30'), label: 'held 10 min' }],
};

describe('layoutChart', () => {
  it('puts hotter higher and later further right, all inside the drawing', () => {
    const layout = layoutChart(model, { width: 320, height: 300 });
    if (!layout) throw new Error('no layout');
    expect(layout.y(73)).toBeLessThan(layout.y(20));
    expect(layout.x(at('11:30'))).toBeGreaterThan(layout.x(at('11:15')));
    for (const tempC of [20, 73.1]) {
      expect(layout.y(tempC)).toBeGreaterThanOrEqual(layout.top);
      expect(layout.y(tempC)).toBeLessThanOrEqual(layout.bottom);
    }
  });

  it('has nothing to lay out without a reading', () => {
    expect(layoutChart({ offsetMin: 0, series: [] }, { width: 320, height: 300 })).toBeNull();
    expect(
      layoutChart({ offsetMin: 0, series: [{ id: 'a', name: '', points: [] }] }, { width: 320, height: 300 }),
    ).toBeNull();
  });
});

describe('CurveChart', () => {
  const svg = renderToString(h(CurveChart, { model, size: { width: 640, height: 360 } }));

  it('marks excluded and flagged readings by shape', () => {
    expect(shapeOf('excluded', 0)).toBe('cross');
    expect(shapeOf('flagged', 0)).toBe('diamond');
    expect(new Set([0, 1, 2].map((probe) => shapeOf('taken', probe))).size).toBe(3);
    expect(svg.match(/data-mark="excluded"/g)).toHaveLength(1);
    expect(svg.match(/data-mark="flagged"/g)).toHaveLength(1);
  });

  it('carries its words and no style attribute, which the site does not allow', () => {
    expect(svg).toContain('Probe K-2: 3 readings from 70.8 °C at 11:15 to 73.1 °C at 11:30');
    expect(svg).toContain('1 excluded');
    expect(svg).not.toContain('style=');
  });

  it('writes no NaN even for a single reading', () => {
    const one: CurveModel = {
      ...model,
      series: [{ id: 'a', name: 'K', points: [{ id: '1', atMs: 0, tempC: 7, mark: 'taken' }] }],
      runs: [],
    };
    const single = renderToString(h(CurveChart, { model: one, size: { width: 320, height: 300 } }));
    expect(single).not.toContain('NaN');
    expect(svg).not.toContain('NaN');
  });
});

describe('markPath', () => {
  it('draws every shape around its point', () => {
    for (const shape of ['circle', 'square', 'triangle', 'diamond', 'cross'] as const) {
      expect(markPath(shape, 10, 10, 3)).toMatch(/^M[\d. ]+/);
    }
  });
});

describe('scales', () => {
  it('map the ends of the domain to the ends of the range', () => {
    const scale = linearScale([10, 20], [100, 0]);
    expect([scale(10), scale(15), scale(20)]).toEqual([100, 50, 0]);
  });
  it('ignore what is not a number', () => {
    expect(extentOf([Number.NaN, 3, Number.POSITIVE_INFINITY, -1])).toEqual([-1, 3]);
    expect(extentOf([Number.NaN])).toBeNull();
  });
});
