import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const browserTests = 'tests/browser/**/*.test.ts';
const uiTests = 'tests/ui/**/*.test.{ts,tsx}';

export default defineConfig(({ mode }) => ({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    // See tests/support/amount.ts.
    env: mode === 'nightly' ? { MOULDKEEP_NIGHTLY: 'yes' } : {},
    // Properties and pictures take a while on two shared cores.
    testTimeout: 60_000,
    reporters: ['default', ['json', { outputFile: '.build/test-report.json' }]],
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: [browserTests, uiTests, 'tests/bench/**'],
          environment: 'node',
        },
      },
      {
        extends: true,
        test: { name: 'ui', include: [uiTests], environment: 'happy-dom', setupFiles: 'tests/support/ui-patience.ts' },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: [browserTests],
          environment: 'node',
          globalSetup: 'tests/support/built-app.ts',
          // Each test has a browser of its own, and small machines have two cores.
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
          // For the slowest machine there is: a test that fails says so by what it waits for (tests/support/patience.ts), long before.
          testTimeout: 300_000,
          hookTimeout: 300_000,
          expect: { poll: { timeout: 30_000 } },
        },
      },
    ],
  },
}));
