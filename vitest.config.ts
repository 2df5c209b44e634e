import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    globalSetup: ['tests/support/build-service.ts'],
    // Many files wait for processes and databases, so that one at a time leaves a core idle; more than two would wait for each other.
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 120_000,
    // What a page or a worker comes to may take a while on a machine that is busy with the other file.
    expect: { poll: { timeout: 15_000 } },
  },
});
