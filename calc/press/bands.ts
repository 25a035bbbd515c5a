/** How a kind of product is pressed. Pressures in kPa, temperatures in °C, times in hours. */
export interface PressBand {
  readonly id: string;
  readonly name: string;
  readonly lowKPa: number;
  readonly highKPa: number;
  /** Core when the press goes on, from and to; null where the product is not pressed warm. */
  readonly coreC: readonly [from: number, to: number] | null;
  readonly hours: readonly [from: number, to: number] | null;
  /** Worked with springs or a lidded box, never with weights on a board. */
  readonly springBox: boolean;
}

/** Working ranges of the bench. Common practice, no source: quality, not safety. */
export const PRESS_BANDS: readonly PressBand[] = [
  {
    id: 'none',
    name: 'Parfait, mousse, mousseline: level, do not press',
    lowKPa: 0,
    highKPa: 0,
    coreC: null,
    hours: null,
    springBox: false,
  },
  {
    id: 'fine',
    name: 'Fine and straight terrines',
    lowKPa: 0.3,
    highKPa: 0.6,
    coreC: [45, 55],
    hours: [4, 12],
    springBox: false,
  },
  {
    id: 'country',
    name: 'Country terrines',
    lowKPa: 0.6,
    highKPa: 1,
    coreC: [50, 60],
    hours: [8, 24],
    springBox: false,
  },
  {
    id: 'layered',
    name: 'Layers of whole meat, confit, game inlays',
    lowKPa: 1,
    highKPa: 2,
    coreC: [40, 50],
    hours: [12, 24],
    springBox: false,
  },
  {
    id: 'jellied',
    name: 'Brawn, tongue, jellied ham: while the jelly is liquid',
    lowKPa: 0.5,
    highKPa: 1.5,
    coreC: [35, 40],
    hours: [6, 12],
    springBox: false,
  },
  {
    id: 'tied',
    name: 'Galantine, tied: on the board once cooled in its stock',
    lowKPa: 0.5,
    highKPa: 1,
    coreC: [0, 40],
    hours: [12, 12],
    springBox: false,
  },
  {
    id: 'vegetable',
    name: 'Vegetable terrines, pressed cold',
    lowKPa: 0.8,
    highKPa: 1.5,
    coreC: [0, 10],
    hours: [12, 12],
    springBox: false,
  },
  {
    id: 'ham-box',
    name: 'Ham in a spring or lidded box rated for it',
    lowKPa: 15,
    highKPa: 60,
    coreC: null,
    hours: null,
    springBox: true,
  },
];

/** Highest pressure weights on a board are meant for; above it only a rated box will do. */
export const HIGHEST_BOARD_KPA = 3;
