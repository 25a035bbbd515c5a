import { useId } from 'preact/hooks';
import * as say from '#words/charts/section-picture.ts';
import { isobands, isoline, outlinePieces, type Piece, type Polygon } from './isobands.ts';
import { BAND_STEPS_C, extentOf, type SectionModel, sectionRows } from './section-model.ts';

/** Drawn this wide unless told, px; its height follows. */
const WIDE = 420;
const EDGE = 10;
const MOST_HIGH = 300;
const f = (value: number) => Math.round(value * 10) / 10;

/** The upright cut as a field of temperature: bands by shade, lines every ten degrees, figures at nine places. */
export function SectionPicture({ model, width = WIDE }: { model: SectionModel; width?: number }) {
  const id = useId();
  const { net, tempC, coldestMm } = model;
  const { halfMm, heightMm } = extentOf(net);
  const scale = Math.min((width - 2 * EDGE) / (2 * halfMm), MOST_HIGH / heightMm);
  const height = heightMm * scale + 2 * EDGE;
  const px = (x: number) => f(width / 2 + x * scale);
  const py = (y: number) => f(height - EDGE - y * scale);
  const polygons = (list: readonly Polygon[], side: 1 | -1) =>
    list.map((polygon) => `${pathOf(polygon, (x) => px(side * x), py)}Z`).join('');
  const lines = (list: readonly Piece[]) =>
    list
      .flatMap(([x1, y1, x2, y2]) =>
        [1, -1].map((side) => `M${px(side * x1)} ${py(y1)}L${px(side * x2)} ${py(y2)}`),
      )
      .join('');
  // A figure on the cross would hide it.
  const besideCross = (y: number) => coldestMm != null && Math.abs(py(y) - py(coldestMm)) < 14;
  const bands = isobands(net, tempC, BAND_STEPS_C);
  const levels = linesAt(tempC);
  const rows = sectionRows(model);
  const places = [0, 2, 4].flatMap((row) => {
    const { heightMm: y = 0, cells = [] } = rows[row] ?? {};
    return [
      { x: 0, y, tempC: cells[0] ?? null },
      { x: 0.5 * halfMm, y, tempC: cells[1] ?? null },
    ];
  });
  return (
    <svg
      class="section-picture"
      viewBox={`0 0 ${width} ${f(height)}`}
      width={width}
      height={f(height)}
      role="img"
      aria-labelledby={id}
    >
      <title id={id}>{sectionSummary(model)}</title>
      {bands.map((list, band) =>
        list.length === 0 ? null : (
          <path
            key={BAND_STEPS_C[band]}
            class="section-band"
            data-band={band}
            d={polygons(list, 1) + polygons(list, -1)}
          />
        ),
      )}
      {levels.map((atC) => {
        const pieces = isoline(net, tempC, atC);
        const tag = tagPlace(pieces, TAG_SHARE * halfMm);
        return pieces.length === 0 ? null : (
          <g key={atC}>
            <path class="section-line" data-strong={atC % 20 === 0 ? 'yes' : undefined} d={lines(pieces)} />
            {tag === null ? null : (
              <text class="section-tag" x={px(-tag.x)} y={py(tag.y) + 5} text-anchor="middle">
                {atC}
              </text>
            )}
          </g>
        );
      })}
      <path class="section-outline" d={lines(outlinePieces(net))} />
      {coldestMm == null ? null : <path class="section-cross" d={crossAt(px(0), py(coldestMm))} />}
      {places.map(({ x, y, tempC: at }) =>
        at === null ? null : (
          <text
            key={`${x} ${y}`}
            x={px(x) - (x === 0 && besideCross(y) ? 10 : 0)}
            y={Math.min(height - EDGE - 4, Math.max(EDGE + 14, py(y) + 5))}
            text-anchor={x === 0 && besideCross(y) ? 'end' : 'middle'}
          >
            {Math.round(at)}
          </text>
        ),
      )}
    </svg>
  );
}

/** A cross where the coldest spot lies. */
const crossAt = (x: number, y: number) => `M${f(x - 6)} ${f(y - 6)}l12 12M${f(x + 6)} ${f(y - 6)}l-12 12`;

/** Lines lie closer where the whole cut differs little. */
function stepOf(lowC: number, highC: number): number {
  const span = highC - lowC;
  return span < 8 ? 2 : span < 25 ? 5 : 10;
}

function linesAt(tempC: Float32Array): number[] {
  const low = tempC.reduce((least, t) => Math.min(least, t), Number.POSITIVE_INFINITY);
  const high = tempC.reduce((most, t) => Math.max(most, t), Number.NEGATIVE_INFINITY);
  const step = stepOf(low, high);
  const first = Math.floor(low / step) + 1;
  const count = Math.max(0, Math.ceil(high / step) - first);
  return Array.from({ length: count }, (_, i) => (first + i) * step);
}

/** Lines are named this far out, on the side without figures; shorter ones at their outermost place. */
const TAG_SHARE = 0.65;

function tagPlace(pieces: readonly Piece[], wantedMm: number): { x: number; y: number } | null {
  const [first] = pieces;
  if (first === undefined) return null;
  const off = ([x]: Piece) => Math.abs(x - wantedMm);
  const [x, y] = pieces.reduce((best, piece) => (off(piece) < off(best) ? piece : best), first);
  return { x, y };
}

function pathOf(polygon: Polygon, px: (x: number) => number, py: (y: number) => number): string {
  const corners: string[] = [];
  for (let i = 0; i + 1 < polygon.length; i += 2)
    corners.push(`${px(polygon[i] ?? 0)} ${py(polygon[i + 1] ?? 0)}`);
  return `M${corners.join('L')}`;
}

/** The cut in a sentence, for who cannot see it. */
export function sectionSummary({ tempC, when, net, coldestMm }: SectionModel): string {
  const low = tempC.reduce((least, t) => Math.min(least, t), Number.POSITIVE_INFINITY);
  const high = tempC.reduce((most, t) => Math.max(most, t), Number.NEGATIVE_INFINITY);
  const cut = net.cut === 'across' ? say.cutAcrossTheMiddle : say.uprightCutThroughTheMiddle;
  const every = stepOf(low, high);
  const cross = coldestMm == null ? '' : say.crossColdestSpot(Math.round(coldestMm));
  return say.coldestCHottestCLinesEvery(cut, when, Math.round(low), Math.round(high), cross, every);
}
