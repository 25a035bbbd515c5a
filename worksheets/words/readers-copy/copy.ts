export const readerLinksCouldNotFetched = (detail: string) =>
  `The reader of links could not be fetched (${detail}).`;
