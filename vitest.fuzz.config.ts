import { defineConfig } from 'vitest/config';

/** The long forms of random tests: `npm run fuzz`. */
export default defineConfig({
  test: { include: ['tests/**/*.fuzz.ts'], testTimeout: 3_600_000, disableConsoleIntercept: true },
});
