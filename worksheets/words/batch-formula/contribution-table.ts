export const notKnown = 'not known';
export const byNature = 'by nature';
export const from = 'From';
export const weight = 'Weight';
export const inIt = (ofSaid: string) => `${ofSaid} in it`;
export const readFrom = 'Read from';
export const unnamedLine = 'Unnamed line';
export const pack = 'pack';
export const table = 'table';
