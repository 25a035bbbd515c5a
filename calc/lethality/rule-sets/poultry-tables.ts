/** Fat % of the columns of the chicken grid. */
export const CHICKEN_FAT_PERCENT = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] as const;

/**
 * Chicken, 7-log Salmonella, minutes by fat %. °F, °C as printed, then 1–12 % fat.
 * The reprint read drops a digit at 7 % and 136 °F ("1.4"); its neighbours make it 71.4.
 * Rows above 144 °F could not be read for 2–11 %.
 */
export const CHICKEN_GRID = [
  [136, 57.8, [63.3, 64.5, 65.7, 67.0, 68.4, 69.9, 71.4, 73.0, 74.8, 76.7, 78.9, 81.4]],
  [137, 58.3, [50.1, 51.0, 52.1, 53.2, 54.3, 55.5, 56.8, 58.2, 59.7, 61.4, 63.3, 65.5]],
  [138, 58.9, [39.7, 40.5, 41.3, 42.2, 43.2, 44.2, 45.3, 46.4, 47.7, 49.2, 50.9, 52.9]],
  [139, 59.4, [31.6, 32.2, 32.9, 33.6, 34.4, 35.2, 36.2, 37.2, 38.3, 39.6, 41.1, 43.0]],
  [140, 60.0, [25.2, 25.7, 26.2, 26.8, 27.5, 28.2, 29.0, 29.8, 30.8, 32.0, 33.4, 35.0]],
  [141, 60.6, [20.1, 20.5, 21.0, 21.5, 22.0, 22.6, 23.2, 24.0, 24.9, 25.9, 27.1, 28.7]],
  [142, 61.1, [16.1, 16.4, 16.8, 17.2, 17.6, 18.1, 18.7, 19.4, 20.1, 21.0, 22.1, 23.5]],
  [143, 61.7, [13.0, 13.2, 13.5, 13.8, 14.2, 14.6, 15.1, 15.6, 16.3, 17.1, 18.1, 19.3]],
  [144, 62.2, [10.4, 10.6, 10.8, 11.1, 11.4, 11.8, 12.2, 12.6, 13.2, 13.9, 14.8, 15.9]],
] as const satisfies readonly (readonly [number, number, readonly number[]])[];

/** Chicken and turkey at 12 % fat, 7-log Salmonella, as printed. °F, °C as printed, chicken, turkey. */
export const POULTRY_12_PERCENT = [
  [136, 57.8, '81.4 min', '70.8 min'],
  [137, 58.3, '65.5 min', '58.5 min'],
  [138, 58.9, '52.9 min', '48.5 min'],
  [139, 59.4, '43 min', '40.4 min'],
  [140, 60.0, '35 min', '33.7 min'],
  [141, 60.6, '28.7 min', '28.2 min'],
  [142, 61.1, '23.5 min', '23.7 min'],
  [143, 61.7, '19.3 min', '19.8 min'],
  [144, 62.2, '15.9 min', '16.6 min'],
  [145, 62.8, '13 min', '13.8 min'],
  [146, 63.3, '10.6 min', '11.5 min'],
  [147, 63.9, '8.6 min', '9.4 min'],
  [148, 64.4, '6.8 min', '7.7 min'],
  [149, 65.0, '5.4 min', '6.2 min'],
  [150, 65.6, '4.2 min', '4.9 min'],
  [151, 66.1, '3.1 min', '3.8 min'],
  [152, 66.7, '2.3 min', '2.8 min'],
  [153, 67.2, '1.6 min', '2.1 min'],
  [154, 67.8, '1.1 min', '1.6 min'],
  [155, 68.3, '54.4 s', '1.3 min'],
  [156, 68.9, '43 s', '1 min'],
  [157, 69.4, '34 s', '50.4 s'],
  [158, 70.0, '26.9 s', '40.9 s'],
  [159, 70.6, '21.3 s', '33.2 s'],
  [160, 71.1, '16.9 s', '26.9 s'],
  [161, 71.7, '13.3 s', '21.9 s'],
  [162, 72.2, '10.5 s', '17.7 s'],
  [163, 72.8, '<10 s', '14.4 s'],
  [164, 73.3, '<10 s', '11.7 s'],
  [165, 73.9, '<10 s', '<10 s'],
] as const satisfies readonly (readonly [number, number, string, string])[];

/** Chicken and turkey at 1 % and 5 % fat, 7-log Salmonella, as printed. Bird, fat %, °F, time. */
export const POULTRY_LEAN_POINTS = [
  ['chicken', 1, 136, '63.3 min'],
  ['chicken', 1, 140, '25.2 min'],
  ['chicken', 1, 145, '8.4 min'],
  ['chicken', 1, 150, '2.7 min'],
  ['chicken', 1, 155, '44.2 s'],
  ['chicken', 1, 160, '13.7 s'],
  ['chicken', 1, 165, '<10 s'],
  ['chicken', 5, 136, '68.4 min'],
  ['chicken', 5, 140, '27.5 min'],
  ['chicken', 5, 145, '9.2 min'],
  ['chicken', 5, 150, '2.8 min'],
  ['chicken', 5, 155, '47.7 s'],
  ['chicken', 5, 160, '14.8 s'],
  ['chicken', 5, 165, '<10 s'],
  ['turkey', 1, 136, '64 min'],
  ['turkey', 1, 140, '28.1 min'],
  ['turkey', 1, 145, '10.5 min'],
  ['turkey', 1, 150, '3.8 min'],
  ['turkey', 1, 155, '1.2 min'],
  ['turkey', 1, 160, '25.6 s'],
  ['turkey', 1, 165, '<10 s'],
  ['turkey', 5, 136, '65.3 min'],
  ['turkey', 5, 140, '29.0 min'],
  ['turkey', 5, 145, '10.8 min'],
  ['turkey', 5, 150, '3.7 min'],
] as const satisfies readonly (readonly ['chicken' | 'turkey', 1 | 5, number, string])[];
