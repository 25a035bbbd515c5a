export const addAGarnish = 'Add a garnish';
export const addABinder = 'Add a binder';
