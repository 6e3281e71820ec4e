import astro from 'eslint-plugin-astro';
import tseslint from 'typescript-eslint';
import { layers, stages } from './layers.mjs';

const folders = Object.keys(layers);
const packages = ['zod', 'yaml', 'preact', 'astro', 'sharp'];

/** What a stage of a folder may not import: the stages after it, and the folder's own files that join them. */
function laterStages(folder, stage) {
  const list = stages[folder];
  const at = list.findIndex(({ name }) => name === stage);
  const { why } = list[at];
  const later = list.slice(at + 1).map(({ name }) => name);
  if (later.length === 0) return [];
  return [
    {
      regex: `^(\\.\\./)+(${later.join('|')})/|^#${folder}/(${later.join('|')})/`,
      message: `src/${folder}/${stage} may not import a later stage: ${why}`,
    },
  ];
}

/** The import rules of one folder, or of one stage in it, each with its sentence of why. */
function rulesFor(folder, stage) {
  const { may, why } = layers[folder];
  const deny = folders.filter((other) => other !== folder && !may.includes(other));
  const patterns = stage === undefined ? [] : laterStages(folder, stage);
  if (deny.length > 0) {
    patterns.push({
      regex: `^(#|(\\.\\./)+(src/)?)(${deny.join('|')})(/|$)`,
      message: `src/${folder} may not import it: ${why}`,
    });
  }
  if (!may.includes('node'))
    patterns.push({ regex: '^node:', message: `src/${folder} has no Node here: ${why}` });
  for (const name of packages.filter((p) => !may.includes(p))) {
    const own = may.filter((one) => one.startsWith(`@${name}js/`)).map((one) => `(?!${one}(/|$))`);
    patterns.push({
      regex: `^${own.join('')}(${name}|@${name}js/[^/]+|astro:[a-z]+)(/|$)`.replace(
        '|astro:[a-z]+',
        name === 'astro' ? '|astro:[a-z]+' : '',
      ),
      message: `src/${folder} does without ${name}: ${why}`,
    });
  }
  // Across folders by `#folder/…`, so that a move shows in one place.
  patterns.push({
    regex: `^(\\.\\./)+(src/)?(${folders.filter((f) => f !== folder).join('|')})/`,
    message: 'Write imports across folders as #folder/….',
  });
  return { '@typescript-eslint/no-restricted-imports': ['error', { patterns }] };
}

export default tseslint.config(
  {
    ignores: [
      'dist/**',
      'node_modules/**',
      '.astro/**',
      '.cache/**',
      '.releases/**',
      '.hosting/**',
      'reports/**',
      '.stryker-tmp/**',
    ],
  },
  ...tseslint.configs.recommended,
  ...astro.configs.recommended,
  {
    rules: {
      'no-console': 'error',
      'max-lines': ['error', { max: 300, skipBlankLines: true, skipComments: true }],
      eqeqeq: 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
    },
  },
  ...folders.map((folder) => ({ files: [`src/${folder}/**/*.{ts,tsx,astro}`], rules: rulesFor(folder) })),
  ...Object.entries(stages).flatMap(([folder, list]) =>
    list.map(({ name }) => ({
      files: [`src/${folder}/${name}/**/*.{ts,tsx,astro}`],
      rules: rulesFor(folder, name),
    })),
  ),
  {
    files: ['src/core/**/*.ts'],
    rules: {
      'no-restricted-globals': [
        'error',
        ...['Date', 'performance', 'window', 'document', 'process', 'fetch', 'console'].map((name) => ({
          name,
          message: layers.core.why,
        })),
      ],
      'no-restricted-properties': ['error', { object: 'Math', property: 'random', message: layers.core.why }],
    },
  },
  { files: ['src/command/**', 'tests/**', '.config/**'], rules: { 'no-console': 'off' } },
);
