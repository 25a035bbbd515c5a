import { readFileSync } from 'node:fs';

const calcPackages = Object.keys(JSON.parse(readFileSync('calc/package.json', 'utf8')).dependencies ?? {});

/**
 * What dependency-cruiser itself forbids. The order of the floors and of calc's subjects is judged by
 * tests/tools/floors.mjs over the arrows found here, together with those of .astro and .mdx files.
 * @type {import('dependency-cruiser').IConfiguration}
 */
export default {
  forbidden: [
    {
      name: 'no-cycle',
      comment: 'Two files that need each other are one file, or miss a third.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'resolves',
      comment: 'Every import leads to a file or an installed package. astro: modules are made by the build.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '^(astro:|virtual:)' },
    },
    {
      name: 'calc-is-pure',
      comment: 'calc uses no part of Node, and only the packages its own package.json names.',
      severity: 'error',
      from: { path: '^calc/' },
      to: {
        dependencyTypes: ['core', 'npm', 'npm-dev', 'npm-optional', 'npm-peer', 'npm-no-pkg', 'npm-unknown'],
        pathNot: calcPackages.map((name) => `^node_modules/${name}/`),
      },
    },
    {
      name: 'no-development-package-on-the-site',
      comment: 'What the site ships or builds with is a dependency, not a devDependency.',
      severity: 'error',
      from: { path: '^(site|content|worksheets)/' },
      to: { dependencyTypes: ['npm-dev'], dependencyTypesNot: ['npm', 'type-only'] },
    },
  ],
  options: {
    doNotFollow: { path: ['node_modules'] },
    exclude: { path: ['^dist/', '^\\.astro/'] },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'browser', 'node', 'default'],
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.json', '.d.ts'],
    },
  },
};
