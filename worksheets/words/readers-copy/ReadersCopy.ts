export const readersCopy = 'READER’S COPY';
