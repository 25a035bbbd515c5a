import packageFile from '../package.json' with { type: 'json' };

/** Version of the code that computes, as sheets print it. */
export const CALC_VERSION: string = packageFile.version;
