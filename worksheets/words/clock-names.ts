/** What a page says of the clocks before anything of them is fetched. */
export const CLOCKS_TITLE = 'Clocks';
export const NO_CLOCK = 'No clock runs';
