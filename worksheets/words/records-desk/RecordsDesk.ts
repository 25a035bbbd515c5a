export const pageCouldNotFetchedWholeLoad = (failure: string) =>
  `This page could not be fetched whole (${failure}). Load it again.`;
export const opening = 'Opening …';
