import { useId } from 'preact/hooks';
import * as say from '#words/parts/composition-bar.ts';
import { FigureTable } from './figure-table.tsx';
import { gramsText, percentText } from './number-text.ts';

/** What a mix is made of, as drawn: each with a pattern of its own. */
export type Constituent = 'water' | 'protein' | 'fat' | 'salt' | 'other' | 'unknown';

export interface Share {
  readonly of: Constituent;
  readonly massG: number;
  /** Of everything in the bowl, 0–1. */
  readonly fraction: number;
}

const NAMES: Readonly<Record<Constituent, string>> = {
  water: say.water,
  protein: say.protein,
  fat: say.fat,
  salt: say.salt,
  other: say.other,
  unknown: say.notKnown,
};

/** Narrower shares have their name in the table only. */
const NAMED_FROM = 0.24;
const NAMED_WIDE_FROM = 0.09;

/** A pattern of its own for each constituent, so that the bar reads in black. */
function Pattern({ id, of }: { id: string; of: Constituent }) {
  const shape = {
    water: <circle cx="4" cy="4" r="1.1" class="bar-mark" />,
    protein: <rect width="8" height="8" class="bar-mark" />,
    fat: <path d="M0 8L8 0" class="bar-line" />,
    salt: <path d="M0 0L8 8M0 8L8 0" class="bar-line" />,
    other: <path d="M0 4H8" class="bar-line" />,
    unknown: null,
  }[of];
  return (
    <pattern id={id} width="8" height="8" patternUnits="userSpaceOnUse">
      {shape}
    </pattern>
  );
}

const percent = (fraction: number) => `${(fraction * 100).toFixed(3)}%`;

/** The composition of a mix as one bar and as a table of the same numbers. */
export function CompositionBar({ shares, caption }: { shares: readonly Share[]; caption: string }) {
  const id = useId();
  const spoken = shares.map(({ of, fraction }) => `${NAMES[of].toLowerCase()} ${percentText(fraction, 1)}`);
  // Figures of a table can add up to a hair more than the whole: the drawing is then fitted to its own sum.
  const drawn = Math.max(
    1,
    shares.reduce((sum, { fraction }) => sum + fraction, 0),
  );
  let from = 0;
  const placed = shares.map(({ of, fraction }) => {
    const start = from;
    const width = fraction / drawn;
    from += width;
    return { of, fraction, start, width };
  });
  return (
    <figure class="composition">
      <svg class="bar" width="100%" height="76" role="img" aria-label={`${caption}: ${spoken.join(', ')}.`}>
        <defs>
          {shares.map(({ of }) => (
            <Pattern key={of} id={`${id}-${of}`} of={of} />
          ))}
        </defs>
        {placed.map(({ of, start, width, fraction }) => (
          <g key={of}>
            <rect
              class={of === 'unknown' ? 'bar-part bar-unknown' : 'bar-part'}
              x={percent(start)}
              y="2"
              width={percent(width)}
              height="44"
              fill={`url(#${id}-${of})`}
            />
            {fraction >= NAMED_WIDE_FROM ? (
              <text
                class={fraction >= NAMED_FROM ? 'bar-name' : 'bar-name bar-name-wide'}
                x={percent(start + width / 2)}
                y="66"
                text-anchor="middle"
              >
                {`${NAMES[of]} ${percentText(fraction, 0)}`}
              </text>
            ) : null}
          </g>
        ))}
      </svg>
      <FigureTable
        caption={caption}
        columns={[say.part, say.weight, say.share]}
        rows={shares.map(({ of, massG, fraction }) => ({
          key: of,
          head: (
            <>
              <svg class="bar-key" width="28" height="16" aria-hidden="true">
                <rect
                  class={of === 'unknown' ? 'bar-part bar-unknown' : 'bar-part'}
                  x="1"
                  y="1"
                  width="26"
                  height="14"
                  fill={`url(#${id}-${of})`}
                />
              </svg>
              {NAMES[of]}
            </>
          ),
          cells: [gramsText(massG), percentText(fraction)],
        }))}
      />
    </figure>
  );
}
