import type { ControlChart } from '@larderwright/calc/trends';
import { extent, ticks } from 'd3-array';
import * as say from '#words/compare/control-picture.ts';
import { COMPARE_WORDS } from '../words/compare.ts';
import type { CompareFigures } from './figures-of.ts';
import type { TrendKind } from './trend-kinds.ts';

const SIZE = { width: 640, left: 52, right: 78, values: 200, ranges: 90, gap: 26, top: 10 } as const;

interface ControlPictureProps {
  chart: ControlChart;
  kind: TrendKind;
  figures: readonly CompareFigures[];
}

interface PanelProps {
  title: string;
  values: readonly (number | null)[];
  marked: readonly boolean[];
  lines: readonly { readonly name: string; readonly value: number }[];
  text: (value: number) => string;
  top: number;
  height: number;
  fromZero: boolean;
}

/** Values above, steps from batch to batch below, each with its limits. Shape and word mark what stands out. */
export function ControlPicture({ chart, kind, figures }: ControlPictureProps) {
  const { limits, points, recorded } = chart;
  if (recorded < 2) return null;
  const height = SIZE.top + SIZE.values + SIZE.gap + SIZE.ranges + 24;
  const marked = points.filter(({ signals, jump }) => signals.length > 0 || jump).length;
  const spoken = say.batchesEveryPointStandsTable(
    kind.label,
    recorded,
    points.length,
    limits ? say.standOut(marked) : '',
  );
  return (
    <svg class="control-picture" viewBox={`0 0 ${SIZE.width} ${height}`} role="img" aria-label={spoken}>
      <Panel
        title={`${kind.label}${kind.unit ? `, ${kind.unit}` : ''}`}
        values={points.map(({ value }) => value)}
        marked={points.map(({ signals }) => limits !== null && signals.length > 0)}
        lines={
          limits
            ? [
                { name: say.upper, value: limits.upper },
                { name: say.mean, value: limits.mean },
                { name: say.lower, value: limits.lower },
              ]
            : []
        }
        text={kind.text}
        top={SIZE.top}
        height={SIZE.values}
        fromZero={false}
      />
      <Panel
        title={say.stepFromTheBatchBefore}
        values={points.map(({ range }) => range)}
        marked={points.map(({ jump }) => limits !== null && jump)}
        lines={
          limits
            ? [
                { name: say.upper, value: limits.rangeUpper },
                { name: say.mean, value: limits.meanRange },
              ]
            : []
        }
        text={kind.text}
        top={SIZE.top + SIZE.values + SIZE.gap}
        height={SIZE.ranges}
        fromZero
      />
      <text x={SIZE.left} y={height - 4}>
        {figures[0]?.day ?? COMPARE_WORDS.notRecorded}
      </text>
      <text x={SIZE.width - SIZE.right} y={height - 4} text-anchor="end">
        {figures.at(-1)?.day ?? COMPARE_WORDS.notRecorded}
      </text>
    </svg>
  );
}

function Panel({ title, values, marked, lines, text, top, height, fromZero }: PanelProps) {
  const known = values.filter((value) => value !== null);
  const [low = 0, high = 1] = extent([...known, ...lines.map(({ value }) => value)]);
  const bottom = fromZero ? 0 : low;
  const span = high - bottom || 1;
  const right = SIZE.width - SIZE.right;
  const x = (at: number) =>
    SIZE.left + 8 + (values.length > 1 ? (at / (values.length - 1)) * (right - SIZE.left - 16) : 0);
  const y = (value: number) => top + 18 + (1 - (value - bottom) / span) * (height - 26);
  const marks = ticks(bottom, high, 4);
  // A batch without the figure breaks the line: nobody knows what lay there.
  let pen = 'M';
  const path = values
    .map((value, at) => {
      const step = value === null ? '' : `${pen}${x(at).toFixed(1)} ${y(value).toFixed(1)}`;
      pen = value === null ? 'M' : 'L';
      return step;
    })
    .join('');
  return (
    <g>
      <text x={0} y={top + 8} class="control-title">
        {title}
      </text>
      {marks.map((mark) => (
        <text key={mark} x={SIZE.left - 6} y={y(mark) + 4} text-anchor="end">
          {text(mark)}
        </text>
      ))}
      <path class="control-axis" d={`M${SIZE.left} ${top + 14}V${top + height}H${right}`} />
      {lines.map(({ name, value }) => (
        <g key={name}>
          <path
            class={name === 'mean' ? 'control-mean' : 'control-limit'}
            d={`M${SIZE.left} ${y(value)}H${right}`}
          />
          <text x={right + 4} y={y(value) + 4}>
            {name}
          </text>
        </g>
      ))}
      <path class="control-line" d={path} />
      {values.map((value, at) =>
        value === null ? (
          <text key={`none-${at + 1}`} x={x(at)} y={top + height - 4} text-anchor="middle">
            ?
          </text>
        ) : marked[at] ? (
          <path
            key={`point-${at + 1}`}
            class="control-out"
            d={`M${x(at) - 6} ${y(value) - 6}l12 12m0 -12l-12 12`}
          />
        ) : (
          <circle key={`point-${at + 1}`} class="control-point" cx={x(at)} cy={y(value)} r={3} />
        ),
      )}
    </g>
  );
}
