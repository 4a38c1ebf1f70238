import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/{reference,unit,property,server,faults}/**/*.test.ts'],
    testTimeout: 60_000,
    pool: 'forks',
  },
});
