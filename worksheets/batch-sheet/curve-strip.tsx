import * as say from '#words/batch-sheet/curve-strip.ts';
import { CURVE_MM, type CurveSize } from './curve-size.ts';
import type { SheetCurve } from './sheet-model.ts';

/** The core from the heat to the cold in black, with the limit: odd readings as crosses. */
export function CurveStrip({ curve, size = CURVE_MM }: { curve: SheetCurve; size?: CurveSize }) {
  const { width, height, left, right, top, bottom } = size;
  const base = height - bottom;
  return (
    <svg
      class="sheet-curve"
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={say.coreOfTheRulingLogTo(curve.starts, curve.ends)}
    >
      <path class="sheet-curve-frame" d={`M${left} ${top}V${base}H${width - right}`} />
      <text x={left - 1} y={top + 2.5} text-anchor="end">
        {curve.top.replace(' °C', '°')}
      </text>
      <text x={left - 1} y={base} text-anchor="end">
        0°
      </text>
      <text x={left} y={height - 0.8}>
        {curve.starts}
      </text>
      <text x={width - right} y={height - 0.8} text-anchor="end">
        {curve.ends}
      </text>
      {curve.limit ? (
        <>
          <path class="sheet-curve-limit" d={`M${left} ${curve.limit.y}H${width - right}`} />
          <text x={width - right} y={curve.limit.y - 0.8} text-anchor="end">
            {say.limit(curve.limit.label)}
          </text>
        </>
      ) : null}
      {curve.cooling.map((line) => (
        <g key={line.label}>
          <path class="sheet-curve-leg" d={`M${left} ${line.y}H${width - right}`} />
          <text x={width - right} y={line.y - 0.8} text-anchor="end">
            {line.label}
          </text>
        </g>
      ))}
      <path class="sheet-curve-line" d={curve.line} />
      {curve.odd.map(({ x, y }) => (
        <path key={`${x} ${y}`} class="sheet-curve-odd" d={`M${x - 1} ${y - 1}l2 2m0 -2l-2 2`} />
      ))}
    </svg>
  );
}
