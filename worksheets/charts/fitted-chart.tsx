import { useEffect, useRef, useState } from 'preact/hooks';
import { CurveChart } from './curve-chart.tsx';
import { CurveTable } from './curve-table.tsx';
import type { CurveModel } from './model.ts';
import { curveSummary } from './summary.ts';

/** Drawn at this width before the page has been measured, and on paper. */
const FIRST_WIDTH = 640;
const NARROW = 480;

interface FittedChartProps {
  model: CurveModel;
  title: string;
}

/** The chart at the width there is, so that its letters keep their size on a phone; with its words and table. */
export function FittedChart({ model, title }: FittedChartProps) {
  const holder = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(FIRST_WIDTH);
  useEffect(() => {
    const box = holder.current;
    if (!box || typeof ResizeObserver === 'undefined') return;
    const watch = new ResizeObserver(([entry]) => {
      const inner = Math.floor(entry?.contentRect.width ?? 0);
      if (inner > 0) setWidth(Math.min(960, inner));
    });
    watch.observe(box);
    return () => watch.disconnect();
  }, []);
  const height = width < NARROW ? 300 : 360;
  return (
    <figure class="curve-figure">
      <figcaption>
        <strong>{title}.</strong> {curveSummary(model)}
      </figcaption>
      <div class="curve-holder" ref={holder}>
        <CurveChart model={model} size={{ width, height }} />
      </div>
      <CurveTable model={model} title={title} />
    </figure>
  );
}
