export const checkOverdue = ', CHECK OVERDUE';
export const checked = (
  jurisdiction: string,
  title: string,
  edition: string,
  reviewed: string,
  overdue: string,
) => `${jurisdiction}, ${title}, ${edition}; checked ${reviewed}${overdue}`;
export const calcRecord = (calcVersion: string, batchSchema: number) =>
  `calc ${calcVersion} · record ${batchSchema}`;
