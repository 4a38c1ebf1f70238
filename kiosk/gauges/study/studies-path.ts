/** Where the studies stand among the pages of the gauges' desk. */
export const studiesPath = (id?: string, page?: 'measure'): string => `/gauges/studies${id === undefined ? '' : `/${encodeURIComponent(id)}`}${page === undefined ? '' : `/${page}`}`;
