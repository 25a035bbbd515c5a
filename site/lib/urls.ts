/** Where things live. No other module writes a path. */
export const urls = {
  home: '/',
  search: '/search/',
  techniques: '/technique/',
  technique: (id: string) => `/technique/${id}/`,
  worksheets: '/worksheets/',
  worksheet: (id: string) => `/worksheets/${id}/`,
  tables: '/tables/',
  table: (id: string) => `/tables/${id}/`,
  cautions: '/cautions/',
  caution: (id: string) => `/cautions/${id}/`,
  defects: '/defects/',
  defect: (id: string) => `/defects/${id}/`,
  sources: '/sources/',
  source: (id: string) => `/sources/#${id}`,
  demo: (id: string) => `/worksheets/batch-sheet/#demo=${id}`,
  newBatch: '/worksheets/batch-formula/#new',
} as const;
